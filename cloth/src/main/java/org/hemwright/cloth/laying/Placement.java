package org.hemwright.cloth.laying;

/**
 * Where one copy of a shape lies: turned about its own origin, then moved.
 *
 * @param id the shape's id
 * @param turn one of the shape's turns
 * @param x where its origin lies along the strip, in the problem's unit
 * @param y where its origin lies across the strip, in the problem's unit
 */
public record Placement(String id, Turn turn, double x, double y) {

  public Placement {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place needs two finite numbers, not " + x + ", " + y);
    }
  }
}
