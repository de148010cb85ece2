package org.hemwright.pattern.piece;

import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Point;

/**
 * The tightest place of an edge that curves inward more sharply than its allowance is wide.
 *
 * @param radius of the curve there (mm)
 * @param at where, on the stitch line
 */
record TightCurve(double radius, Point at) {
  private static final int SAMPLES = 32;

  static Optional<TightCurve> of(Edge edge) {
    double width = edge.allowance().width();
    TightCurve tightest = null;
    for (Curve curve : edge.path().curves()) {
      if (curve instanceof Line) {
        continue;
      }
      for (int i = 0; i <= SAMPLES; i++) {
        double t = (double) i / SAMPLES;
        double curvature = curve.curvature(t);
        double radius = -1 / curvature;
        if (curvature < 0 && radius < width && (tightest == null || radius < tightest.radius())) {
          tightest = new TightCurve(radius, curve.at(t));
        }
      }
    }
    return Optional.ofNullable(tightest);
  }
}
