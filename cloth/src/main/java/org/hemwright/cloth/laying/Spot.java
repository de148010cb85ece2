package org.hemwright.cloth.laying;

/**
 * A corner of a loose shape, in the problem's own unit.
 *
 * @param x along the strip, finite
 * @param y across the strip, finite
 */
public record Spot(double x, double y) {

  public Spot {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a corner needs two finite numbers, not " + x + ", " + y);
    }
  }
}
