package org.hemwright.pattern.quantity;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number and its unit: {@code 12.5 cm}, {@code 3/4 in}, {@code 1 1/4 in}; no blanks round
 * the bar, which may be the fraction slash of typesetters.
 */
final class NumberReader {
  private static final double LARGEST = 1e7;
  private static final Pattern FORM =
      Pattern.compile(
          "(?<sign>[-\u2212]?)"
              + "(?:(?:(?<whole>\\d+)[ \u00a0]+)?(?<over>\\d+)[/\u2044](?<under>\\d+)"
              + "|(?<decimal>\\d+(?:\\.\\d*)?|\\.\\d+))"
              + "[ \u00a0]*(?<unit>.*)");
  private static final Pattern COMMA = Pattern.compile("[-\u2212]?\\d*,\\d+.*");

  private NumberReader() {}

  /**
   * Reads a text.
   *
   * @param unitOf the factor of a unit's word, the empty word being no unit at all
   * @param made makes the value from the amount in the inner unit
   */
  static <T> Reading<T> read(
      String text, Function<String, Optional<Double>> unitOf, DoubleFunction<T> made) {
    String line = text.strip();
    if (line.isEmpty()) {
      return new Reading.Unread<>(Reading.Reason.NOTHING, line);
    }
    if (COMMA.matcher(line).matches()) {
      return new Reading.Unread<>(Reading.Reason.DECIMAL_COMMA, line);
    }
    Matcher form = FORM.matcher(line);
    if (!form.matches()) {
      return new Reading.Unread<>(Reading.Reason.NO_NUMBER, line);
    }
    double amount = amount(form);
    if (Double.isNaN(amount) || Double.isInfinite(amount)) {
      return new Reading.Unread<>(Reading.Reason.ZERO_BELOW_BAR, line);
    }
    String unit = form.group("unit");
    Optional<Double> factor = unitOf.apply(unit);
    if (factor.isEmpty() && unit.isEmpty() && amount != 0) {
      return new Reading.Unread<>(Reading.Reason.UNIT_MISSING, line);
    }
    if (factor.isEmpty() && !unit.isEmpty()) {
      boolean letters = unit.chars().allMatch(c -> Character.isLetter(c) || c == '%');
      return new Reading.Unread<>(
          letters ? Reading.Reason.UNIT_UNKNOWN : Reading.Reason.NO_NUMBER, letters ? unit : line);
    }
    double value = (form.group("sign").isEmpty() ? amount : -amount) * factor.orElse(1.0);
    if (!(Math.abs(value) <= LARGEST)) {
      return new Reading.Unread<>(Reading.Reason.TOO_LARGE, line);
    }
    return new Reading.Read<>(made.apply(value));
  }

  private static double amount(Matcher form) {
    String decimal = form.group("decimal");
    if (decimal != null) {
      return Double.parseDouble(decimal);
    }
    String whole = form.group("whole");
    double fraction =
        Double.parseDouble(form.group("over")) / Double.parseDouble(form.group("under"));
    return whole == null ? fraction : Double.parseDouble(whole) + fraction;
  }
}
