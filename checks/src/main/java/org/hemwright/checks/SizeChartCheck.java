package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.QuantityKind;

/** The chart's columns rise from size to size, in the unit that they say, as bodies do. */
record SizeChartCheck(CheckSettings settings) implements Check {
  private static final double INCH = 2.54;
  private static final double NEAR = 0.06;
  private static final List<String> TRUNK = List.of("bust", "chest", "waist", "hip");
  private static final double LEAST_TRUNK = 380;
  private static final double MOST_TRUNK = 2500;

  @Override
  public String id() {
    return "size-chart";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    SizeChart chart = run.pattern().chart();
    List<Finding> findings = new ArrayList<>();
    for (SizeChart.Column column : chart.columns()) {
      if (column.kind() == QuantityKind.LENGTH && !unitOfAll(column, findings)) {
        steps(chart, column, findings);
      }
    }
    waistOverHip(chart, findings);
    return findings;
  }

  /** A trunk smaller than a newborn's, or larger than any: the heading's unit is another. */
  private static boolean unitOfAll(SizeChart.Column column, List<Finding> findings) {
    double[] known = column.cells().stream().flatMapToDouble(c -> c.value().stream()).toArray();
    if (!TRUNK.contains(column.name()) || known.length == 0) {
      return false;
    }
    Arrays.sort(known);
    double middle = known[known.length / 2];
    if (middle >= LEAST_TRUNK && middle <= MOST_TRUNK) {
      return false;
    }
    findings.add(
        Finding.fail(middle < LEAST_TRUNK ? "chart-inches" : "chart-centimetres", column.name())
            .with("column", column.heading())
            .with("value", Argument.mm(middle))
            .found(middle, "mm")
            .at(column.origin())
            .build());
    return true;
  }

  private static void steps(SizeChart chart, SizeChart.Column column, List<Finding> findings) {
    OptionalDouble before = OptionalDouble.empty();
    for (int i = 0; i < column.cells().size(); i++) {
      SizeChart.Cell cell = column.cells().get(i);
      if (cell.value().isPresent()) {
        double value = cell.value().getAsDouble();
        OptionalDouble beside = before.isPresent() ? before : next(column, i);
        if (beside.isPresent() && isOtherUnit(value, beside.getAsDouble())) {
          findings.add(problem("chart-unit", chart, column, i, beside.getAsDouble()).build());
          continue;
        }
        if (before.isPresent() && value < before.getAsDouble()) {
          findings.add(
              problem("chart-backwards", chart, column, i, before.getAsDouble())
                  .with("by", Argument.mm(before.getAsDouble() - value))
                  .build());
        }
        before = cell.value();
      }
    }
  }

  private static OptionalDouble next(SizeChart.Column column, int index) {
    return index + 1 < column.cells().size()
        ? column.cells().get(index + 1).value()
        : OptionalDouble.empty();
  }

  /** Whether one cell is the size beside it, or about, in the other unit. */
  private static boolean isOtherUnit(double value, double beside) {
    double times = Math.max(value, beside) / Math.min(value, beside);
    return value > 0 && beside > 0 && Math.abs(times / INCH - 1) <= NEAR;
  }

  private static Finding.Builder problem(
      String code, SizeChart chart, SizeChart.Column column, int index, double beside) {
    double value = column.cells().get(index).value().orElseThrow();
    return Finding.warn(code, column.name())
        .sizes(List.of(chart.sizes().get(index).name()))
        .with("column", column.heading())
        .with("size", chart.sizes().get(index).name())
        .with("value", Argument.mm(value))
        .with("beside", Argument.mm(beside))
        .values(value, beside, "mm")
        .at(column.cells().get(index).origin());
  }

  private void waistOverHip(SizeChart chart, List<Finding> findings) {
    for (int i = 0; i < chart.sizes().size(); i++) {
      OptionalDouble waist = value(chart, "waist", i);
      OptionalDouble hip = value(chart, "hip", i);
      if (waist.isPresent()
          && hip.isPresent()
          && waist.getAsDouble() > hip.getAsDouble() * settings.grade().waistOverHip()) {
        findings.add(
            problem("chart-waist", chart, chart.column("waist").orElseThrow(), i, hip.getAsDouble())
                .build());
      }
    }
  }

  private static OptionalDouble value(SizeChart chart, String name, int index) {
    return chart.column(name).map(c -> c.cells().get(index).value()).orElse(OptionalDouble.empty());
  }
}
