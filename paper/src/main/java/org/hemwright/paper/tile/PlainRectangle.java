package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PieceShape;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;

/**
 * A piece that can be cut by measure: a rectangle in every size, with nothing drawn inside it.
 *
 * @param nest the piece
 * @param measures of each size, in the chart's order
 */
record PlainRectangle(Nest nest, Map<Size, Measures> measures) {
  /**
   * What to measure out.
   *
   * @param length the longer side of what is cut (mm)
   * @param width the shorter side (mm)
   * @param grainAlongLength whether the grain runs with the longer side
   * @param notches how far the notches on each long edge lie from its left end, allowance included
   *     (mm), rising
   */
  record Measures(double length, double width, boolean grainAlongLength, List<Double> notches) {
    Measures {
      notches = List.copyOf(notches);
    }
  }

  /** The piece as a rectangle, if it is one in all its sizes. */
  static Optional<PlainRectangle> of(Nest nest) {
    Map<Size, Measures> measures = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      Optional<Measures> own = measures(shape);
      if (own.isEmpty()) {
        return Optional.empty();
      }
      measures.put(shape.size(), own.get());
    }
    return Optional.of(new PlainRectangle(nest, measures));
  }

  private static Optional<Measures> measures(PieceShape shape) {
    boolean bare =
        shape.marks().stream().allMatch(mark -> mark instanceof Mark.Stretch)
            && shape.fold().isEmpty();
    List<Edge> edges = shape.piece().edges();
    if (!bare || edges.size() != 4 || shape.cut().path().curves().size() != 4) {
      return Optional.empty();
    }
    for (int i = 0; i < 4; i++) {
      boolean straight =
          shape.cut().path().curves().get(i) instanceof Line
              && edges.get(i).path().curves().stream().allMatch(Line.class::isInstance);
      Vector here = shape.cut().path().curves().get(i).direction(0);
      Vector next = shape.cut().path().curves().get((i + 1) % 4).direction(0);
      if (!straight || Math.abs(here.dot(next)) > Tolerance.SAME_DIRECTION * 10) {
        return Optional.empty();
      }
    }
    Line first = (Line) shape.cut().path().curves().get(0);
    Line second = (Line) shape.cut().path().curves().get(1);
    boolean firstLonger = first.length() >= second.length();
    Line longer = firstLonger ? first : second;
    Line shorter = firstLonger ? second : first;
    boolean along =
        shape
            .grain()
            .map(grain -> Math.abs(grain.startDirection().dot(longer.direction(0))) > 0.5)
            .orElse(true);
    return Optional.of(
        new Measures(longer.length(), shorter.length(), along, notches(shape, longer)));
  }

  private static List<Double> notches(PieceShape shape, Line longer) {
    Vector along = longer.direction(0);
    Vector way = along.dx() < 0 || (along.dx() == 0 && along.dy() < 0) ? along.negated() : along;
    Point start = way.equals(along) ? longer.start() : longer.end();
    List<Double> places = new ArrayList<>();
    for (PieceShape.NotchShape notch : shape.notches()) {
      for (PieceShape.Tick tick : notch.ticks()) {
        double place = tick.from().minus(start).dot(way);
        boolean onLong = Math.abs(tick.to().minus(tick.from()).unit().dot(way)) < 0.5;
        if (onLong && places.stream().noneMatch(known -> Math.abs(known - place) < 0.5)) {
          places.add(place);
        }
      }
    }
    return places.stream().sorted().toList();
  }
}
