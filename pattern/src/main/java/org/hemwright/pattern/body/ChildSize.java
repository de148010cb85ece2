package org.hemwright.pattern.body;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How old or how tall the child is whom a size is made for, as far as the size's name or a column
 * of heights tells: {@code 2T} is two years, {@code 9M} nine months, a plain {@code 8} eight years,
 * {@code 104} a height in centimetres. Of a range, such as {@code 3-6M}, the upper end counts.
 *
 * @param years of age
 * @param height mm
 */
public record ChildSize(OptionalDouble years, OptionalDouble height) {
  /** Plain numbers up to this are years; from {@link #SHORTEST} on they are heights. */
  private static final double OLDEST = 20;

  /** A newborn's height (cm). */
  private static final double SHORTEST = 44;

  private static final Pattern NAME =
      Pattern.compile("(?:(\\d+) ?[-/] ?)?(\\d+) ?(t|m|mo|mths?|months?|y|yrs?|years?)?");

  /** Reads a size and its row of the chart. */
  public static ChildSize of(Size size, SizeChart chart) {
    OptionalDouble height =
        chart
            .column("height")
            .map(column -> column.cells().get(size.position()).value())
            .orElse(OptionalDouble.empty());
    Matcher name = NAME.matcher(size.name().toLowerCase(Locale.ROOT).strip());
    if (!name.matches()) {
      return new ChildSize(OptionalDouble.empty(), height);
    }
    double number = Double.parseDouble(name.group(2));
    String unit = name.group(3) == null ? "" : name.group(3);
    if (unit.startsWith("m")) {
      return new ChildSize(OptionalDouble.of(number / 12), height);
    } else if (!unit.isEmpty() || number <= OLDEST) {
      return new ChildSize(OptionalDouble.of(number), height);
    }
    boolean tall = number >= SHORTEST && height.isEmpty();
    return new ChildSize(OptionalDouble.empty(), tall ? OptionalDouble.of(number * 10) : height);
  }

  /**
   * Whether the child is at most so old or so tall; by age where that is known, else by height.
   *
   * @param mostYears years
   * @param mostHeight mm
   */
  public boolean isUpTo(double mostYears, double mostHeight) {
    return years.isPresent()
        ? years.getAsDouble() <= mostYears
        : height.isPresent() && height.getAsDouble() <= mostHeight;
  }
}
