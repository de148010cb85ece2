package org.hemwright.pattern.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a person reads them: rounded, a decimal point, no noughts at the end. */
public final class DecimalText {
  private DecimalText() {}

  /**
   * A number with at most so many digits after the point, halves rounded away from 0; a minus sign
   * proper (U+2212) before what is less than 0.
   *
   * @param value finite
   * @param digits 0 or more
   */
  public static String of(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      return "0";
    }
    String text = rounded.abs().stripTrailingZeros().toPlainString();
    return rounded.signum() < 0 ? "\u2212" + text : text;
  }
}
