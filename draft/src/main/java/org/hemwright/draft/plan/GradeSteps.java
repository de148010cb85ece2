package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.quantity.QuantityKind;

/** What a rule's steps come to in every size. */
record GradeSteps(TracedGrading graded) {
  /** For each size how far from the base size the steps lead (mm). */
  double[] amounts(Statement.GradeStep step) {
    double[] amounts = new double[graded.count()];
    if (step instanceof Statement.GradeStep.OfMeasurement of) {
      ofMeasurement(of, amounts);
      return amounts;
    }
    Statement.GradeStep.Stepped stepped = (Statement.GradeStep.Stepped) step;
    double[] into = new double[graded.count()];
    Arrays.fill(into, Tracings.value(stepped.first()));
    int last = -1;
    for (NumberRule.Step later : stepped.later()) {
      Optional<Size> from = graded.shared().sizes().find(later.from());
      if (from.isEmpty()) {
        graded.amiss();
        continue;
      }
      if (from.get().position() <= last) {
        graded.amiss(
            graded
                .problems()
                .at(later.from().span(), "step-downward", graded.piece().scope().name())
                .with("size", from.get().name()));
      }
      last = from.get().position();
      for (int p = last; p < graded.count(); p++) {
        into[p] = Tracings.value((Expression.Literal) later.value());
      }
    }
    return graded.summed(into);
  }

  private void ofMeasurement(Statement.GradeStep.OfMeasurement of, double[] amounts) {
    SizeChart chart = graded.shared().sizes().chart();
    Optional<SizeChart.Column> column = chart.column(of.measurement().text());
    if (column.isEmpty() || column.get().kind() != QuantityKind.LENGTH) {
      List<String> known =
          chart.columns().stream()
              .filter(each -> each.kind() == QuantityKind.LENGTH)
              .map(SizeChart.Column::name)
              .toList();
      Unknown.tell(graded.problems(), of.measurement(), "measurement", known);
      graded.amiss();
      return;
    }
    List<SizeChart.Cell> cells = column.get().cells();
    List<String> blank = new ArrayList<>();
    for (int p = 0; p < amounts.length; p++) {
      boolean drawn =
          graded.piece().scope().sizes().contains(chart.sizes().get(p))
              || p == graded.base().position();
      if (cells.get(p).value().isEmpty() && drawn) {
        blank.add(chart.sizes().get(p).name());
      }
    }
    if (!blank.isEmpty()) {
      graded.amiss(
          graded
              .problems()
              .at(of.measurement().span(), "measurement-missing")
              .with("chart", chart.file())
              .with("heading", column.get().heading())
              .sizes(blank));
      return;
    }
    double share = Tracings.value(of.share());
    double start = cells.get(graded.base().position()).value().orElse(0);
    for (int p = 0; p < amounts.length; p++) {
      amounts[p] = share * (cells.get(p).value().orElse(start) - start);
    }
  }
}
