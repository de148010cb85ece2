package org.hemwright.geometry;

/**
 * The place on a curve or a path that lies nearest to a point: an end, or a place seen square to
 * the curve, where a polynomial of the fifth degree is nothing.
 */
final class NearestPlace {
  private NearestPlace() {}

  /** The nearest place on a path; of equals, the first. */
  static PathPlace on(Path path, Point point) {
    int bestIndex = 0;
    double bestT = 0;
    double best = path.start().distanceTo(point);
    for (int i = 0; i < path.curves().size(); i++) {
      if (path.hull(i).distanceTo(point) >= best) {
        continue;
      }
      Curve curve = path.curves().get(i);
      double t = parameter(curve, point);
      double distance = curve.at(t).distanceTo(point);
      if (distance < best) {
        best = distance;
        bestIndex = i;
        bestT = t;
      }
    }
    return path.placeAt(bestIndex, bestT, path.distanceAt(bestIndex, bestT));
  }

  /** Whether a path comes nearer to a point than a distance (mm). */
  static boolean isNearer(Path path, Point point, double distance) {
    for (int i = 0; i < path.curves().size(); i++) {
      if (path.hull(i).distanceTo(point) < distance) {
        Curve curve = path.curves().get(i);
        if (curve.at(parameter(curve, point)).distanceTo(point) < distance) {
          return true;
        }
      }
    }
    return false;
  }

  /** The parameter of the nearest point of a curve. */
  static double parameter(Curve curve, Point point) {
    if (curve instanceof Cubic cubic) {
      return parameter(cubic, point);
    }
    Vector along = curve.end().minus(curve.start());
    double share = point.minus(curve.start()).dot(along) / along.dot(along);
    return Math.max(0, Math.min(1, share));
  }

  private static double parameter(Cubic cubic, Point point) {
    double best = cubic.start().distanceTo(point);
    double bestT = 0;
    double atEnd = cubic.end().distanceTo(point);
    if (atEnd < best) {
      best = atEnd;
      bestT = 1;
    }
    for (double t : Bernstein.roots(squareness(cubic, point))) {
      double distance = cubic.at(t).distanceTo(point);
      if (distance < best) {
        best = distance;
        bestT = t;
      }
    }
    return bestT;
  }

  /** The product of the way from the point and the derivative, in Bernstein form. */
  private static double[] squareness(Cubic cubic, Point point) {
    double x0 = cubic.start().x() - point.x();
    double y0 = cubic.start().y() - point.y();
    double x1 = cubic.control1().x() - point.x();
    double y1 = cubic.control1().y() - point.y();
    double x2 = cubic.control2().x() - point.x();
    double y2 = cubic.control2().y() - point.y();
    double x3 = cubic.end().x() - point.x();
    double y3 = cubic.end().y() - point.y();
    double u0 = x1 - x0;
    double v0 = y1 - y0;
    double u1 = x2 - x1;
    double v1 = y2 - y1;
    double u2 = x3 - x2;
    double v2 = y3 - y2;
    return new double[] {
      x0 * u0 + y0 * v0,
      (3 * (x1 * u0 + y1 * v0) + 2 * (x0 * u1 + y0 * v1)) / 5,
      (3 * (x2 * u0 + y2 * v0) + 6 * (x1 * u1 + y1 * v1) + x0 * u2 + y0 * v2) / 10,
      (x3 * u0 + y3 * v0 + 6 * (x2 * u1 + y2 * v1) + 3 * (x1 * u2 + y1 * v2)) / 10,
      (2 * (x3 * u1 + y3 * v1) + 3 * (x2 * u2 + y2 * v2)) / 5,
      x3 * u2 + y3 * v2
    };
  }
}
