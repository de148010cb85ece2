package org.hemwright.exchange.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;

/**
 * Reads a DXF of pieces as a drawing: a line of the block {@code front} on layer 1 is called {@code
 * front boundary}, one on layer 14 {@code front sew lines}, and so for each layer; a rule's number
 * stands as a dot called {@code # 3}, a notch as a short line into the piece.
 *
 * <p>Read are lines, points, polylines of both kinds and words; other entities are listed by kind
 * and counted. Blocks are read where they are defined.
 */
public final class DxfReader {
  private static final int MOST_BYTES = 16 << 20;
  private static final int MOST_ENTITIES = 400_000;
  private static final int MOST_LINES = 50_000;

  /** How long a dot is drawn, and a notch that does not say its depth (mm). */
  private static final double TICK = 4;

  private static final Pattern RULE = Pattern.compile("#\\s*([0-9]{1,9})\\s*");

  /** What only says how others are to be read. */
  private static final Set<String> SILENT =
      Set.of("SEQEND", "VERTEX", "INSERT", "ATTDEF", "ATTRIB", "VIEWPORT");

  private final String file;
  private final List<TracedLine> lines = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final Map<String, Integer> unread = new TreeMap<>();
  private double mm = 1;
  private boolean known;

  private DxfReader(String file) {
    this.file = file;
  }

  /**
   * Reads a file.
   *
   * @param file the name that places in findings carry
   */
  public static ReadDrawing read(String file, byte[] content) {
    Origin start = new Origin(file, 1, 1);
    if (content.length > MOST_BYTES) {
      return refused(Finding.fail("dxf-too-large", file).at(start).build());
    }
    try {
      return new DxfReader(file).read(new String(content, StandardCharsets.ISO_8859_1));
    } catch (GeometryProblem problem) {
      return refused(
          Finding.fail("dxf-broken", file).with("reason", problem.reason()).at(start).build());
    }
  }

  private static ReadDrawing refused(Finding finding) {
    return new ReadDrawing(Optional.empty(), List.of(finding));
  }

  private ReadDrawing read(String text) {
    Origin start = new Origin(file, 1, 1);
    List<DxfEntity> entities = new ArrayList<>();
    Optional<Integer> slip = parse(text, entities);
    if (slip.isPresent()) {
      return refused(Finding.fail("dxf-not", file).at(new Origin(file, slip.get(), 1)).build());
    }
    if (entities.size() > MOST_ENTITIES) {
      return refused(Finding.fail("dxf-too-large", file).at(start).build());
    }
    entities.forEach(this::units);
    draw(entities);
    if (lines.isEmpty() || lines.size() > MOST_LINES) {
      return refused(
          (lines.isEmpty()
                  ? Finding.fail("dxf-without-lines", file)
                  : Finding.fail("dxf-too-large", file))
              .at(start)
              .build());
    }
    List<Finding> findings = new ArrayList<>();
    List<String> listed = new ArrayList<>();
    unread.forEach((kind, count) -> listed.add(count + " " + kind));
    if (!listed.isEmpty()) {
      findings.add(
          Finding.warn("dxf-unread", file).with("kinds", Argument.of(listed)).at(start).build());
    }
    listed.addAll(words);
    return new ReadDrawing(Optional.of(new TracedDrawing(file, lines, known, listed)), findings);
  }

  /** Parts the text into entities; the line at which that fails. */
  private static Optional<Integer> parse(String text, List<DxfEntity> entities) {
    String[] rows = text.split("\r\n|\n|\r", -1);
    List<DxfEntity.Pair> pairs = new ArrayList<>();
    String kind = "";
    int line = 1;
    for (int i = 0; i + 1 < rows.length && entities.size() <= MOST_ENTITIES; i += 2) {
      String code = rows[i].strip();
      if (!code.matches("-?[0-9]{1,5}")) {
        return Optional.of(i + 1);
      }
      if (code.equals("0")) {
        if (!kind.isEmpty()) {
          entities.add(new DxfEntity(kind, line, pairs));
        }
        kind = rows[i + 1].strip().toUpperCase(Locale.ROOT);
        line = i + 1;
        pairs = new ArrayList<>();
      } else {
        pairs.add(new DxfEntity.Pair(Integer.parseInt(code), rows[i + 1]));
      }
    }
    return entities.isEmpty() ? Optional.of(1) : Optional.empty();
  }

