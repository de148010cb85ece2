package org.hemwright.pattern.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bodies that a size serves by one measurement: from half a step below it to half a step above.
 *
 * @param from mm
 * @param to mm, at or above {@code from}
 */
public record SizeSpan(double from, double to) {
  public SizeSpan {
    if (!(from <= to)) {
      throw new IllegalArgumentException("a span runs upward: " + from + " to " + to);
    }
  }

  /**
   * For each size of a column its span, half way to its neighbours that have a value; the first and
   * the last reach as far outward as inward. A size without a value or without any neighbour has
   * none.
   */
  static List<Optional<SizeSpan>> of(SizeChart.Column column) {
    List<OptionalDouble> values = column.cells().stream().map(SizeChart.Cell::value).toList();
    List<Optional<SizeSpan>> spans = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      OptionalDouble below = nearest(values, i, -1);
      OptionalDouble above = nearest(values, i, 1);
      boolean alone = below.isEmpty() && above.isEmpty();
      spans.add(
          values.get(i).isEmpty() || alone
              ? Optional.empty()
              : Optional.of(about(values.get(i).getAsDouble(), below, above)));
    }
    return spans;
  }

  private static OptionalDouble nearest(List<OptionalDouble> values, int from, int step) {
    for (int i = from + step; i >= 0 && i < values.size(); i += step) {
      if (values.get(i).isPresent()) {
        return values.get(i);
      }
    }
    return OptionalDouble.empty();
  }

  private static SizeSpan about(double value, OptionalDouble below, OptionalDouble above) {
    double down = below.isPresent() ? Math.abs(value - below.getAsDouble()) / 2 : 0;
    double up = above.isPresent() ? Math.abs(above.getAsDouble() - value) / 2 : 0;
    return new SizeSpan(
        value - (below.isPresent() ? down : up), value + (above.isPresent() ? up : down));
  }
}
