package org.hemwright.exchange.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.NotchMark;
import org.hemwright.pattern.piece.NotchSize;
import org.hemwright.pattern.piece.Piece;

/**
 * Writes pieces as DXF: cut lines with their corners numbered by rule, stitch lines, notches,
 * grain, inner lines and drill holes, in millimetres.
 *
 * <p>A piece on the fold is written as the half that is drawn, with its mirror line.
 */
public final class DxfWriter {
  /** No written point lies farther from its curve than this (mm). */
  public static final double CURVE_TOLERANCE = 0.01;

  private final SizeRun run;
  private final SizedPattern base;
  private final GradedCorners graded;
  private final String style;

  /**
   * What a pattern comes to.
   *
   * @param files by name
   * @param withoutRules the pieces whose corners are not the same in all sizes, so that no rule can
   *     say how they move
   */
  public record Written(List<DxfFile> files, List<String> withoutRules) {
    public Written {
      files = List.copyOf(files);
      withoutRules = List.copyOf(withoutRules);
    }
  }

  private DxfWriter(SizeRun run, SizedPattern base) {
    this.run = run;
    this.base = base;
    this.graded = new GradedCorners(run, base);
    this.style = fileName(run.pattern().details());
  }

  private static String fileName(Details details) {
    String plain =
        (details.title() + "-" + details.version())
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9.]+", "-")
            .replaceAll("^-+|-+$", "");
    return plain.isEmpty() ? "pattern" : plain;
  }

  /**
   * Writes the base size with the rule table of all others and, where more sizes than one are in
   * the run, every size as it is.
   */
  public static Written write(SizeRun run) {
    SizedPattern base = run.size(run.pattern().base().name()).orElseGet(() -> run.sizes().get(0));
    DxfWriter writer = new DxfWriter(run, base);
    List<DxfFile> files = new ArrayList<>();
    files.add(writer.file(writer.style + ".dxf", List.of(base), true));
    files.add(
        new DxfFile(
            writer.style + ".rul",
            RuleFile.write(run, base.size(), writer.style, writer.graded.rules())
                .getBytes(StandardCharsets.US_ASCII)));
    if (run.sizes().size() > 1) {
      files.add(writer.file(writer.style + "-all-sizes.dxf", run.sizes(), false));
    }
    return new Written(files, writer.graded.without());
  }

  private DxfFile file(String name, List<SizedPattern> sizes, boolean ruled) {
    DxfText text = new DxfText();
    text.pair(0, "SECTION").pair(2, "HEADER");
    text.pair(9, "$ACADVER").pair(1, "AC1009");
    text.pair(9, "$INSUNITS").pair(70, "4");
    text.pair(0, "ENDSEC");
    layers(text);
    text.pair(0, "SECTION").pair(2, "BLOCKS");
    List<String> blocks = new ArrayList<>();
    Set<String> used = new LinkedHashSet<>();
    for (SizedPattern sized : sizes) {
      for (Piece piece : sized.pieces()) {
        String block = block(piece, sizes.size() > 1 ? sized.size().name() : "", used);
        blocks.add(block);
        text.pair(0, "BLOCK").pair(8, "1").pair(2, block).pair(70, "0");
        text.number(10, 0).number(20, 0).number(30, 0).pair(3, block);
        piece(text, piece, sized, ruled);
        text.pair(0, "ENDBLK").pair(8, "1");
      }
    }
    text.pair(0, "ENDSEC");
    text.pair(0, "SECTION").pair(2, "ENTITIES");
    int line = 0;
    for (String words : styleWords()) {
      text.words(DxfLayer.BOUNDARY, new Point(0, -10.0 * line++), words);
    }
    for (String block : blocks) {
      text.pair(0, "INSERT").pair(8, "1").pair(2, block);
      text.number(10, 0).number(20, 0).number(30, 0);
    }
    text.pair(0, "ENDSEC").pair(0, "EOF");
    return new DxfFile(name, text.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private static void layers(DxfText text) {
    text.pair(0, "SECTION").pair(2, "TABLES").pair(0, "TABLE").pair(2, "LAYER");
    text.pair(70, Integer.toString(DxfLayer.values().length));
    for (DxfLayer layer : DxfLayer.values()) {
      text.pair(0, "LAYER")
          .pair(2, layer.number())
          .pair(70, "0")
          .pair(62, "7")
          .pair(6, "CONTINUOUS");
    }
    text.pair(0, "ENDTAB").pair(0, "ENDSEC");
  }

  private static String block(Piece piece, String size, Set<String> used) {
    String name = DxfText.plain(size.isEmpty() ? piece.name() : piece.name() + "-" + size);
    String plain = name.replaceAll("[^A-Za-z0-9_-]", "_");
    String free = plain;
    for (int i = 2; !used.add(free); i++) {
      free = plain + "_" + i;
    }
    return free;
  }

  private List<String> styleWords() {
    Details details = run.pattern().details();
    return List.of(
        "ASTM/D13Proposal 1 Version: D 6673",
        "Style Name: " + details.title(),
        "Creation Date: " + details.dated(),
        "Creation Time: 00:00",
        "Author: " + details.by(),
        "Sample Size: " + base.size().name(),
        "Grade Rule Table: " + style,
        "Units: METRIC",
        "Curve Tolerance: " + CURVE_TOLERANCE);
  }

  private void piece(DxfText text, Piece piece, SizedPattern sized, boolean ruled) {
    AddedAllowance added = AddedAllowance.to(piece);
    Path cut = added.cutLine().map(line -> line.outline().path()).orElse(piece.stitchLine().path());
    outline(text, DxfLayer.BOUNDARY, cut);
    List<Point> corners = GradedCorners.corners(cut);
    for (Point corner : corners) {
      text.point(DxfLayer.TURN_POINTS, corner);
    }
    for (Point point : drawn(cut)) {
      if (corners.stream().noneMatch(corner -> corner.isAt(point))) {
        text.point(DxfLayer.CURVE_POINTS, point);
      }
    }
    if (ruled) {
      rules(text, corners, graded.numbers(piece.name(), GradedCorners.CUT));
      rules(
          text,
          GradedCorners.corners(piece.stitchLine().path()),
          graded.numbers(piece.name(), GradedCorners.STITCH));
    }
    outline(text, DxfLayer.SEW_LINES, piece.stitchLine().path());
    added
        .cutLine()
        .ifPresent(
            line -> NotchMark.on(piece, line, NotchSize.USUAL).forEach(mark -> notch(text, mark)));
    piece.foldEdge().ifPresent(fold -> mirror(text, fold));
    piece.grain().ifPresent(grain -> text.line(DxfLayer.GRAIN_LINE, grain.from(), grain.to()));
    double left = cut.bounds().minX();
    double low = cut.bounds().minY();
    text.line(
        DxfLayer.GRADE_REFERENCE,
        new Point(left, cut.bounds().centre().y()),
        new Point(cut.bounds().maxX(), cut.bounds().centre().y()));
    for (Mark mark : piece.marks()) {
      mark(text, mark);
    }
    int row = 0;
    for (String words : pieceWords(piece, sized)) {
      text.words(DxfLayer.BOUNDARY, new Point(left, low - 20 - 10.0 * row++), words);
    }
  }

  private static void rules(DxfText text, List<Point> corners, List<Integer> numbers) {
    for (int i = 0; i < numbers.size(); i++) {
      text.words(DxfLayer.TURN_POINTS, corners.get(i), "# " + numbers.get(i));
    }
  }

  private static void notch(DxfText text, NotchMark mark) {
    for (NotchMark.Tick tick : mark.ticks()) {
      text.notch(tick.at(), tick.depth(), StrictMath.toDegrees(tick.inward().angle()));
    }
  }

  private static void mirror(DxfText text, Edge fold) {
    text.line(DxfLayer.MIRROR_LINE, fold.path().start(), fold.path().end());
  }

  private static void mark(DxfText text, Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      text.point(DxfLayer.DRILL_HOLES, drill.at());
    } else if (mark instanceof Mark.Inner inner) {
      text.polyline(DxfLayer.INTERNAL_LINES, drawn(inner.path()), inner.path().isClosed());
    } else if (mark instanceof Mark.Placement placement) {
      text.polyline(DxfLayer.INTERNAL_LINES, drawn(placement.path()), placement.path().isClosed());
    } else if (mark instanceof Mark.Label label) {
      text.words(DxfLayer.ANNOTATION, label.at(), label.text());
    }
  }

  private static List<String> pieceWords(Piece piece, SizedPattern sized) {
    List<String> words = new ArrayList<>();
    words.add("Piece Name: " + piece.name());
    words.add("Size: " + sized.size().name());
    Optional<Cut> first = piece.card().cuts().stream().findFirst();
    if (first.isPresent()) {
      int count = first.get().count();
      words.add(
          "Quantity: " + (first.get().mirrored() ? count / 2 + "," + count / 2 : count + ",0"));
      words.add("Material: " + first.get().fabric());
    }
    words.add("Annotation: " + piece.card().title());
    return words;
  }

  private static void outline(DxfText text, DxfLayer layer, Path path) {
    text.polyline(layer, drawn(path), path.isClosed());
  }

  /** The points that a line is drawn through; of a closed one, the first is not said again. */
  static List<Point> drawn(Path path) {
    List<Point> points = path.flattened(CURVE_TOLERANCE);
    return path.isClosed() ? points.subList(0, points.size() - 1) : points;
  }
}
