package org.hemwright.geometry;

/**
 * The path that runs beside another at an even distance, as a cut line runs beside a stitch line.
 *
 * <p>Every stretch is set off by itself; outward corners are mitred, and a mitre that would reach
 * farther than {@link Tolerance#MITRE_LIMIT} times the distance is cut off square there. Then what
 * came too near the source is trimmed away: the loops that inward corners leave, and those of
 * stretches that bend more tightly than the distance allows.
 */
public final class OffsetPath {
  private OffsetPath() {}

  /**
   * The path at a distance (mm) from another: to its left when positive, to its right when
   * negative, walked the same way. Every point of it lies within {@link Tolerance#OFFSET} of that
   * distance from the source or, at an outward corner, farther out; none lies nearer. A closed path
   * gives a closed one; holes that it would leave where it runs back on itself are left out.
   *
   * <p>Refused are a distance at which nothing is left, and one at which the rest falls apart, so
   * that no single path could be walked.
   */
  public static Path of(Path path, double distance) {
    if (!Double.isFinite(distance)) {
      throw new GeometryProblem("a path cannot be set off by " + distance + " mm");
    }
    if (Math.abs(distance) <= Tolerance.NO_LENGTH) {
      return path;
    }
    OffsetSketch sketch = OffsetSketch.of(path, distance);
    boolean turns = turning(path) >= Math.PI;
    Path beside =
        sketch.isClean() && !turns
            ? sketch.path()
            : OffsetTrim.trimmed(path, distance, sketch, turns);
    return Straightened.of(beside);
  }

  /**
   * By how much a path turns in all, left and right alike (radians), or more. A path that turns by
   * less than half a turn and nowhere bends more tightly than the distance allows never comes back
   * into a circle of that radius that touches it, so that nothing needs to be trimmed.
   */
  private static double turning(Path path) {
    double sum = 0;
    Vector last = path.startDirection();
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        Vector[] ways = {
          cubic.control1().minus(cubic.start()),
          cubic.control2().minus(cubic.control1()),
          cubic.end().minus(cubic.control2())
        };
        for (Vector way : ways) {
          sum += Math.abs(last.angleTo(way));
          last = way.equals(Vector.ZERO) ? last : way;
        }
      } else {
        sum += Math.abs(last.angleTo(curve.derivative(0)));
        last = curve.derivative(0);
      }
    }
    return sum;
  }
}
