package org.hemwright.pattern.quantity;

/**
 * A number and what it measures.
 *
 * @param kind what is measured
 * @param amount in the kind's own unit: millimetres, radians, or a plain number; finite
 */
public record Quantity(QuantityKind kind, double amount) {
  public Quantity {
    if (!Double.isFinite(amount)) {
      throw new IllegalArgumentException("a quantity is a finite number, not " + amount);
    }
  }

  /** A length in millimetres. */
  public static Quantity length(double mm) {
    return new Quantity(QuantityKind.LENGTH, mm);
  }

  /** An angle in radians. */
  public static Quantity angle(double radians) {
    return new Quantity(QuantityKind.ANGLE, radians);
  }

  /** A ratio: 0.35 for 35 %. */
  public static Quantity ratio(double share) {
    return new Quantity(QuantityKind.RATIO, share);
  }

  /** A plain number. */
  public static Quantity number(double value) {
    return new Quantity(QuantityKind.NUMBER, value);
  }
}
