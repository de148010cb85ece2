package org.hemwright.exchange.photograph;

/**
 * A place in a picture.
 *
 * @param x pixels from its left edge
 * @param y pixels from its upper edge
 */
public record Pixel(double x, double y) {
  public Pixel {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place in a picture is at two numbers");
    }
  }

  double distanceTo(Pixel other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }
}
