package org.hemwright.workroom.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.FoldLine;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.NotchMark;
import org.hemwright.pattern.piece.NotchSize;
import org.hemwright.pattern.piece.Piece;

/**
 * One piece in one size as the page draws it.
 *
 * <p>The structure says what the numbers are and is the same in nearly every size, so that it is
 * sent once. The numbers, in this order: the stack point; the box of the cut line, least x, least
 * y, most x, most y; then part by part. A path of n curves is its start and, for each curve, two
 * handles and its end; where a curve is straight its first handle is not a number. A tick is its
 * place on the cut line and its tip; a notch is its place on the stitch line and its ticks.
 *
 * @param structure the parts, in order
 * @param numbers millimetres in the piece's own plane
 */
@SuppressWarnings("ArrayRecordComponent")
record Ink(String structure, float[] numbers) {
  /** Draws a piece. */
  static Ink of(Piece piece, Map<String, Point> points, Map<String, Path> lines) {
    Pen pen = new Pen();
    ObjectNode structure = JsonNodeFactory.instance.objectNode();
    ArrayNode parts = structure.putArray("parts");
    Optional<CutLine> cutLine = outline(piece, structure, parts, pen);
    for (Edge edge : piece.edges()) {
      path(parts, pen, "edge", edge.name(), edge.path()).put("fold", edge.onFold());
    }
    cutLine.ifPresent(line -> onTheCutLine(piece, line, parts, pen));
    piece
        .grain()
        .ifPresent(
            grain -> {
              part(parts, "grain", "");
              pen.point(grain.from());
              pen.point(grain.to());
            });
    piece.marks().forEach(mark -> mark(parts, pen, mark));
    lines.forEach((name, path) -> path(parts, pen, "path", name, path));
    points.forEach(
        (name, at) -> {
          part(parts, "point", name);
          pen.point(at);
        });
    return new Ink(structure.toString(), pen.numbers());
  }

  /** Draws the outline of a piece alone: its cut line. */
  static Ink outlineOf(Piece piece) {
    Pen pen = new Pen();
    ObjectNode structure = JsonNodeFactory.instance.objectNode();
    outline(piece, structure, structure.putArray("parts"), pen);
    return new Ink(structure.toString(), pen.numbers());
  }

  private static Optional<CutLine> outline(
      Piece piece, ObjectNode structure, ArrayNode parts, Pen pen) {
    structure.put("piece", piece.name());
    structure.put("title", piece.card().title());
    structure.put("number", piece.card().number());
    pen.point(piece.stackPoint());
    Optional<CutLine> cutLine = AddedAllowance.to(piece).cutLine();
    pen.box(cutLine.map(line -> line.outline().bounds()).orElse(piece.stitchLine().bounds()));
    cutLine.ifPresent(line -> path(parts, pen, "cut", "", line.outline().path()));
    return cutLine;
  }

  private static void onTheCutLine(Piece piece, CutLine cutLine, ArrayNode parts, Pen pen) {
    int number = 0;
    for (NotchMark mark : NotchMark.on(piece, cutLine, NotchSize.USUAL)) {
      ObjectNode part = part(parts, "notch", Integer.toString(number++));
      part.put("edge", mark.notch().edge());
      part.put("ticks", mark.ticks().size());
      mark.notch().name().ifPresent(name -> part.put("called", name));
      Path edge = piece.edge(mark.notch().edge()).orElseThrow().path();
      pen.point(edge.at(Math.min(edge.length(), mark.notch().distance())).point());
      for (NotchMark.Tick tick : mark.ticks()) {
        pen.point(tick.at());
        pen.point(tick.tip());
      }
    }
    for (FoldLine fold : FoldLine.of(piece, cutLine)) {
      path(parts, pen, "turn", fold.edge(), fold.path());
    }
  }

  private static void mark(ArrayNode parts, Pen pen, Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      part(parts, "drill", drill.name());
      pen.point(drill.at());
    } else if (mark instanceof Mark.Inner inner) {
      path(parts, pen, "inner", inner.name(), inner.path());
    } else if (mark instanceof Mark.Placement placement) {
      path(parts, pen, "placement", placement.name(), placement.path());
    } else if (mark instanceof Mark.Label label) {
      part(parts, "label", label.text());
      pen.point(label.at());
    } else if (mark instanceof Mark.Lengthen lengthen) {
      path(parts, pen, "lengthen", "", lengthen.line());
    } else if (mark instanceof Mark.Level level) {
      part(parts, "level", level.name());
      pen.point(level.at());
    }
  }

  private static ObjectNode part(ArrayNode parts, String kind, String name) {
    return parts.addObject().put("kind", kind).put("name", name);
  }

  private static ObjectNode path(ArrayNode parts, Pen pen, String kind, String name, Path path) {
    pen.path(path);
    return part(parts, kind, name).put("curves", path.curves().size());
  }

  /** Whether another drawing would look the same. */
  boolean isLike(Ink other) {
    return numbers == other.numbers
        || (structure.equals(other.structure) && Arrays.equals(numbers, other.numbers));
  }

  /** Collects numbers. */
  private static final class Pen {
    private float[] numbers = new float[512];
    private int count;

    private void add(double number) {
      if (count == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * count);
      }
      numbers[count++] = (float) number;
    }

    void point(Point point) {
      add(point.x());
      add(point.y());
    }

    void box(Box box) {
      add(box.minX());
      add(box.minY());
      add(box.maxX());
      add(box.maxY());
    }

    void path(Path path) {
      point(path.start());
      for (Curve curve : path.curves()) {
        if (curve instanceof Cubic cubic) {
          point(cubic.control1());
          point(cubic.control2());
        } else {
          add(Double.NaN);
          add(0);
          add(0);
          add(0);
        }
        point(curve.end());
      }
    }

    float[] numbers() {
      return Arrays.copyOf(numbers, count);
    }
  }
}
