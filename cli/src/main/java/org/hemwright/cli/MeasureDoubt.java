package org.hemwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.LengthUnit;
import org.hemwright.pattern.quantity.Reading;

/**
 * A body's measurement so far from the whole chart that its unit or a digit was likely mistyped:
 * less than {@value #LEAST} of the smallest size, or more than {@value #MOST} times the largest.
 */
final class MeasureDoubt {
  private static final double LEAST = 0.6;
  private static final double MOST = 1.6;
  private static final double CM = 10;

  private MeasureDoubt() {}

  /**
   * The question to ask; nothing where the measurement may well be a body's.
   *
   * @param typed as it was typed, {@code 12cm}
   */
  static Optional<String> about(SizeRun run, String name, String typed) {
    List<Double> cells = cells(run, name);
    Optional<Length> length =
        Length.read(typed.strip()) instanceof Reading.Read<Length> read
            ? Optional.of(read.value())
            : Optional.empty();
    if (cells.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    double least = cells.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double most = cells.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double mm = length.get().mm();
    if (mm >= LEAST * least && mm <= MOST * most) {
      return Optional.empty();
    }
    String meant =
        meant(mm, unit(typed), LEAST * least, MOST * most)
            .map(text -> "; did you mean " + text + "?")
            .orElse("; look at the unit and the digits");
    return Optional.of(
        "--%s %s: the chart's %s runs from %s cm to %s cm%s"
            .formatted(
                name.replace('_', '-'),
                typed.strip(),
                name.replace('_', ' '),
                number(least / CM),
                number(most / CM),
                meant));
  }

  private static List<Double> cells(SizeRun run, String name) {
    List<Double> cells = new ArrayList<>();
    for (SizeChart.Cell cell :
        run.pattern().chart().column(name).map(SizeChart.Column::cells).orElse(List.of())) {
      OptionalDouble value = cell.value();
      value.ifPresent(cells::add);
    }
    return cells;
  }

  /** The unit that was typed. */
  private static LengthUnit unit(String typed) {
    String lower = typed.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(LengthUnit.values())
        .filter(unit -> lower.endsWith(unit.word()))
        .findFirst()
        .orElse(LengthUnit.MILLIMETRES);
  }

  /** The same digits in another unit, or with the decimal point elsewhere. */
  private static Optional<String> meant(double mm, LengthUnit typed, double least, double most) {
    double amount = mm / typed.mm();
    for (LengthUnit unit : LengthUnit.values()) {
      double other = amount * unit.mm();
      if (unit != typed && other >= least && other <= most) {
        return Optional.of(number(amount) + unit.word());
      }
    }
    for (double times : new double[] {10, 0.1, 100, 0.01}) {
      if (mm * times >= least && mm * times <= most) {
        return Optional.of(number(amount * times) + typed.word());
      }
    }
    return Optional.empty();
  }

  private static String number(double value) {
    double tenths = StrictMath.rint(value * 10) / 10;
    return tenths == StrictMath.rint(tenths)
        ? Long.toString((long) tenths)
        : Double.toString(tenths);
  }
}
