package org.hemwright.checks.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
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
  private static final Path PAGE = Path.of("../docs/step-bench.md");

  /** Mistakes that no check can tell, and why. */
  private static final Map<String, String> REASONS = Map.of();

  /** What else asks of the steps. */
  private static final Set<String> BESIDE =
      Set.of(Planting.CLOSURES, Planting.CLOTHS, Planting.SETTINGS);

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
    List<String> rows = new ArrayList<>();
    List<String> survivors = new ArrayList<>();
    int all = 0;
    for (StepMistake mistake : StepMistakes.ALL) {
      TreeSet<String> checks = new TreeSet<>();
      int planted = 0;
      int caught = 0;
      for (Workbook book : books) {
        for (SpoiltSteps spoilt : mistake.plant().apply(book).toList()) {
          planted++;
          checks.add("`" + spoilt.check() + "`");
          if (findings(spoilt).stream().anyMatch(spoilt::isToldBy)) {
            caught++;
          } else {
            survivors.add(mistake.words() + ": " + spoilt.where());
          }
        }
      }
      assertThat(planted).as(mistake.words() + " applies somewhere").isPositive();
      all += planted;
      rows.add(
          "| "
              + String.join(
                  " | ",
                  mistake.words(),
                  String.join(", ", checks),
                  String.valueOf(planted),
                  String.valueOf(caught))
              + " |");
    }
    assertThat(survivors).as("survivors without a reason").allMatch(REASONS::containsKey);
    assertThat(StepMistakes.ALL).hasSizeGreaterThanOrEqualTo(90);
    String made = page(rows, all, all - survivors.size());
    if (Boolean.getBoolean("write.docs")) {
      Files.writeString(PAGE, made);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(made);
  }

  @Test
  void theStepsAsTheyStandAreClean() {
    for (Workbook book : books()) {
      for (Check check : CHECKS) {
        assertThat(check.check(book.run(book.steps()))).as(book.name()).isEmpty();
      }
    }
  }

  private static String page(List<String> rows, int planted, int caught) {
    return """
    # The bench of steps

    Each mistake is planted in the making steps of every example and of every garment that the language
    guide makes, at every place where it applies, one at a time. It counts as caught when the check that is meant for it tells it at the right step, or about
    the right seam, edge, piece or elastic where a step is missing. As they stand they give no
    finding. The table is written by the tests and held by them
    (`mvn test -pl checks -am -Dtest=StepBenchTest -Dwrite.docs=true -Dsurefire.failIfNoSpecifiedTests=false`).

    | what is done | caught by | planted | caught |
    | --- | --- | --- | --- |
    """
        + String.join("\n", rows)
        + "\n\n"
        + caught
        + " of "
        + planted
        + " caught.\n";
  }
}
