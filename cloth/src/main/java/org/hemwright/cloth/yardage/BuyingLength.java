package org.hemwright.cloth.yardage;

import org.hemwright.geometry.Tolerance;

/**
 * A length as a shop cuts it, up from the exact length in each unit by itself (handbook section 5,
 * Rounding).
 *
 * @param tenths of a metre, 1 or more
 * @param eighths of a yard, 1 or more
 */
public record BuyingLength(int tenths, int eighths) {
  private static final double TENTH = 100;
  private static final double EIGHTH = 914.4 / 8;

  public BuyingLength {
    if (tenths < 1 || eighths < 1) {
      throw new IllegalArgumentException("a shop cuts a tenth of a metre or more");
    }
  }

  /** What to buy for a length (mm), more than 0; what a drawing cannot show is not rounded up. */
  public static BuyingLength of(double mm) {
    return new BuyingLength(up(mm, TENTH), up(mm, EIGHTH));
  }

  private static int up(double mm, double step) {
    return (int) Math.max(1, Math.ceil((mm - Tolerance.DRAWN_LENGTH) / step));
  }

  /** The longest length that is bought as this in both units (mm). */
  double longest() {
    return Math.min(tenths * TENTH, eighths * EIGHTH);
  }

  /** In metres. */
  public double metres() {
    return tenths / 10.0;
  }

  /** In yards. */
  public double yards() {
    return eighths / 8.0;
  }
}
