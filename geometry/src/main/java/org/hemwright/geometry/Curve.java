package org.hemwright.geometry;

/**
 * A smooth stretch of line, walked from start to end as the parameter {@code t} goes from 0 to 1.
 * The parameter is no length: walk by length with {@link #parameterAt}.
 */
public sealed interface Curve permits Line, Cubic {
  /** Where it starts. */
  Point start();

  /** Where it ends. */
  Point end();

  /** The point at a parameter; 0 and 1 give the ends to the last bit. */
  Point at(double t);

  /** How the point moves as the parameter grows (mm for a whole unit of parameter). */
  Vector derivative(double t);

  /** How that movement changes. */
  Vector secondDerivative(double t);

  /**
   * The unit vector along the curve, also where a control point lies on an end and the derivative
   * is nothing.
   */
  Vector direction(double t);

  /**
   * One over the radius of the circle that hugs the curve (1/mm): positive where it bends to the
   * left, 0 where it is straight, infinite at a cusp.
   */
  double curvature(double t);

  /** The whole length (mm), to {@link Tolerance#LENGTH_SHARE} of it. */
  double length();

  /** The length from one parameter to another (mm); less than 0 when {@code t1 < t0}. */
  double length(double t0, double t1);

  /**
   * The parameter at a length from the start (mm), to {@link Tolerance#PLACE}; lengths before the
   * start or past the end give the ends.
   */
  double parameterAt(double distance);

  /** The stretch between two parameters, {@code t0 < t1}, walked the same way. */
  Curve part(double t0, double t1);

  /** The same stretch walked the other way. */
  Curve reversed();

  /** The curve carried by a motion. */
  Curve moved(Motion motion);

  /** The smallest upright box round it. */
  Box bounds();
}
