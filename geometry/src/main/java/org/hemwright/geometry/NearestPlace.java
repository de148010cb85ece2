package org.hemwright.geometry;

/** The place on a path that lies nearest to a point. */
final class NearestPlace {
  private static final int SAMPLES = 32;
  private static final int STEPS = 60;

  private NearestPlace() {}

  static PathPlace on(Path path, Point point) {
    int bestIndex = 0;
    double bestT = 0;
    double best = path.start().distanceTo(point);
    for (int i = 0; i < path.curves().size(); i++) {
      Curve curve = path.curves().get(i);
      if (curve.bounds().distanceTo(point) >= best) {
        continue;
      }
      for (int k = 0; k <= SAMPLES; k++) {
        double t = polished(curve, point, (double) k / SAMPLES);
        double distance = curve.at(t).distanceTo(point);
        if (distance < best) {
          best = distance;
          bestIndex = i;
          bestT = t;
        }
      }
    }
    return path.placeAt(bestIndex, bestT, path.distanceAt(bestIndex, bestT));
  }

  private static double polished(Curve curve, Point point, double guess) {
    double low = Math.max(0, guess - 1.0 / SAMPLES);
    double high = Math.min(1, guess + 1.0 / SAMPLES);
    for (int step = 0; step < STEPS; step++) {
      double third = (high - low) / 3;
      double left = curve.at(low + third).distanceTo(point);
      double right = curve.at(high - third).distanceTo(point);
      if (left < right) {
        high -= third;
      } else {
        low += third;
      }
    }
    return (low + high) / 2;
  }
}
