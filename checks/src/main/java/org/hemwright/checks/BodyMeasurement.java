package org.hemwright.checks;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.quantity.Quantity;

/** A measurement of the body in one size, as the chart has it. */
final class BodyMeasurement {
  private BodyMeasurement() {}

  /** The chart's value (mm), or the document's own number of that name; absent without either. */
  static OptionalDouble of(String name, SizedPattern sized, Pattern pattern) {
    return pattern
        .chart()
        .column(name)
        .map(column -> column.cells().get(sized.size().position()).value())
        .orElseGet(() -> named(name, sized));
  }

  /** A number of the document that stands for a measurement. */
  private static OptionalDouble named(String name, SizedPattern sized) {
    return Optional.ofNullable(sized.numbers().get(name)).stream()
        .mapToDouble(Quantity::amount)
        .findFirst();
  }
}
