package org.hemwright.paper.nest;

import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/** Points of a path at even lengths, looked up once, for words that seek a straight stretch. */
final class Stations {
  private static final double APART = 1.5;

  private final Point[] points;
  private final double step;
  private final double length;

  Stations(Path path) {
    length = path.length();
    int count = Math.max(1, (int) Math.ceil(length / APART));
    step = length / count;
    points = new Point[count + 1];
    for (int i = 0; i <= count; i++) {
      points[i] = path.at(Math.min(length, i * step)).point();
    }
  }

  double length() {
    return length;
  }

  /** The point at a length, on the chord between its neighbours; the ends beyond them. */
  Point at(double distance) {
    double place = Math.max(0, Math.min(points.length - 1, distance / step));
    int below = Math.min((int) place, points.length - 2);
    return points[below].toward(points[below + 1], place - below);
  }

  /** The way from a little before a length to a little after it, unit. */
  Vector direction(double distance) {
    Point before = at(distance - step / 2);
    Point after = at(distance + step / 2);
    if (!before.isAt(after)) {
      return after.minus(before).unit();
    }
    // Where a line turns back on itself, as round a slit, the way that leads there.
    Point middle = at(distance);
    return middle.isAt(before) ? points[1].minus(points[0]).unit() : middle.minus(before).unit();
  }

  /** How far the path strays from straight within a reach before and after a length (mm). */
  double bend(double distance, double reach) {
    Point middle = at(distance);
    Vector left = direction(distance).left();
    double stray = 0;
    for (double share : new double[] {-1, -0.5, 0.5, 1}) {
      Vector away = at(distance + share * reach).minus(middle);
      stray = Math.max(stray, Math.abs(left.dot(away)));
    }
    return stray;
  }
}
