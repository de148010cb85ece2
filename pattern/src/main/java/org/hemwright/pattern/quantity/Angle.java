package org.hemwright.pattern.quantity;

/**
 * An angle where a person types or reads it; between those two it is a plain number of radians.
 *
 * @param radians finite, counter-clockwise where it is a turn
 */
public record Angle(double radians) {
  private static final double DEGREE = Math.PI / 180;

  public Angle {
    if (!Double.isFinite(radians)) {
      throw new IllegalArgumentException("an angle is a finite number, not " + radians);
    }
  }

  /** This angle in degrees. */
  public double degrees() {
    return radians / DEGREE;
  }

  /** As a person reads it, to so many digits after the point: {@code 12.5°}. */
  public String text(int digits) {
    return DecimalText.of(degrees(), digits) + "\u00b0";
  }
}
