package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SurveyedMeasure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * Measurements of one size that do not go together on the bodies of a survey. Asked only where the
 * document says whom the chart is for, where a survey measured such people, and of sizes about
 * which it holds bodies; elsewhere there is no data, and so nothing to tell.
 *
 * <p>Two measurements are held together, since their survey spreads normally by logarithms: farther
 * than {@link GradeLimits#chartBodies} from the middle, in deviations of both together, lies about
 * one body in a thousand. Where the survey measures larger than a pattern does, as a waist round
 * the navel, only what is larger yet is told.
 */
record ChartProportions(SizeRun run, GradeLimits limits) {
  /** Two columns that both have a measurement of the survey. */
  private record Pair(SizeChart.Column one, SizeChart.Column other) {}

  List<Finding> findings() {
    List<BodySurvey> surveys =
        run.pattern().details().wearers().stream()
            .flatMap(wearers -> wearers.surveyed().stream())
            .map(BodySurvey::of)
            .toList();
    List<Finding> findings = new ArrayList<>();
    if (surveys.isEmpty()) {
      return findings;
    }
    SizeChart chart = run.pattern().chart();
    List<SizeChart.Column> columns =
        chart.columns().stream()
            .filter(column -> column.kind() == QuantityKind.LENGTH)
            .filter(column -> surveys.get(0).measure(column.name()).isPresent())
            .toList();
    for (int i = 0; i < columns.size(); i++) {
      for (SizeChart.Column other : columns.subList(i + 1, columns.size())) {
        apart(chart, new Pair(columns.get(i), other), surveys).ifPresent(findings::add);
      }
    }
    return findings;
  }

  /** The sizes in which a pair lies apart on the bodies of every survey that is meant. */
  private Optional<Finding> apart(SizeChart chart, Pair pair, List<BodySurvey> surveys) {
    Map<Integer, double[]> rows = new LinkedHashMap<>();
    for (int row = 0; row < chart.sizes().size(); row++) {
      int at = row;
      List<double[]> ranges =
          surveys.stream().flatMap(survey -> range(pair, at, survey).stream()).toList();
      if (ranges.size() == surveys.size()) {
        rows.put(row, ranges.get(0));
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    int first = rows.keySet().iterator().next();
    double[] range = rows.values().iterator().next();
    double one = value(pair.one(), first).orElseThrow();
    double other = value(pair.other(), first).orElseThrow();
    return Optional.of(
        Finding.warn("chart-proportion", pair.one().name())
            .sizes(rows.keySet().stream().map(row -> chart.sizes().get(row).name()).toList())
            .with("column", pair.one().heading())
            .with("other", pair.other().heading())
            .with("size", chart.sizes().get(first).name())
            .with("value", Argument.mm(one))
            .with("beside", Argument.mm(other))
            .with("range", new Argument.Range(Quantity.length(range[0]), Quantity.length(range[1])))
            .values(one, one < range[0] ? range[0] : range[1], "mm")
            .at(pair.one().cells().get(first).origin())
            .at(pair.other().cells().get(first).origin())
            .build());
  }

  private static OptionalDouble value(SizeChart.Column column, int row) {
    return column.cells().get(row).value();
  }

  /** What nearly all surveyed bodies measure beside the other, where this one does not. */
  private Optional<double[]> range(Pair pair, int row, BodySurvey survey) {
    Optional<SurveyedMeasure> one = survey.measure(pair.one().name());
    Optional<SurveyedMeasure> other = survey.measure(pair.other().name());
    OptionalDouble oneValue = value(pair.one(), row);
    OptionalDouble otherValue = value(pair.other(), row);
    if (one.isEmpty()
        || other.isEmpty()
        || one.equals(other)
        || !(oneValue.orElse(0) > 0)
        || !(otherValue.orElse(0) > 0)) {
      return Optional.empty();
    }
    double a = one.get().deviations(oneValue.getAsDouble());
    double b = other.get().deviations(otherValue.getAsDouble());
    double r = survey.correlation(one.get(), other.get());
    double apart = (a * a - 2 * r * a * b + b * b) / (1 - r * r);
    boolean held = Math.abs(a) <= BodySurvey.HELD && Math.abs(b) <= BodySurvey.HELD;
    boolean told =
        (one.get().likeness() == SurveyedMeasure.Likeness.ALIKE || a > r * b)
            && (other.get().likeness() == SurveyedMeasure.Likeness.ALIKE || b > r * a);
    if (!held || !told || apart <= limits.chartBodies() * limits.chartBodies()) {
      return Optional.empty();
    }
    double spread = BodySurvey.HELD * Math.sqrt(1 - r * r);
    return Optional.of(new double[] {one.get().at(r * b - spread), one.get().at(r * b + spread)});
  }
}
