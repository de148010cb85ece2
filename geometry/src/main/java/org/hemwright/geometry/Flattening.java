package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Points on a path between which straight stretches stay within a tolerance. Each cubic is cut at
 * even parameters; a cubic strays from its chord by no more than an eighth of its largest second
 * derivative.
 */
final class Flattening {
  /** No curve is cut into more stretches than this. */
  private static final int MOST = 10_000;

  private Flattening() {}

  static List<Point> of(Path path, double tolerance) {
    if (!(tolerance > 0)) {
      throw new GeometryProblem("a path is made flat to a tolerance above 0 mm, not " + tolerance);
    }
    List<Point> points = new ArrayList<>();
    points.add(path.start());
    for (Curve curve : path.curves()) {
      double bend =
          Math.max(curve.secondDerivative(0).length(), curve.secondDerivative(1).length());
      int count = (int) Math.min(MOST, Math.max(1, Math.ceil(Math.sqrt(bend / (8 * tolerance)))));
      for (int i = 1; i <= count; i++) {
        points.add(curve.at((double) i / count));
      }
    }
    return List.copyOf(points);
  }
}
