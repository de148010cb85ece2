package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Curves and paths drawn by lot from a given seed, for laws that hold for all of them. */
final class Drawn {
  private final SplittableRandom lot;

  Drawn(long seed) {
    lot = new SplittableRandom(seed);
  }

  double number(double from, double to) {
    return lot.nextDouble(from, to);
  }

  int count(int from, int to) {
    return lot.nextInt(from, to + 1);
  }

  Point point(double reach) {
    return new Point(number(-reach, reach), number(-reach, reach));
  }

  Vector heading() {
    return Vector.atAngle(number(-Math.PI, Math.PI));
  }

  Cubic cubic(double reach) {
    return new Cubic(point(reach), point(reach), point(reach), point(reach));
  }

  Curve curve(double reach) {
    return lot.nextInt(3) == 0 ? new Line(point(reach), point(reach)) : cubic(reach);
  }

  /** One to five curves, straight and bent, joined end to start. */
  Path path(double reach) {
    List<Curve> curves = new ArrayList<>();
    Point here = point(reach);
    for (int i = count(1, 5); i > 0; i--) {
      Point next = point(reach);
      curves.add(
          lot.nextInt(3) == 0
              ? new Line(here, next)
              : new Cubic(here, point(reach), point(reach), next));
      here = next;
    }
    return Path.of(curves);
  }

  /** A smooth curve that goes steadily to the right, as the long edges of a pattern do. */
  Path gentle() {
    SmoothCurve curve = SmoothCurve.from(new Point(0, number(-10, 10)));
    double x = 0;
    for (int i = count(1, 3); i > 0; i--) {
      x += number(80, 150);
      curve.to(new Point(x, number(-10, 10)));
    }
    return curve.path();
  }

  Motion motion() {
    Motion motion = Motion.turn(point(200), number(-4, 4)).then(Motion.move(heading().times(150)));
    return lot.nextBoolean() ? motion : motion.then(Motion.mirror(point(100), point(100)));
  }

  /** Lines and bent curves with corners of every kind between, on the whole to the right. */
  Path ragged() {
    List<Curve> curves = new ArrayList<>();
    Point here = new Point(0, 0);
    for (int i = count(2, 5); i > 0; i--) {
      Point next = new Point(here.x() + number(20, 80), number(-40, 40));
      Vector leave = new Vector(number(-10, 40), number(-40, 40));
      Vector arrive = new Vector(number(-40, 10), number(-40, 40));
      curves.add(
          lot.nextBoolean()
              ? new Line(here, next)
              : new Cubic(here, here.plus(leave), next.plus(arrive), next));
      here = next;
    }
    return Path.of(curves);
  }

  /** A closed shape about the origin, counter-clockwise: smooth, or with straight sides. */
  Path ring() {
    int knots = count(3, 7);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < knots; i++) {
      points.add(Point.ORIGIN.plus(Vector.atAngle(2 * Math.PI * i / knots).times(number(60, 110))));
    }
    if (lot.nextBoolean()) {
      points.add(points.get(0));
      return Path.polyline(points);
    }
    SmoothCurve curve = SmoothCurve.from(points.get(0));
    points.subList(1, knots).forEach(curve::to);
    return curve.closedPath();
  }
}
