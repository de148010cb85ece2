package org.hemwright.exchange.chart;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell that should hold a number came to.
 *
 * <p>Numbers are written as in the pattern document: {@code 96}, {@code 96.5}, {@code 3/4}, {@code
 * 38 1/4}. The heading's unit may be repeated after the number.
 */
sealed interface CellNumber {
  /** A number, in the heading's unit. */
  record Value(double number) implements CellNumber {}

  /**
   * A text that is no number as it stands.
   *
   * @param code the finding's code
   * @param better what would be read, where that is plain; else empty
   */
  record Unread(String code, String better) implements CellNumber {}

  /** Longer texts are no numbers, and are not looked at closely. */
  int LONGEST = 40;

  /** Into what tapes and people divide an inch or a centimetre. */
  Set<Integer> PARTS = Set.of(2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 64, 100);

  Pattern UNIT_AFTER = Pattern.compile("(.*?)\\s*(mm|cm|in|deg|%|\"|″)");
  Pattern DECIMAL = Pattern.compile("[0-9]{1,15}(\\.[0-9]{1,15})?|\\.[0-9]{1,15}");
  Pattern FRACTION = Pattern.compile("(?:([0-9]{1,9})\\s+)?([0-9]{1,9})/([0-9]{1,9})");
  Pattern HYPHEN_FRACTION = Pattern.compile("([0-9]{1,9})\\s*-\\s*([0-9]{1,9}/[0-9]{1,9})");
  Pattern SIGN_FRACTION = Pattern.compile("([0-9]{0,9})\\s*([¼½¾⅛⅜⅝⅞])");
  Pattern COMMA = Pattern.compile("([0-9]{1,15}),([0-9]{1,15})");

  /**
   * Reads one cell.
   *
   * @param text not blank
   * @param unit the heading's
   * @param decimalComma whether the file's decimal mark is a comma
   */
  static CellNumber read(String text, ChartHeading.Unit unit, boolean decimalComma) {
    if (text.length() > LONGEST) {
      return new Unread("chart-number", "");
    }
    Matcher withUnit = UNIT_AFTER.matcher(text);
    if (withUnit.matches()) {
      if (!unit.written(withUnit.group(2))) {
        return new Unread("chart-cell-unit", "");
      }
      return plain(withUnit.group(1), decimalComma);
    }
    return plain(text, decimalComma);
  }

  private static CellNumber plain(String text, boolean decimalComma) {
    if (text.startsWith("-") || text.startsWith("\u2212")) {
      return plain(text.substring(1).strip(), decimalComma) instanceof Value
          ? new Unread("chart-negative", text.substring(1).strip())
          : new Unread("chart-number", "");
    }
    if (DECIMAL.matcher(text).matches()) {
      return new Value(Double.parseDouble(text));
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return fraction(fraction);
    }
    Matcher comma = COMMA.matcher(text);
    if (comma.matches()) {
      String better = comma.group(1) + "." + comma.group(2);
      return decimalComma
          ? new Value(Double.parseDouble(better))
          : new Unread("chart-decimal-comma", better);
    }
    Matcher hyphen = HYPHEN_FRACTION.matcher(text);
    if (hyphen.matches()) {
      return new Unread("chart-fraction", hyphen.group(1) + " " + hyphen.group(2));
    }
    Matcher sign = SIGN_FRACTION.matcher(text);
    if (sign.matches()) {
      String better = sign.group(1) + " " + spelled(sign.group(2).charAt(0));
      return new Unread("chart-fraction", better.strip());
    }
    return new Unread("chart-number", "");
  }

  private static CellNumber fraction(Matcher parts) {
    double whole = parts.group(1) == null ? 0 : Double.parseDouble(parts.group(1));
    double over = Double.parseDouble(parts.group(2));
    double under = Double.parseDouble(parts.group(3));
    if (under == 0) {
      return new Unread("chart-number", "");
    }
    // After a whole number a fraction is less than one; alone it may be more, as in 41/8.
    boolean inItsPlace = parts.group(1) == null || over < under;
    return PARTS.contains((int) under) && inItsPlace
        ? new Value(whole + over / under)
        : new Unread("chart-fraction-parts", "");
  }

  private static String spelled(char sign) {
    return switch (sign) {
      case '¼' -> "1/4";
      case '½' -> "1/2";
      case '¾' -> "3/4";
      case '⅛' -> "1/8";
      case '⅜' -> "3/8";
      case '⅝' -> "5/8";
      default -> "7/8";
    };
  }
}
