package org.hemwright.geometry;

/**
 * A motion that keeps every length: a move, a turn, a mirroring, or some of them in turn. A point
 * is first mirrored top to bottom (if at all), then turned about the origin, then shifted.
 *
 * @param cos cosine of the turn
 * @param sin sine of the turn
 * @param mirrored whether left and right change sides
 * @param shift the move that comes last (mm)
 */
public record Motion(double cos, double sin, boolean mirrored, Vector shift) {
  private static final Motion IDENTITY = new Motion(1, 0, false, Vector.ZERO);

  /** Refuses a turn that would stretch. */
  public Motion {
    if (!(Math.abs(cos * cos + sin * sin - 1) <= Tolerance.ROUNDED_UNIT)) {
      throw new GeometryProblem("a motion with cosine " + cos + " and sine " + sin + " stretches");
    }
  }

  /** The motion that leaves everything where it is. */
  public static Motion identity() {
    return IDENTITY;
  }

  /** A move by a step. */
  public static Motion move(Vector step) {
    return new Motion(1, 0, false, step);
  }

  /** A turn about a centre, counter-clockwise (radians). */
  public static Motion turn(Point centre, double radians) {
    Motion turn = new Motion(StrictMath.cos(radians), StrictMath.sin(radians), false, Vector.ZERO);
    return turn.keeping(centre);
  }

  /** A mirroring in the line through two points, which must not be one. */
  public static Motion mirror(Point a, Point b) {
    if (a.isAt(b)) {
      throw new GeometryProblem(
          "a mirror line needs two points, and both lie at (" + a.x() + ", " + a.y() + ") mm");
    }
    Vector along = b.minus(a).unit();
    double cos = along.dx() * along.dx() - along.dy() * along.dy();
    double sin = 2 * along.dx() * along.dy();
    return new Motion(cos, sin, true, Vector.ZERO).keeping(a);
  }

  private Motion keeping(Point fixed) {
    return new Motion(cos, sin, mirrored, fixed.minus(apply(fixed)));
  }

  /** This motion and after it another. */
  public Motion then(Motion next) {
    double own = next.mirrored ? -sin : sin;
    double turnCos = next.cos * cos - next.sin * own;
    double turnSin = next.sin * cos + next.cos * own;
    double size = Math.sqrt(turnCos * turnCos + turnSin * turnSin);
    return new Motion(
        turnCos / size,
        turnSin / size,
        mirrored != next.mirrored,
        next.apply(shift).plus(next.shift));
  }

  /** The motion that undoes this one. */
  public Motion inverse() {
    Motion back = new Motion(cos, mirrored ? sin : -sin, mirrored, Vector.ZERO);
    return back.then(move(back.apply(shift).negated()));
  }

  /** Whether left and right change sides. */
  public boolean isMirror() {
    return mirrored;
  }

  /** The point moved. */
  public Point apply(Point point) {
    double y = mirrored ? -point.y() : point.y();
    return new Point(
        cos * point.x() - sin * y + shift.dx(), sin * point.x() + cos * y + shift.dy());
  }

  /** The direction turned and mirrored; a step is not shifted. */
  public Vector apply(Vector step) {
    double dy = mirrored ? -step.dy() : step.dy();
    return new Vector(cos * step.dx() - sin * dy, sin * step.dx() + cos * dy);
  }
}
