package org.hemwright.checks.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.checks.bench.BenchPage;
import org.hemwright.checks.bench.BenchRow;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;

/**
 * Every mistake, planted at every place of every example, and of the guide, where it applies, is
 * told by the check that is meant for it, at the right step or about the right thing; and the
 * examples as they stand are clean. Run with {@code -Dwrite.docs=true} the test writes {@code
 * docs/step-bench.md}; without, it holds it.
 */
class StepBenchTest {
  private static final BenchPage PAGE =
      new BenchPage(
          "step-bench.md",
          StepBenchTest.class,
          "Mistakes",
          """
          # The bench of steps

          Each mistake is planted in the making steps of every example and of every garment that the language
          guide makes, at every place where it applies, one at a time. It counts as caught when the check that
          is meant for it tells it at the right step, or about the right seam, edge, piece or elastic where a
          step is missing. As they stand they give no finding.
          """,
          Map.of());

  /** What else asks of the steps. */
  private static final Set<String> BESIDE =
      Set.of(MeantFor.CLOSURES.check(), MeantFor.CLOTHS.check(), MeantFor.SETTINGS.check());

  private static final List<Check> CHECKS =
      StandardChecks.with(CheckSettings.HANDBOOK).stream()
          .filter(check -> check.id().startsWith("making-") || BESIDE.contains(check.id()))
          .toList();

  private static List<Workbook> books() {
    List<Workbook> books = new ArrayList<>(Workbook.all());
    books.addAll(Workbook.guide());
    return books;
  }

  private static List<Finding> findings(SpoiltSteps spoilt) {
    return CHECKS.stream()
        .filter(check -> check.id().equals(spoilt.check()))
        .flatMap(check -> check.check(spoilt.run()).stream())
        .toList();
  }

  @Test
  void everyMistakeIsToldAtTheRightStep() throws IOException {
    List<Workbook> books = books();
    List<BenchRow> rows = new ArrayList<>();
    for (StepMistake mistake : StepMistakes.ALL) {
      BenchRow row = new BenchRow(mistake.words());
      for (Workbook book : books) {
        for (SpoiltSteps spoilt : mistake.plant().apply(book).toList()) {
          boolean told = findings(spoilt).stream().anyMatch(spoilt::isToldBy);
          row.add(spoilt.where(), told ? Set.of(spoilt.check()) : Set.of());
        }
      }
      rows.add(row);
    }
    assertThat(StepMistakes.ALL).hasSizeGreaterThanOrEqualTo(90);
    PAGE.holds(rows);
  }

  @Test
  void theStepsAsTheyStandAreClean() {
    for (Workbook book : books()) {
      for (Check check : CHECKS) {
        assertThat(check.check(book.run(book.steps()))).as(book.name()).isEmpty();
      }
    }
  }
}
