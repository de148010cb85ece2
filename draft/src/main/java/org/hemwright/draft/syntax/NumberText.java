package org.hemwright.draft.syntax;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Optional;

/**
 * A number as written, before its unit: {@code 12.5}, {@code 3/4}, {@code 1 3/4}.
 *
 * @param end offset after it
 * @param value what it is worth; may be infinite or NaN when it cannot be
 * @param slip the code of what is wrong with its spelling
 * @param meant how it would be spelled
 */
record NumberText(int end, double value, Optional<String> slip, String meant) {

  /** Whether a number starts here. */
  static boolean startsAt(String text, int at, int end) {
    return isDigit(text, at, end)
        || isFractionSign(text, at, end)
        || (at < end && text.charAt(at) == '.' && isDigit(text, at + 1, end));
  }

  /**
   * Reads a number that starts at {@code at}.
   *
   * @param divides whether a bar stands right before it, so that it can be no fraction's upper part
   */
  static NumberText read(String text, int at, int end, boolean divides) {
    if (text.charAt(at) == '.') {
      int after = digits(text, at + 1, end);
      String meant = "0" + text.substring(at, after);
      return slip(after, meant, "leading-point");
    }
    if (isFractionSign(text, at, end)) {
      return slip(at + 1, fraction(text.charAt(at)), "fraction-sign");
    }
    int whole = digits(text, at, end);
    if (isFractionSign(text, whole, end)) {
      return slip(
          whole + 1,
          text.substring(at, whole) + " " + fraction(text.charAt(whole)),
          "fraction-sign");
    }
    if (whole < end && text.charAt(whole) == ',' && isDigit(text, whole + 1, end)) {
      int after = digits(text, whole + 1, end);
      return slip(after, text.substring(at, after).replace(',', '.'), "decimal-comma");
    }
    if (whole < end && text.charAt(whole) == '.' && isDigit(text, whole + 1, end)) {
      return plain(digits(text, whole + 1, end), text, at);
    }
    int over = divides ? -1 : fractionEnd(text, at, end);
    if (over >= 0) {
      return plain(over, text, at);
    }
    int upper = whole;
    while (upper < end && text.charAt(upper) == ' ') {
      upper++;
    }
    int mixed = upper > whole && !divides ? fractionEnd(text, upper, end) : -1;
    return plain(mixed >= 0 ? mixed : whole, text, at);
  }

  /** The end of {@code 3/4} when that stands here, else -1. */
  private static int fractionEnd(String text, int at, int end) {
    int bar = digits(text, at, end);
    if (bar == at || bar >= end || text.charAt(bar) != '/' || !isDigit(text, bar + 1, end)) {
      return -1;
    }
    int after = digits(text, bar + 1, end);
    boolean goesOn =
        after < end
            && (text.charAt(after) == '.' || text.charAt(after) == ',')
            && isDigit(text, after + 1, end);
    return goesOn ? -1 : after;
  }

  private static NumberText plain(int end, String text, int at) {
    String number = text.substring(at, end);
    double value = value(number);
    boolean noShare = Double.isNaN(value) || (Double.isInfinite(value) && number.contains("/"));
    return new NumberText(
        end, value, noShare ? Optional.of("zero-below-bar") : Optional.empty(), number);
  }

  private static NumberText slip(int end, String meant, String code) {
    return new NumberText(end, value(meant), Optional.of(code), meant);
  }

  /** The value of a well-spelled number. */
  static double value(String number) {
    int bar = number.indexOf('/');
    if (bar < 0) {
      return Double.parseDouble(number);
    }
    int blank = number.lastIndexOf(' ');
    double upper = Double.parseDouble(number.substring(blank + 1, bar));
    double lower = Double.parseDouble(number.substring(bar + 1));
    double whole = blank < 0 ? 0 : Double.parseDouble(number.substring(0, number.indexOf(' ')));
    return whole + upper / lower;
  }

  private static int digits(String text, int at, int end) {
    int after = at;
    while (isDigit(text, after, end)) {
      after++;
    }
    return after;
  }

  private static boolean isDigit(String text, int at, int end) {
    return at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private static boolean isFractionSign(String text, int at, int end) {
    return at < end
        && Character.getType(text.charAt(at)) == Character.OTHER_NUMBER
        && Normalizer.normalize(text.substring(at, at + 1), Normalizer.Form.NFKC)
            .matches("[0-9]+\u2044[0-9]+");
  }

  private static String fraction(char sign) {
    return Normalizer.normalize(Character.toString(sign), Normalizer.Form.NFKC)
        .replace('\u2044', '/');
  }

  /** A decimal as short as it can be written, without an exponent. */
  static String decimal(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0).toPlainString() : exact.toPlainString();
  }
}
