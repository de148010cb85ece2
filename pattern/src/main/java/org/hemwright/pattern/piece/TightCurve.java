package org.hemwright.pattern.piece;

import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * The tightest place of an edge that curves inward more sharply than its allowance is wide.
 *
 * @param edge the edge
 * @param radius of the curve there (mm)
 * @param at where, on the stitch line
 */
record TightCurve(Edge edge, double radius, Point at) {
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
          tightest = new TightCurve(edge, radius, curve.at(t));
        }
      }
    }
    return Optional.ofNullable(tightest);
  }

  /** Whether a stretch of cut line keeps its whole allowance from the edge all along. */
  boolean isClearedBy(Path stretch) {
    double least = edge.allowance().width() - 2 * Tolerance.OFFSET;
    return stretch.flattened(Tolerance.OFFSET).stream()
        .allMatch(point -> edge.path().nearest(point).point().distanceTo(point) >= least);
  }
}
