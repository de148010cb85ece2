package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Circular arcs as paths of cubics, no farther than {@link Tolerance#ARC} from the true circle.
 *
 * <p>A cubic with ends and end directions of an arc of angle θ and handles of 4/3·tan(θ/4) radii
 * strays outward by at most 4/27·sin⁶(θ/4)/cos²(θ/4) radii (T. Goldapp, "Approximation of circular
 * arcs by cubic polynomials", 1991); the arc is cut into as many as that asks for.
 */
public final class CircularArc {
  private CircularArc() {}

  /**
   * The arc about a centre from a point through an angle (radians, positive counter-clockwise, not
   * 0, at most one whole turn, which gives a closed path).
   */
  public static Path about(Point centre, Point from, double sweepRadians) {
    double radius = centre.distanceTo(from);
    double turn = 2 * Math.PI;
    if (centre.isAt(from)) {
      throw new GeometryProblem("an arc starts at its own centre, so it has no radius");
    }
    if (!(Math.abs(sweepRadians) <= turn + Tolerance.SAME_DIRECTION)) {
      throw new GeometryProblem(
          "an arc goes round by "
              + StrictMath.toDegrees(sweepRadians)
              + " degrees, more than once");
    }
    if (Math.abs(sweepRadians) * radius <= Tolerance.NO_LENGTH) {
      throw new GeometryProblem("an arc of 0 degrees has no length");
    }
    boolean whole = Math.abs(sweepRadians) >= turn - Tolerance.SAME_DIRECTION;
    Vector spoke = from.minus(centre);
    Point to = whole ? from : centre.plus(spoke.turned(sweepRadians));
    return along(centre, from, to, whole ? Math.copySign(turn, sweepRadians) : sweepRadians);
  }

  /**
   * The arc between two points with a radius (mm). Of the four that fit, {@code centreOnLeft} takes
   * those which bend to the left, and {@code major} the longer way round.
   */
  public static Path between(
      Point from, Point to, double radius, boolean centreOnLeft, boolean major) {
    double chord = from.distanceTo(to);
    if (from.isAt(to)) {
      throw new GeometryProblem("an arc between two points needs them apart");
    }
    if (!(radius >= chord / 2 - Tolerance.SAME_POINT)) {
      throw new GeometryProblem(
          "an arc of radius %s mm cannot span %s mm; the radius must be %s mm or more"
              .formatted(radius, chord, chord / 2));
    }
    double depth = Math.sqrt(Math.max(0, radius * radius - chord * chord / 4));
    Vector aside = to.minus(from).unit().left().times(centreOnLeft == major ? -depth : depth);
    Point centre = from.toward(to, 0.5).plus(aside);
    double half = StrictMath.atan2(chord / 2, depth);
    double sweep = major ? 2 * (Math.PI - half) : 2 * half;
    return along(centre, from, to, centreOnLeft ? sweep : -sweep);
  }

  /** The arc from {@code a} through {@code b} to {@code c}, three points that are not in line. */
  public static Path through(Point a, Point b, Point c) {
    Vector ab = b.minus(a);
    Vector ac = c.minus(a);
    double cross = ab.cross(ac);
    double aside = Math.abs(cross) / Math.max(ac.length(), Math.max(ab.length(), b.distanceTo(c)));
    if (!(aside > Tolerance.SAME_POINT)) {
      throw new GeometryProblem("an arc needs three points that do not lie in one line");
    }
    double abSquare = ab.dot(ab);
    double acSquare = ac.dot(ac);
    Vector toCentre =
        new Vector(
            (ac.dy() * abSquare - ab.dy() * acSquare) / (2 * cross),
            (ab.dx() * acSquare - ac.dx() * abSquare) / (2 * cross));
    Point centre = a.plus(toCentre);
    double sweep = a.minus(centre).angleTo(c.minus(centre));
    if (cross > 0 && sweep < 0) {
      sweep += 2 * Math.PI;
    } else if (cross < 0 && sweep > 0) {
      sweep -= 2 * Math.PI;
    }
    return along(centre, a, c, sweep);
  }

  private static Path along(Point centre, Point from, Point to, double sweep) {
    double radius = centre.distanceTo(from);
    int count = cubicsFor(radius, Math.abs(sweep));
    double step = sweep / count;
    double handle = 4.0 / 3 * StrictMath.tan(step / 4);
    Vector spoke = from.minus(centre);
    Point here = from;
    List<Curve> curves = new ArrayList<>(count);
    for (int i = 1; i <= count; i++) {
      Vector next = i == count ? to.minus(centre) : from.minus(centre).turned(step * i);
      Point there = i == count ? to : centre.plus(next);
      curves.add(
          new Cubic(
              here,
              here.plus(spoke.left().times(handle)),
              there.plus(next.right().times(handle)),
              there));
      here = there;
      spoke = next;
    }
    return Path.of(curves);
  }

  private static int cubicsFor(double radius, double sweep) {
    int count = (int) Math.ceil(sweep / (Math.PI / 2) - Tolerance.SAME_DIRECTION);
    while (strays(radius, sweep / Math.max(1, count)) > Tolerance.ARC) {
      count++;
    }
    return Math.max(1, count);
  }

  private static double strays(double radius, double angle) {
    double sin = StrictMath.sin(angle / 4);
    double cos = StrictMath.cos(angle / 4);
    return radius * 4 / 27 * sin * sin * sin * sin * sin * sin / (cos * cos);
  }
}
