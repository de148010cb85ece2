package org.hemwright.workbench.advise;

import java.util.List;

/**
 * Where a body's measurement falls among those of the chart.
 *
 * @param measure the chart's name of it
 * @param yours the body's (mm)
 * @param known the sizes in which the chart has it, in order, at least one
 * @param drawn what it has there (mm), rising or level; as many as sizes
 */
record ChartPlace(String measure, double yours, List<String> known, List<Double> drawn) {
  /** From here to one less than that, a body lies between two sizes. */
  private static final double BETWEEN = 0.25;

  /** A body this many steps beyond the end of the chart is none of its sizes. */
  private static final double BEYOND = 0.5;

  ChartPlace {
    known = List.copyOf(known);
    drawn = List.copyOf(drawn);
    if (known.isEmpty() || known.size() != drawn.size()) {
      throw new IllegalArgumentException(
          "a measurement has a value in each size that it is known in");
    }
  }

  /** The index of the last size that is no larger than the body; 0 where all are. */
  private int lower() {
    int lower = 0;
    for (int i = 0; i < drawn.size(); i++) {
      if (drawn.get(i) <= yours) {
        lower = i;
      }
    }
    return lower;
  }

  /** How far from the lower size to the next, 0 to 1; beyond the ends less or more. */
  private double share() {
    int lower = lower();
    int last = drawn.size() - 1;
    if (last == 0) {
      return 0;
    }
    int from = Math.min(lower, last - 1);
    double step = drawn.get(from + 1) - drawn.get(from);
    double share = step > 0 ? (yours - drawn.get(from)) / step : 0;
    return share - (lower - from);
  }

  /** The size whose value is nearest; of two as near, the smaller. */
  String nearest() {
    int best = 0;
    for (int i = 1; i < drawn.size(); i++) {
      if (Math.abs(drawn.get(i) - yours) < Math.abs(drawn.get(best) - yours)) {
        best = i;
      }
    }
    return known.get(best);
  }

  /** The smaller of the two sizes that the body lies between, if it is near neither. */
  boolean isBetween() {
    double share = share();
    return lower() < drawn.size() - 1 && share >= BETWEEN && share <= 1 - BETWEEN;
  }

  String smaller() {
    return known.get(lower());
  }

  String larger() {
    return known.get(Math.min(lower() + 1, known.size() - 1));
  }

  boolean isAboveAll() {
    return lower() == drawn.size() - 1 && share() > BEYOND;
  }

  boolean isBelowAll() {
    return lower() == 0 && share() < -BEYOND;
  }

  /** What the chart has in a size (mm). */
  double in(String size) {
    int at = known.indexOf(size);
    return at < 0 ? Double.NaN : drawn.get(at);
  }
}
