package org.hemwright.exchange.photograph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;

/**
 * Finds the corners of an outline that was seen as many places close together.
 *
 * <p>Near a corner scissors and lenses round what is sharp, so the places there are not believed.
 * On either side of a supposed corner a parabola is laid through what lies a little off; both are
 * led on until they meet. Where they arrive in nearly one direction there is no corner but a tight
 * curve, which a parabola follows.
 */
final class CornerSight {
  /** What lies this near a corner along the edge is not believed (mm). */
  static final double ROUNDED = 1.5;

  /** A parabola is laid through a stretch of this length at most (mm). */
  private static final double STRETCH = 14;

  /** A corner is first supposed where short straights on either side differ by this (radians). */
  private static final double SUPPOSED = StrictMath.toRadians(9);

  /** Two corners are farther apart than this (mm). */
  private static final double APART = 6;

  private final List<Point> places;
  private final double step;

  /**
   * An outline as seen.
   *
   * @param places round a closed line, evenly apart
   * @param step how far apart (mm)
   */
  CornerSight(List<Point> places, double step) {
    this.places = places;
    this.step = step;
  }

  /**
   * A corner.
   *
   * @param index of the place next to it
   * @param point where it is
   */
  record SeenCorner(int index, Point point) {}

  /** The corners, in the order of the places. */
  List<SeenCorner> corners() {
    int count = places.size();
    int skip = (int) Math.ceil(ROUNDED / step);
    int reach = Math.max(3, (int) Math.round(7 / step));
    double[] turns = new double[count];
    for (int k = 0; k < count; k++) {
      turns[k] = Math.abs(turn(k, skip, reach));
    }
    int apart = (int) Math.round(APART / step);
    List<Integer> supposed = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      if (turns[k] > SUPPOSED && isGreatest(turns, k, apart)) {
        supposed.add(k);
      }
    }
    List<SeenCorner> corners = new ArrayList<>();
    for (int n = 0; n < supposed.size(); n++) {
      int at = supposed.get(n);
      int before =
          Math.floorMod(at - supposed.get((n + supposed.size() - 1) % supposed.size()), count);
      int after = Math.floorMod(supposed.get((n + 1) % supposed.size()) - at, count);
      if (supposed.size() == 1) {
        before = count;
        after = count;
      }
      corner(at, length(before, skip), length(after, skip), skip).ifPresent(corners::add);
    }
    return corners;
  }

  private int length(int toNext, int skip) {
    int wanted = (int) Math.round(STRETCH / step);
    return Math.max(4, Math.min(wanted, (toNext - 2 * skip) * 2 / 3));
  }

  private Optional<SeenCorner> corner(int at, int before, int after, int skip) {
    Parabola in = parabola(at, -1, before, skip);
    Parabola out = parabola(at, 1, after, skip);
    // Newton on the two lengths at which the parabolas meet.
    double s = 0;
    double t = 0;
    for (int round = 0; round < 30; round++) {
      double fx = in.x(s) - out.x(t);
      double fy = in.y(s) - out.y(t);
      double a = in.dx(s);
      double b = -out.dx(t);
      double c = in.dy(s);
      double d = -out.dy(t);
      double determinant = a * d - b * c;
      if (Math.abs(determinant) < 1e-6) {
        return Optional.empty();
      }
      s -= (fx * d - b * fy) / determinant;
      t -= (a * fy - fx * c) / determinant;
      if (Math.abs(s) > 4 * ROUNDED + 4 || Math.abs(t) > 4 * ROUNDED + 4) {
        return Optional.empty();
      }
    }
    // Both parabolas are walked away from the corner: straight on is half a turn.
    double turn =
        StrictMath.atan2(
            in.dx(s) * out.dy(t) - in.dy(s) * out.dx(t),
            in.dx(s) * out.dx(t) + in.dy(s) * out.dy(t));
    if (Math.PI - Math.abs(turn) < OutlineRequest.USUAL_CORNER) {
      return Optional.empty();
    }
    return Optional.of(new SeenCorner(at, new Point(in.x(s), in.y(s))));
  }

  private static boolean isGreatest(double[] turns, int k, int apart) {
    int count = turns.length;
    for (int off = -apart; off <= apart; off++) {
      double other = turns[Math.floorMod(k + off, count)];
      if (other > turns[k] || (other == turns[k] && off < 0)) {
        return false;
      }
    }
    return true;
  }

  private double turn(int at, int skip, int reach) {
    Point here = place(at - skip);
    Point back = place(at - skip - reach);
    Point there = place(at + skip);
    Point on = place(at + skip + reach);
    double ax = here.x() - back.x();
    double ay = here.y() - back.y();
    double bx = on.x() - there.x();
    double by = on.y() - there.y();
    return StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  private Point place(int index) {
    return places.get(Math.floorMod(index, places.size()));
  }

  /** The parabola through what lies beside a place, by squares, over the length from that place. */
  private Parabola parabola(int at, int way, int count, int skip) {
    double[][] sums = new double[3][3];
    double[] xs = new double[3];
    double[] ys = new double[3];
    for (int k = skip; k <= skip + count; k++) {
      Point point = place(at + way * k);
      double length = k * step;
      double[] powers = {1, length, length * length};
      for (int i = 0; i < 3; i++) {
        xs[i] += powers[i] * point.x();
        ys[i] += powers[i] * point.y();
        for (int j = 0; j < 3; j++) {
          sums[i][j] += powers[i] * powers[j];
        }
      }
    }
    DecompositionSolver solver =
        new QRDecomposition(new Array2DRowRealMatrix(sums, false)).getSolver();
    return new Parabola(
        solver.solve(new ArrayRealVector(xs)).toArray(),
        solver.solve(new ArrayRealVector(ys)).toArray());
  }

  /** Two polynomials of the second degree: where a point is after a length. */
  private static final class Parabola {
    private final double[] xs;
    private final double[] ys;

    Parabola(double[] xs, double[] ys) {
      this.xs = xs;
      this.ys = ys;
    }

    double x(double s) {
      return xs[0] + s * (xs[1] + s * xs[2]);
    }

    double y(double s) {
      return ys[0] + s * (ys[1] + s * ys[2]);
    }

    double dx(double s) {
      return xs[1] + 2 * s * xs[2];
    }

    double dy(double s) {
      return ys[1] + 2 * s * ys[2];
    }
  }
}
