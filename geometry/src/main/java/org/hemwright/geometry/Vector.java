package org.hemwright.geometry;

/**
 * A step from one point to another, or a direction.
 *
 * @param dx millimetres to the right, finite
 * @param dy millimetres up, finite
 */
public record Vector(double dx, double dy) {
  /** The step that goes nowhere. */
  public static final Vector ZERO = new Vector(0, 0);

  /** Refuses steps that are no number. */
  public Vector {
    if (!Double.isFinite(dx) || !Double.isFinite(dy)) {
      throw new GeometryProblem("a step of (" + dx + ", " + dy + ") mm has no end");
    }
  }

  /** The unit step at an angle (radians, counter-clockwise from rightward). */
  public static Vector atAngle(double radians) {
    return new Vector(StrictMath.cos(radians), StrictMath.sin(radians));
  }

  /** This step and then another. */
  public Vector plus(Vector other) {
    return new Vector(dx + other.dx, dy + other.dy);
  }

  /** This step less another. */
  public Vector minus(Vector other) {
    return new Vector(dx - other.dx, dy - other.dy);
  }

  /** This step taken {@code factor} times as far. */
  public Vector times(double factor) {
    return new Vector(dx * factor, dy * factor);
  }

  /** The step back. */
  public Vector negated() {
    return new Vector(-dx, -dy);
  }

  /** The dot product (mm²): positive when the two point the same way. */
  public double dot(Vector other) {
    return dx * other.dx + dy * other.dy;
  }

  /** The cross product (mm²): positive when {@code other} points to the left of this. */
  public double cross(Vector other) {
    return dx * other.dy - dy * other.dx;
  }

  /** How far the step goes (mm). */
  public double length() {
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The step of length 1 the same way; a step that goes nowhere has none and is refused. */
  public Vector unit() {
    double scale = Math.max(Math.abs(dx), Math.abs(dy));
    if (scale == 0) {
      throw new GeometryProblem("a step of no length has no direction");
    }
    double u = dx / scale;
    double v = dy / scale;
    double length = Math.sqrt(u * u + v * v);
    return new Vector(u / length, v / length);
  }

  /** A quarter turn counter-clockwise. */
  public Vector left() {
    return new Vector(-dy, dx);
  }

  /** A quarter turn clockwise. */
  public Vector right() {
    return new Vector(dy, -dx);
  }

  /** The direction (radians, counter-clockwise from rightward, over −π to π). */
  public double angle() {
    return StrictMath.atan2(dy, dx);
  }

  /** The angle to turn through from this direction to another (radians, −π to π). */
  public double angleTo(Vector other) {
    return StrictMath.atan2(cross(other), dot(other));
  }

  /** This step turned counter-clockwise (radians). */
  public Vector turned(double radians) {
    double cos = StrictMath.cos(radians);
    double sin = StrictMath.sin(radians);
    return new Vector(dx * cos - dy * sin, dx * sin + dy * cos);
  }

  /** This direction carried by a motion. */
  public Vector moved(Motion motion) {
    return motion.apply(this);
  }
}
