package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.piece.NotchMark;

/**
 * Things lying on a table in true size (mm), drawn smaller: shapes and places shrink, pens, pins,
 * words and hatches keep the size that they have on paper.
 */
final class Scene {
  private static final double FLAT = 0.4;
  private static final double NOTCH = 2.2;
  private static final double MARGIN = 7;

  private final List<Thing> things = new ArrayList<>();
  private Optional<Box> focus = Optional.empty();

  /**
   * Something on the table, drawn when the scale is known.
   *
   * @param bounds what of the table it takes
   */
  private record Thing(Box bounds, Function<Scale, List<? extends Item>> drawn) {
    /** Something that has its size on paper, at a place. */
    static Thing small(Point at, Function<Point, List<? extends Item>> drawn) {
      return new Thing(Box.of(at, at), scale -> drawn.apply(scale.at(at)));
    }
  }

  /**
   * From the table to paper.
   *
   * @param factor millimetres on paper for each on the table
   * @param shift added after
   */
  record Scale(double factor, Vector shift) {
    Point at(Point point) {
      return new Point(point.x() * factor + shift.dx(), point.y() * factor + shift.dy());
    }

    Path at(Path path) {
      List<Curve> curves = new ArrayList<>();
      for (Curve curve : path.curves()) {
        curves.add(
            curve instanceof Cubic cubic
                ? new Cubic(
                    at(cubic.start()), at(cubic.control1()), at(cubic.control2()), at(cubic.end()))
                : new Line(at(curve.start()), at(curve.end())));
      }
      return Path.of(curves);
    }
  }

  /** A half of the table: what lies to the left of a line. */
  record Side(Point on, Vector along) {
    double depth(Point point) {
      return point.minus(on).dot(along.unit().left());
    }
  }

  /** A piece, whole. */
  Scene piece(Flat flat) {
    shape(flat.outline().path(), flat.wrongSide(), Subject.piece(flat.piece()));
    notches(flat, Optional.empty());
    return this;
  }

  /** The part of a piece that lies on a side; the other part is cut away. */
  Scene piece(Flat flat, Side side, boolean folded) {
    return piece(flat, side, folded, flat.wrongSide());
  }

  /** The same with a side of the cloth that is up. */
  Scene piece(Flat flat, Side side, boolean folded, boolean wrongSide) {
    List<Point> points = new ArrayList<>(flat.outline().path().flattened(FLAT));
    List<Point> kept = clipped(points, side);
    if (kept.size() < 3) {
      return this;
    }
    kept.add(kept.get(0));
    Path edge = Path.polyline(distinct(kept));
    area(edge, wrongSide, Subject.piece(flat.piece()));
    for (int i = 1; i < kept.size(); i++) {
      Point a = kept.get(i - 1);
      Point b = kept.get(i);
      boolean along = Math.abs(side.depth(a)) < 1e-6 && Math.abs(side.depth(b)) < 1e-6;
      if (a.distanceTo(b) > 1e-6) {
        if (!along) {
          line(Path.straight(a, b), Draw.EDGE);
        } else if (folded) {
          line(Path.straight(a, b), Draw.FOLD);
        } else {
          line(wavy(a, b), Draw.FINE);
        }
      }
    }
    notches(flat, Optional.of(side));
    return this;
  }

  private static List<Point> distinct(List<Point> points) {
    List<Point> apart = new ArrayList<>();
    for (Point point : points) {
      if (apart.isEmpty() || apart.get(apart.size() - 1).distanceTo(point) > 1e-6) {
        apart.add(point);
      }
    }
    if (apart.size() > 2 && apart.get(0).distanceTo(apart.get(apart.size() - 1)) > 1e-9) {
      apart.add(apart.get(0));
    }
    return apart;
  }