  /** Takes up what the header or a line of words says of the unit; words go before the header. */
  private void units(DxfEntity entity) {
    if (entity.kind().equals("SECTION")) {
      for (int i = 0; i + 1 < entity.pairs().size(); i++) {
        if (entity.pairs().get(i).value().strip().equals("$INSUNITS") && !known) {
          int unit = (int) DxfEntity.number(entity.pairs().get(i + 1).value());
          known = unit == 1 || unit == 4 || unit == 5;
          mm = unit == 1 ? 25.4 : unit == 5 ? 10 : 1;
        }
      }
    } else if (entity.kind().equals("TEXT")) {
      String said = entity.text(1).orElse("").toUpperCase(Locale.ROOT).replaceAll("\\s+", "");
      if (said.startsWith("UNITS:")) {
        known = true;
        mm = said.startsWith("UNITS:ENG") ? 25.4 : 1;
      }
    }
  }

  private void draw(List<DxfEntity> entities) {
    String section = "";
    String block = "";
    for (int i = 0; i < entities.size(); i++) {
      DxfEntity entity = entities.get(i);
      switch (entity.kind()) {
        case "SECTION" -> section = entity.text(2).orElse("").strip();
        case "ENDSEC" -> section = "";
        case "BLOCK" -> block = entity.text(2).orElse("").strip();
        case "ENDBLK" -> block = "";
        case "POLYLINE" -> {
          List<Point> points = new ArrayList<>();
          int next = i + 1;
          while (next < entities.size() && entities.get(next).kind().equals("VERTEX")) {
            points.add(entities.get(next).at(10));
            next++;
          }
          line(entity, block, points, entity.isClosed());
        }
        default -> {
          if (section.equals("BLOCKS") || section.equals("ENTITIES")) {
            draw(entity, block);
          }
        }
      }
    }
  }

  private void draw(DxfEntity entity, String block) {
    switch (entity.kind()) {
      case "LINE" -> line(entity, block, List.of(entity.at(10), entity.at(11)), false);
      case "LWPOLYLINE" -> line(entity, block, entity.points(), entity.isClosed());
      case "POINT" -> point(entity, block);
      case "TEXT" -> words(entity, block);
      default -> {
        if (!SILENT.contains(entity.kind())) {
          unread.merge(entity.kind().toLowerCase(Locale.ROOT), 1, Integer::sum);
        }
      }
    }
  }

  private Point mm(Point point) {
    return new Point(point.x() * mm, point.y() * mm);
  }

  private void line(DxfEntity entity, String block, List<Point> drawn, boolean closed) {
    List<Curve> curves = new ArrayList<>();
    List<Point> points = new ArrayList<>(drawn);
    if (closed && !points.isEmpty()) {
      points.add(points.get(0));
    }
    for (int i = 1; i < points.size(); i++) {
      Point from = mm(points.get(i - 1));
      Point to = mm(points.get(i));
      if (from.distanceTo(to) > Tolerance.SAME_POINT) {
        curves.add(new Line(curves.isEmpty() ? from : curves.get(curves.size() - 1).end(), to));
      }
    }
    if (!curves.isEmpty()) {
      add(names(entity, block), Path.of(curves), entity);
    }
  }

  private void point(DxfEntity entity, String block) {
    Point at = mm(entity.at(10));
    boolean notch = DxfLayer.of(entity.layer()).map(DxfLayer::words).orElse("").equals("notches");
    double depth = entity.number(39) * mm;
    if (notch && entity.text(50).isPresent()) {
      Vector inward = Vector.atAngle(StrictMath.toRadians(entity.number(50)));
      double drawn = depth > Tolerance.DRAWN_LENGTH ? depth : TICK;
      add(names(entity, block), Path.straight(at, at.plus(inward.times(drawn))), entity);
    } else {
      add(names(entity, block), dot(at), entity);
    }
  }

  private static Path dot(Point at) {
    Vector half = new Vector(TICK / 2, 0);
    return Path.straight(at.plus(half.negated()), at.plus(half));
  }

  private void words(DxfEntity entity, String block) {
    String said = entity.text(1).orElse("").strip();
    var rule = RULE.matcher(said);
    if (rule.matches()) {
      List<String> names = new ArrayList<>();
      String name = "# " + Integer.parseInt(rule.group(1));
      if (!block.isEmpty()) {
        names.add(block + " " + name);
      }
      names.add(name);
      names.add(block);
      add(names, dot(mm(entity.at(10))), entity);
    } else if (!said.isEmpty() && words.size() < 200) {
      words.add("text \"" + said + "\"");
    }
  }

  /** What a line can be called by; its block last. */
  private static List<String> names(DxfEntity entity, String block) {
    List<String> names = new ArrayList<>();
    DxfLayer.of(entity.layer())
        .ifPresent(
            layer -> {
              if (!block.isEmpty()) {
                names.add(block + " " + layer.words());
              }
              names.add(layer.words());
            });
    names.add("layer " + entity.layer());
    if (!block.isEmpty()) {
      names.add(block);
    }
    return names;
  }

  private void add(List<String> names, Path path, DxfEntity entity) {
    lines.add(new TracedLine(names, path, new Origin(file, entity.line(), 1)));
  }
}
