package org.hemwright.geometry;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * A place on the plane.
 *
 * @param x millimetres to the right of the origin, at most {@link Tolerance#FARTHEST} either way
 * @param y millimetres above the origin, at most {@link Tolerance#FARTHEST} either way
 */
public record Point(double x, double y) {
  /** Where both coordinates are 0. */
  public static final Point ORIGIN = new Point(0, 0);

  /** Refuses coordinates that are no number or lie beyond the edge of the plane. */
  public Point {
    if (!(Math.abs(x) <= Tolerance.FARTHEST && Math.abs(y) <= Tolerance.FARTHEST)) {
      throw new GeometryProblem(
          "a point falls at (%s, %s) mm, farther out than any drawing reaches"
              .formatted(plain(x), plain(y)));
    }
  }

  /** As a person writes it, to six figures, where it is not too long for that. */
  private static String plain(double value) {
    return Math.abs(value) < 1e15
        ? BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }

  /** The point that lies {@code step} away from this one. */
  public Point plus(Vector step) {
    return new Point(x + step.dx(), y + step.dy());
  }

  /** The point from which {@code step} leads to this one. */
  public Point minus(Vector step) {
    return new Point(x - step.dx(), y - step.dy());
  }

  /** The step that leads from {@code origin} to this point. */
  public Vector minus(Point origin) {
    return new Vector(x - origin.x, y - origin.y);
  }

  /** The straight distance to another point (mm). */
  public double distanceTo(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Distance to the nearest place on the straight stretch between two points (mm). */
  public double distanceTo(Point from, Point to) {
    double dx = to.x - from.x;
    double dy = to.y - from.y;
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / square;
    double share = Math.max(0, Math.min(1, along));
    double offX = from.x + share * dx - x;
    double offY = from.y + share * dy - y;
    return Math.sqrt(offX * offX + offY * offY);
  }

  /**
   * The point at a share of the straight way to another: 0 is here, 1 is there, outside 0 to 1 the
   * way goes on straight.
   */
  public Point toward(Point other, double share) {
    double rest = 1 - share;
    return new Point(rest * x + share * other.x, rest * y + share * other.y);
  }

  /** Whether both coordinates are the same numbers; 0 is the same on either side of it. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Point point && x == point.x && y == point.y;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x + 0.0) + Double.hashCode(y + 0.0);
  }

  /** Whether another point is this one within {@link Tolerance#SAME_POINT}. */
  public boolean isAt(Point other) {
    return distanceTo(other) <= Tolerance.SAME_POINT;
  }
}
