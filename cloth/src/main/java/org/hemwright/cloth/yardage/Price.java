package org.hemwright.cloth.yardage;

/**
 * What a cloth costs, in whatever money.
 *
 * @param amount for a metre or a yard, 0 or more
 * @param unit which of the two
 */
public record Price(double amount, Unit unit) {
  public Price {
    if (!(amount >= 0) || !Double.isFinite(amount)) {
      throw new IllegalArgumentException("a price is 0 or more, not " + amount);
    }
  }

  /** What a price is for. */
  public enum Unit {
    METRE,
    YARD
  }

  /** What a length costs, as a shop cuts it in the price's unit. */
  public double of(BuyingLength length) {
    return amount * (unit == Unit.METRE ? length.metres() : length.yards());
  }
}
