package org.hemwright.geometry;

import java.util.Arrays;

/**
 * Cubics beside a cubic.
 *
 * <p>The source is first cut where its radius is the distance: there the true offset has a cusp and
 * beyond it runs backward. Each stretch is then drawn as one cubic with the true ends and end
 * directions, its two handles chosen by least squares, and halved where that strays by more than
 * {@link Tolerance#OFFSET_FIT}.
 */
final class OffsetFit {
  private static final int DEEPEST = 14;
  private static final int LOOKS = 7;
  private static final int NEWTON_STEPS = 3;

  /** How much a look's distance along the curve counts, against its distance aside. */
  private static final double ALONG = 0.05;

  /** By so much more that rounding cannot matter. */
  private static final double CLEARLY_MORE = 1.001;

  private final Cubic source;
  private final double distance;
  private final OffsetSketch sketch;
  private final Point[] looks = new Point[LOOKS];

  private OffsetFit(Cubic source, double distance, OffsetSketch sketch) {
    this.source = source;
    this.distance = distance;
    this.sketch = sketch;
  }

  static void addBeside(Cubic source, double distance, OffsetSketch sketch) {
    OffsetFit fit = new OffsetFit(source, distance, sketch);
    double from = 0;
    for (double cusp : fit.cusps()) {
      fit.addStretch(from, cusp);
      from = cusp;
    }
    fit.addStretch(from, 1);
  }

  private void addStretch(double from, double to) {
    if (to - from > Tolerance.PLACE) {
      boolean backward = source.curvature((from + to) / 2) * distance > 1;
      add(from, to, backward, 0);
    }
  }

  /**
   * Where the curvature times the distance is 1: |B'|⁶ = distance²·(B' × B'')², with the bend on
   * the side of the offset.
   */
  private double[] cusps() {
    double size = source.size();
    double[] dx = differences(true, size);
    double[] dy = differences(false, size);
    double[] ddx = {2 * (dx[1] - dx[0]), 2 * (dx[2] - dx[1])};
    double[] ddy = {2 * (dy[1] - dy[0]), 2 * (dy[2] - dy[1])};
    double[] square = sum(Bernstein.product(dx, dx), Bernstein.product(dy, dy), 1);
    double[] bend = sum(Bernstein.product(dx, ddy), Bernstein.product(dy, ddx), -1);
    if (Arrays.stream(bend).allMatch(b -> b * distance <= 0)) {
      return new double[0];
    }
    double scale = distance / size;
    if (neverBendsSoFar(square, bend, scale)) {
      return new double[0];
    }
    double[] bendSquare = Bernstein.product(bend, bend);
    double[] one = {1, 1, 1, 1, 1, 1, 1};
    double[] sixth = Bernstein.product(square, Bernstein.product(square, square));
    double[] equal = sum(sixth, Bernstein.product(bendSquare, one), -scale * scale);
    return Arrays.stream(Bernstein.roots(equal))
        .filter(
            t ->
                t > 0
                    && t < 1
                    && source.derivative(t).cross(source.secondDerivative(t)) * distance > 0)
        .toArray();
  }

  /**
   * Whether the coefficients alone tell that both sides are never equal: most curves are gentle.
   */
  private static boolean neverBendsSoFar(double[] square, double[] bend, double scale) {
    double least = Arrays.stream(square).min().orElseThrow();
    double most = Arrays.stream(bend).map(Math::abs).max().orElseThrow();
    return least > 0 && least * least * least > CLEARLY_MORE * scale * scale * most * most;
  }

  private double[] differences(boolean x, double size) {
    Vector first = source.control1().minus(source.start());
    Vector second = source.control2().minus(source.control1());
    Vector third = source.end().minus(source.control2());
    double scale = 3 / size;
    return x
        ? new double[] {first.dx() * scale, second.dx() * scale, third.dx() * scale}
        : new double[] {first.dy() * scale, second.dy() * scale, third.dy() * scale};
  }

  private static double[] sum(double[] one, double[] other, double factor) {
    double[] sum = new double[one.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = one[i] + factor * other[i];
    }
    return sum;
  }

  private Point beside(double t) {
    return source.at(t).plus(source.direction(t).left().times(distance));
  }

  private void add(double from, double to, boolean backward, int depth) {
    Point start = beside(from);
    Point end = beside(to);
    if (start.distanceTo(end) <= Tolerance.NO_LENGTH) {
      return;
    }
    Cubic cubic = fitted(from, to, start, end, backward);
    if (depth < DEEPEST && strays(cubic)) {
      double middle = (from + to) / 2;
      add(from, middle, backward, depth + 1);
      add(middle, to, backward, depth + 1);
    } else {
      sketch.add(cubic, backward);
    }
  }

  /**
   * Chooses the handles a and b of start + a·leave and end − b·arrive such that the cubic passes
   * the true places looked at: linear in a and b, solved by the normal equations.
   */
  private Cubic fitted(double from, double to, Point start, Point end, boolean backward) {
    double way = backward ? -1 : 1;
    Vector leave = source.direction(from).times(way);
    Vector arrive = source.direction(to).times(way);
    double aa = 0;
    double ab = 0;
    double bb = 0;
    double ar = 0;
    double br = 0;
    for (int i = 0; i < LOOKS; i++) {
      double u = (i + 1.0) / (LOOKS + 1);
      double t = from + u * (to - from);
      Vector along = source.direction(t);
      looks[i] = source.at(t).plus(along.left().times(distance));
      double rest = 1 - u;
      double b1 = 3 * rest * rest * u;
      double b2 = 3 * rest * u * u;
      Vector miss = looks[i].minus(start.toward(end, b2 + u * u * u));
      for (int k = 0; k < 2; k++) {
        Vector toward = k == 0 ? along.left() : along.times(ALONG);
        double a = b1 * leave.dot(toward);
        double b = -b2 * arrive.dot(toward);
        double r = miss.dot(toward);
        aa += a * a;
        ab += a * b;
        bb += b * b;
        ar += a * r;
        br += b * r;
      }
    }
    double chord = start.distanceTo(end);
    double determinant = aa * bb - ab * ab;
    double a = (ar * bb - br * ab) / determinant;
    double b = (br * aa - ar * ab) / determinant;
    if (!(a >= 0 && b >= 0 && a <= 2 * chord && b <= 2 * chord)) {
      a = chord / 3;
      b = chord / 3;
    }
    return new Cubic(start, start.plus(leave.times(a)), end.minus(arrive.times(b)), end);
  }

  /** Whether a true place lies farther from the cubic than it may. */
  private boolean strays(Cubic cubic) {
    for (int i = 0; i < LOOKS; i++) {
      double u = (i + 1.0) / (LOOKS + 1);
      for (int step = 0; ; step++) {
        Vector miss = looks[i].minus(cubic.at(u));
        if (miss.length() <= Tolerance.OFFSET_FIT) {
          break;
        }
        if (step == NEWTON_STEPS) {
          return true;
        }
        Vector slope = cubic.derivative(u);
        double square = slope.dot(slope);
        if (square > 0) {
          u = Math.max(0, Math.min(1, u + miss.dot(slope) / square));
        }
      }
    }
    return false;
  }
}