  /** A line that says: it goes on, but is not shown. */
  private static Path wavy(Point a, Point b) {
    double length = a.distanceTo(b);
    int waves = Math.max(2, (int) Math.round(length / 60));
    Vector along = b.minus(a).times(1.0 / waves);
    Vector aside = along.left().times(0.14);
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < waves; i++) {
      Point from = a.plus(along.times(i));
      Point to = a.plus(along.times(i + 1));
      curves.add(
          new Cubic(
              from,
              from.plus(along.times(0.35)).plus(aside),
              to.minus(along.times(0.35)).minus(aside),
              to));
    }
    return Path.of(curves);
  }

  private static List<Point> clipped(List<Point> points, Side side) {
    List<Point> kept = new ArrayList<>();
    int count = points.size();
    for (int i = 0; i < count; i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % count);
      double da = side.depth(a);
      double db = side.depth(b);
      if (da >= 0) {
        kept.add(a);
      }
      if ((da > 0 && db < 0) || (da < 0 && db > 0)) {
        kept.add(a.toward(b, da / (da - db)));
      }
    }
    return kept;
  }

  private void notches(Flat flat, Optional<Side> side) {
    for (NotchMark mark : flat.notches()) {
      for (NotchMark.Tick tick : mark.ticks()) {
        Point at = flat.motion().apply(tick.at());
        Vector inward = flat.motion().apply(tick.inward());
        if (side.isEmpty() || side.get().depth(at) >= 0) {
          things.add(
              Thing.small(
                  at,
                  here ->
                      List.of(
                          Draw.line(
                              here, here.plus(inward.times(NOTCH)), Pen.solid(0.4, Inks.BLACK)))));
        }
      }
    }
  }

  /** An area of cloth with an edge drawn round it. */
  Scene shape(Path closed, boolean wrongSide, Subject subject) {
    area(closed, wrongSide, subject);
    return line(closed, Draw.EDGE);
  }

  /** An area of cloth without an edge. */
  Scene area(Path closed, boolean wrongSide, Subject subject) {
    things.add(
        new Thing(
            closed.bounds(),
            scale -> Draw.cloth(Outline.of(scale.at(closed)), wrongSide, subject)));
    return this;
  }

  Scene line(Path path, Pen pen) {
    if (path.length() < 1e-6) {
      return this;
    }
    things.add(new Thing(path.bounds(), scale -> List.of(Draw.line(scale.at(path), pen))));
    return this;
  }

  /** Pins square to a line: at both ends, at its middle, and between where there is room. */
  Scene pins(Path seam, int count) {
    for (int i = 0; i < count; i++) {
      double share = count == 1 ? 0.5 : 0.04 + 0.92 * i / (count - 1);
      var place = seam.at(seam.length() * share);
      pin(place.point(), place.left());
    }
    return this;
  }

  Scene pin(Point at, Vector across) {
    things.add(Thing.small(at, here -> Draw.pin(here, across)));
    return this;
  }

  /** Words at a place. */
  Scene words(String text, Point at) {
    things.add(Thing.small(at, here -> Draw.words(text, here)));
    return this;
  }

  /** An arrow from place to place. */
  Scene arrow(Path path) {
    things.add(new Thing(path.bounds(), scale -> Draw.arrow(scale.at(path))));
    return this;
  }

  /** A dot where a close-up is taken. */
  Scene dot(Point at) {
    things.add(Thing.small(at, here -> List.of(Draw.disc(here, 0.9, Inks.CHALK))));
    return this;
  }

  /** Shows only what lies within a box of the table. */
  void focus(Box near) {
    focus = Optional.of(near);
  }

  boolean isEmpty() {
    return things.isEmpty();
  }

  Box bounds() {
    if (focus.isPresent()) {
      return focus.get();
    }
    Box all = things.get(0).bounds();
    for (Thing thing : things) {
      all = all.union(thing.bounds());
    }
    return all;
  }

  /** The paper that everything takes, at the origin, no wider and no higher than this (mm). */
  Box paper(double widest, double highest) {
    Box table = bounds();
    double factor = factor(widest, highest, table);
    return new Box(
        0, 0, table.width() * factor + MARGIN, Math.max(12, table.height() * factor + MARGIN));
  }

  private static double factor(double wide, double high, Box table) {
    return Math.min(
        1,
        Math.min(
            (wide - MARGIN) / Math.max(1, table.width()),
            (high - MARGIN) / Math.max(1, table.height())));
  }

  /** Draws everything within a box of paper, as large as it goes but not above true size. */
  List<Item> within(Box paper) {
    Box table = bounds();
    double factor = factor(paper.width(), paper.height(), table);
    Point centre = table.centre();
    Vector shift =
        new Vector(
            paper.centre().x() - centre.x() * factor, paper.centre().y() - centre.y() * factor);
    Scale scale = new Scale(factor, shift);
    List<Item> items = new ArrayList<>();
    things.forEach(thing -> items.addAll(thing.drawn().apply(scale)));
    return items;
  }
}
