package org.hemwright.geometry;

/**
 * A straight stretch between two different points.
 *
 * @param start where it starts
 * @param end where it ends
 */
public record Line(Point start, Point end) implements Curve {
  /** Refuses a line from a point to itself. */
  public Line {
    if (start.equals(end)) {
      throw new GeometryProblem(
          "a line starts and ends at one point, (" + start.x() + ", " + start.y() + ") mm");
    }
  }

  @Override
  public Point at(double t) {
    return start.toward(end, t);
  }

  @Override
  public Vector derivative(double t) {
    return end.minus(start);
  }

  @Override
  public Vector secondDerivative(double t) {
    return Vector.ZERO;
  }

  @Override
  public Vector direction(double t) {
    return end.minus(start).unit();
  }

  @Override
  public double curvature(double t) {
    return 0;
  }

  @Override
  public double length() {
    return start.distanceTo(end);
  }

  @Override
  public double length(double t0, double t1) {
    return (t1 - t0) * length();
  }

  @Override
  public double parameterAt(double distance) {
    return Math.max(0, Math.min(1, distance / length()));
  }

  @Override
  public Line part(double t0, double t1) {
    return new Line(at(t0), at(t1));
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line moved(Motion motion) {
    return new Line(motion.apply(start), motion.apply(end));
  }

  @Override
  public Box bounds() {
    return Box.of(start, end);
  }
}
