package org.hemwright.workbench.traced;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.exchange.rule.RuleTableReader;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.traced.RuleTable;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.workbench.traced.SvgDialect.Drawn;

/**
 * A drafted garment as a designer would bring it in from elsewhere: each piece drawn in one size,
 * and a table of steps for its corners and control points.
 */
final class TracedCopy {
  private final SizeRun run;
  private final SvgDialect dialect;
  private final double apart;
  private final StringBuilder document = new StringBuilder();
  private final StringBuilder rules = new StringBuilder();
  private final TreeMap<String, Optional<TracedDrawing>> drawings = new TreeMap<>();

  /** The pieces of each range of sizes in which they are drawn alike. */
  private final Map<String, List<Size>> ranges = new LinkedHashMap<>();

  TracedCopy(SizeRun run, SvgDialect dialect, double apart) {
    this.run = run;
    this.dialect = dialect;
    this.apart = apart;
  }

  String document() {
    return document.toString();
  }

  TracedInputs inputs() {
    byte[] table = rules.toString().getBytes(StandardCharsets.UTF_8);
    var read = RuleTableReader.read("rules.csv", table);
    if (!read.findings().isEmpty()) {
      throw new AssertionError(read.findings().toString());
    }
    TreeMap<String, Optional<RuleTable>> tables = new TreeMap<>();
    tables.put("rules.csv", read.table());
    return new TracedInputs(drawings, tables);
  }

  /** A size as a document says it: whole numbers plain, others in quotes. */
  private static String said(Size size) {
    return size.name().matches("[0-9]+") ? size.name() : '"' + size.name() + '"';
  }

  TracedCopy make(List<Integer> breaks) {
    List<Size> sizes = run.pattern().chart().sizes();
    rules.append("piece,edge,at,step (mm)");
    for (int i = 1; i < sizes.size(); i++) {
      rules.append(",").append(sizes.get(i - 1).name()).append(" to ").append(sizes.get(i).name());
    }
    rules.append("\n");
    document.append(
        """
        language 1
        pattern "Copy"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base %s

        fabric main knit
          widths 150 cm
          stretch across at least 50%%
        """
            .formatted(said(run.pattern().base())));
    int from = 0;
    for (int i = 0; i <= breaks.size(); i++) {
      int to = i < breaks.size() ? breaks.get(i) : sizes.size();
      range(sizes.subList(from, to), "_" + i);
      from = to;
    }
    return this;
  }

  private void range(List<Size> sizes, String suffix) {
    Size base =
        sizes.contains(run.pattern().base()) ? run.pattern().base() : sizes.get(sizes.size() / 2);
    for (Piece piece : run.size(base.name()).orElseThrow().pieces()) {
      ranges.put(piece.name() + suffix, sizes);
      piece(piece, sizes, base, suffix);
    }
  }

  Map<String, List<Size>> ranges() {
    return ranges;
  }

  private void piece(Piece piece, List<Size> sizes, Size base, String suffix) {
    String name = piece.name() + suffix;
    String file = "traced/" + name + ".svg";
    List<Drawn> drawn = new ArrayList<>();
    drawn.add(new Drawn("stitch", piece.stitchLine().path()));
    List<Edge> edges = piece.edges();
    for (Edge edge : edges) {
      Point at = edge.path().start();
      drawn.add(
          new Drawn(
              "dot_" + edge.name(),
              Path.straight(at.plus(new Vector(-1, 0)), at.plus(new Vector(1, 0)))));
    }
    byte[] svg = dialect.write(drawn).getBytes(StandardCharsets.UTF_8);
    drawings.put(file, DrawingReader.read(file, svg).drawing());
    document.append(
        "\npiece %s traced \"%s\" in size %s as \"%s\" number %d in sizes %s to %s\n"
            .formatted(
                name,
                file,
                said(base),
                name,
                drawings.size(),
                said(sizes.get(0)),
                said(sizes.get(sizes.size() - 1))));
    document.append("  cut 1 of main\n  outline traced \"stitch\" from \"dot_");
    document.append(edges.get(0).name()).append("\" anticlockwise, edges ");
    for (int i = 0; i < edges.size(); i++) {
      String end = edges.get((i + 1) % edges.size()).name();
      document.append("%s%s to \"dot_%s\"".formatted(i == 0 ? "" : ", ", edges.get(i).name(), end));
    }
    document.append("\n  allowance 1 cm\n  grain up\n  grade from \"rules.csv\"\n");
    for (Edge edge : edges) {
      rule(name, edge, "start", new Place(0, 0), sizes);
      for (Place place : controls(edge)) {
        double distance = distance(edge.path(), place, edge.path());
        rule(name, edge, String.format(Locale.ROOT, "%.7f mm from start", distance), place, sizes);
      }
    }
  }

  /** A place on an edge: so much of one of its curves. */
  private record Place(int curve, double share) {}

  /** Where a designer would set control points: at joints, and evenly on what is curved. */
  private List<Place> controls(Edge edge) {
    List<Place> places = new ArrayList<>();
    List<Curve> curves = edge.path().curves();
    if (curves.stream().allMatch(Line.class::isInstance)) {
      return places;
    }
    for (int i = 0; i < curves.size(); i++) {
      boolean line = curves.get(i) instanceof Line;
      double length = curves.get(i).length();
      int parts = line ? 1 : (int) Math.max(2, Math.ceil(length / apart));
      for (int k = 1; k <= parts; k++) {
        if (i + 1 < curves.size() || k < parts) {
          places.add(new Place(i, (double) k / parts));
        }
      }
    }
    return places;
  }

  /**
   * The same place in another size: of arcs, which have more curves where they are longer, by
   * share.
   */
  private static double distance(Path path, Place place, Path base) {
    int count = path.curves().size();
    if (count == base.curves().size()) {
      double walked = 0;
      for (int i = 0; i < place.curve(); i++) {
        walked += path.curves().get(i).length();
      }
      return walked + place.share() * path.curves().get(place.curve()).length();
    }
    return distance(base, place, base) / base.length() * path.length();
  }

  private Point place(String piece, Edge edge, Place place, Size size) {
    String own = piece.substring(0, piece.lastIndexOf('_'));
    Piece drafted = run.size(size.name()).orElseThrow().piece(own).orElseThrow();
    Path path =
        drafted.edges().stream()
            .filter(each -> each.name().equals(edge.name()))
            .findFirst()
            .orElseThrow()
            .path();
    return path.at(Math.min(path.length(), distance(path, place, edge.path()))).point();
  }

  private void rule(String piece, Edge edge, String at, Place place, List<Size> sizes) {
    for (boolean upright : new boolean[] {false, true}) {
      rules.append(piece).append(',').append(edge.name()).append(',').append(at);
      rules.append(upright ? ",up" : ",right");
      List<Size> all = run.pattern().chart().sizes();
      for (int i = 1; i < all.size(); i++) {
        rules.append(',');
        if (sizes.contains(all.get(i)) && sizes.contains(all.get(i - 1))) {
          Vector step =
              place(piece, edge, place, all.get(i))
                  .minus(place(piece, edge, place, all.get(i - 1)));
          rules.append(String.format(Locale.ROOT, "%.6f", upright ? step.dy() : step.dx()));
        }
      }
      rules.append('\n');
    }
  }
}
