package org.hemwright.workbench.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.workbench.starter.ChartRun;

/**
 * What one of our own size runs has for a body of the same bust, chest, height, hip or waist: for
 * measurements that the survey lacks. {@code docs/charts.md} says how the runs were drawn up; no
 * survey says how far bodies lie from them.
 *
 * @param from the measurement that was gone by
 * @param run the run's name
 * @param mm for each size; nothing where its body lies outside the run
 */
record RunEstimate(String from, String run, List<OptionalDouble> mm) {
  /** What sizes are told by, the best first. */
  private static final List<String> TOLD_BY = List.of("bust", "chest", "height", "hip", "waist");

  RunEstimate {
    mm = List.copyOf(mm);
  }

  /** A column of her chart, in millimetres. */
  record Known(String name, List<OptionalDouble> mm) {
    Known {
      mm = List.copyOf(mm);
    }
  }

  /**
   * The estimate of a measurement.
   *
   * @param runs those for whom the chart is; of several, the first that reaches to a size
   * @param known her columns
   */
  static Optional<RunEstimate> of(List<ChartRun> runs, String wanted, List<Known> known) {
    for (String key : TOLD_BY) {
      Optional<Known> column = known.stream().filter(each -> each.name().equals(key)).findFirst();
      if (column.isEmpty() || key.equals(wanted)) {
        continue;
      }
      List<OptionalDouble> values = new ArrayList<>();
      List<String> names = new ArrayList<>();
      for (OptionalDouble body : column.get().mm()) {
        values.add(value(runs, wanted, key, body, names));
      }
      if (values.stream().anyMatch(OptionalDouble::isPresent)) {
        return Optional.of(
            new RunEstimate(key, String.join(" and ", names.stream().distinct().toList()), values));
      }
    }
    return Optional.empty();
  }

  private static OptionalDouble value(
      List<ChartRun> runs, String wanted, String key, OptionalDouble body, List<String> names) {
    if (body.isEmpty()) {
      return OptionalDouble.empty();
    }
    for (ChartRun run : runs) {
      SizeChart chart =
          ChartReader.read(
                  run.name() + ".csv", run.csv().getBytes(java.nio.charset.StandardCharsets.UTF_8))
              .chart()
              .orElseThrow();
      OptionalDouble found = between(chart, wanted, key, body.getAsDouble());
      if (found.isPresent()) {
        names.add(run.name());
        return found;
      }
    }
    return OptionalDouble.empty();
  }

  /** On the straight line between two neighbouring sizes. */
  private static OptionalDouble between(SizeChart chart, String wanted, String key, double body) {
    Optional<SizeChart.Column> by = chart.column(key);
    Optional<SizeChart.Column> column = chart.column(wanted);
    if (by.isEmpty() || column.isEmpty()) {
      return OptionalDouble.empty();
    }
    for (int i = 1; i < chart.sizes().size(); i++) {
      double low = by.get().cells().get(i - 1).value().orElseThrow();
      double high = by.get().cells().get(i).value().orElseThrow();
      if (low <= body && body <= high && low < high) {
        double from = column.get().cells().get(i - 1).value().orElseThrow();
        double to = column.get().cells().get(i).value().orElseThrow();
        return OptionalDouble.of(from + (to - from) * (body - low) / (high - low));
      }
    }
    return OptionalDouble.empty();
  }
}
