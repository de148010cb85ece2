package org.hemwright.cloth.laying;

/**
 * Places along the strip that come again and again, as the bars of a striped cloth do: a shape that
 * is held to them has its origin at {@code offset} plus a whole number of repeats.
 *
 * @param offset one such place, in the problem's unit
 * @param repeat from one to the next, in the problem's unit; positive
 */
public record Bars(double offset, double repeat) {
  public Bars {
    if (!Double.isFinite(offset) || !Double.isFinite(repeat) || repeat <= 0) {
      throw new IllegalArgumentException(
          "bars at " + offset + " cannot come again after " + repeat);
    }
  }

  /** How far a place is from the nearest bar, 0 or more. */
  double apart(double place) {
    double steps = (place - offset) / repeat;
    return Math.abs(steps - Math.rint(steps)) * repeat;
  }
}
