package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * The chart's columns rise from size to size, evenly and in the unit that they say, go together as
 * on bodies that were surveyed, and are used.
 */
record SizeChartCheck(CheckSettings settings) implements Check {
  private static final Pattern UNIT = Pattern.compile(".*\\((\\w+)\\)\\s*");
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
    mixedUnits(chart, findings);
    waistOverHip(chart, findings);
    findings.addAll(new ChartProportions(run, settings.grade()).findings());
    for (SizeChart.Column column : new ChartUse(run, settings).unused()) {
      findings.add(
          Finding.warn("chart-unused", column.name())
              .with("column", column.heading())
              .at(column.origin())
              .build());
    }
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

  private void steps(SizeChart chart, SizeChart.Column column, List<Finding> findings) {
    for (ChartSteps.Cell cell : ChartSteps.of(column).slips(settings.grade())) {
      findings.add(
          switch (cell.slip()) {
            case OTHER_UNIT ->
                problem("chart-unit", chart, column, cell.row(), cell.beside()).build();
            case BACKWARDS ->
                problem("chart-backwards", chart, column, cell.row(), cell.beside())
                    .with("by", Argument.mm(cell.beside() - cell.value()))
                    .build();
            case OFF_LINE ->
                problem("chart-off", chart, column, cell.row(), cell.expected())
                    .with("by", Argument.mm(Math.abs(cell.value() - cell.expected())))
                    .build();
          });
    }
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

  /** A column in another unit than most: all lengths of a chart are usually in one. */
  private static void mixedUnits(SizeChart chart, List<Finding> findings) {
    Map<String, List<SizeChart.Column>> units = new LinkedHashMap<>();
    for (SizeChart.Column column : chart.columns()) {
      Matcher unit = UNIT.matcher(column.heading());
      if (column.kind() == QuantityKind.LENGTH && unit.matches()) {
        units.computeIfAbsent(unit.group(1), key -> new ArrayList<>()).add(column);
      }
    }
    Optional<String> usual =
        units.entrySet().stream()
            .max(Comparator.comparingInt(unit -> unit.getValue().size()))
            .map(Map.Entry::getKey);
    units.forEach(
        (unit, columns) -> {
          if (!unit.equals(usual.orElse(unit))) {
            for (SizeChart.Column column : columns) {
              findings.add(
                  Finding.warn("chart-mixed", column.name())
                      .with("column", column.heading())
                      .with("unit", usual.orElse(unit))
                      .at(column.origin())
                      .build());
            }
          }
        });
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
