package org.hemwright.checks;

import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;

/** A measurement of the body in one size, as the chart has it. */
final class BodyMeasurement {
  private BodyMeasurement() {}

  /** The chart's value (mm); absent where it has no such column or the cell is blank. */
  static OptionalDouble of(String name, SizedPattern sized, Pattern pattern) {
    return pattern
        .chart()
        .column(name)
        .map(column -> column.cells().get(sized.size().position()).value())
        .orElse(OptionalDouble.empty());
  }
}
