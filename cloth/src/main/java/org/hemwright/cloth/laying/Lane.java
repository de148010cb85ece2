package org.hemwright.cloth.laying;

/**
 * A part of the strip's width that a shape is held to. A shape with several lanes may lie in any
 * one of them; a shape with none may lie anywhere on the strip.
 */
public sealed interface Lane {

  /**
   * The placed shape keeps low ≤ y ≤ high.
   *
   * @param low across the strip, in the problem's unit
   * @param high across the strip, above {@code low}
   */
  record Between(double low, double high) implements Lane {
    public Between {
      if (!Double.isFinite(low) || !Double.isFinite(high) || low >= high) {
        throw new IllegalArgumentException("a lane from " + low + " to " + high + " has no width");
      }
    }
  }

  /**
   * The shape's own axis y = 0 lies on this line of the strip, so that it slides along the strip
   * only: a piece whose fold edge is drawn on y = 0 and which is cut on the fold.
   *
   * @param y across the strip, in the problem's unit
   */
  record Line(double y) implements Lane {
    public Line {
      if (!Double.isFinite(y)) {
        throw new IllegalArgumentException(
            "a lane needs a finite place across the strip, not " + y);
      }
    }
  }
}
