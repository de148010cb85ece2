package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A smooth curve through points, drawn as a practised hand would: J. D. Hobby, "Smooth, easy to
 * compute interpolating splines", Discrete & Computational Geometry 1 (1986), with the choices of
 * METAFONT (D. E. Knuth, "The METAFONTbook", chapter 14).
 *
 * <pre>{@code
 * SmoothCurve.from(neck).leaving(right).to(chest).to(underarm).arriving(down).path()
 * }</pre>
 *
 * <p>Where no heading is given at an end, the curve sets out with its curl: 1 bends there about as
 * much as at the next knot, 0 goes straight. At a knot on the way one heading, given by either
 * word, holds for both sides; two different ones make a corner.
 */
public final class SmoothCurve {
  private static final double LOOSEST_TENSION = 0.75;

  /** One knot; curls and tensions are what Hobby calls χ and τ. */
  static final class Knot {
    final Point point;
    @Nullable Vector arriving;
    @Nullable Vector leaving;
    double curl = Double.NaN;
    double tensionOut = 1;
    double tensionIn = 1;

    Knot(Point point) {
      this.point = point;
    }

    /** Whether the curve falls in two here, each solved by itself. */
    boolean isBreak() {
      return arriving != null || leaving != null || !Double.isNaN(curl);
    }
  }

  private final List<Knot> knots = new ArrayList<>();

  private SmoothCurve() {}

  /** Starts a curve at a point. */
  public static SmoothCurve from(Point start) {
    SmoothCurve curve = new SmoothCurve();
    curve.knots.add(new Knot(start));
    return curve;
  }

  /** Goes on to the next point, which must lie apart from the last. */
  public SmoothCurve to(Point next) {
    refuseCoincident(last().point, next);
    knots.add(new Knot(next));
    return this;
  }

  /** Leaves the last point with a heading; only the direction of the vector counts. */
  public SmoothCurve leaving(Vector heading) {
    last().leaving = heading.unit();
    return this;
  }

  /** Arrives at the last point with a heading; only the direction of the vector counts. */
  public SmoothCurve arriving(Vector heading) {
    last().arriving = heading.unit();
    return this;
  }

  /** Bends at the last point this many times as much as at its neighbour; 0 or more. */
  public SmoothCurve curl(double curl) {
    if (!(curl >= 0 && Double.isFinite(curl))) {
      throw new GeometryProblem("a curl is 0 or more, not " + curl);
    }
    last().curl = curl;
    return this;
  }

  /**
   * How tautly the stretch from the last point to the next is drawn, on leaving the one and on
   * arriving at the other: 1 as usual, more is straighter, and 0.75 is the loosest.
   */
  public SmoothCurve tension(double out, double in) {
    for (double tension : new double[] {out, in}) {
      if (!(tension >= LOOSEST_TENSION && Double.isFinite(tension))) {
        throw new GeometryProblem("a tension is " + LOOSEST_TENSION + " or more, not " + tension);
      }
    }
    last().tensionOut = out;
    last().tensionIn = in;
    return this;
  }

  /** The open curve through all points so far, of which there must be two at least. */
  public Path path() {
    if (knots.size() < 2) {
      throw new GeometryProblem("a smooth curve needs two points or more");
    }
    return Path.of(HobbySpline.open(knots));
  }

  /** The closed curve through all points so far, back to the first, smooth there too. */
  public Path closedPath() {
    if (knots.size() < 2) {
      throw new GeometryProblem("a closed smooth curve needs two points or more");
    }
    refuseCoincident(last().point, knots.get(0).point);
    return Path.of(HobbySpline.closed(knots));
  }

  private Knot last() {
    return knots.get(knots.size() - 1);
  }

  private static void refuseCoincident(Point last, Point next) {
    if (last.isAt(next)) {
      throw new GeometryProblem(
          "two points in a row of a smooth curve lie on one another at (%s, %s) mm"
              .formatted(next.x(), next.y()));
    }
  }
}
