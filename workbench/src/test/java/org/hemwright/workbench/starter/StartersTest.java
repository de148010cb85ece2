package org.hemwright.workbench.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Drawn;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.report.CheckAnswer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every starter is sound as it is, and at every end of every dial (issue 7). */
class StartersTest {
  private static final List<Check> CHECKS = StandardChecks.with(CheckSettings.HANDBOOK);

  static Stream<Starter> starters() {
    return Starter.all().stream();
  }

  private static List<String> told(List<Finding> findings, SizeRun run) {
    Wording wording = Workbench.wording(java.util.Optional.of(run));
    return findings.stream()
        .filter(finding -> finding.status() != Status.OK)
        .map(finding -> finding.code() + " " + finding.subject() + ": " + wording.message(finding))
        .toList();
  }

  @Test
  void thereAreSeveral() {
    assertThat(Starter.all()).extracting(Starter::name).doesNotHaveDuplicates();
    assertThat(Starter.all()).hasSizeGreaterThan(2);
    assertThat(Starter.all()).allSatisfy(each -> assertThat(each.words()).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("starters")
  void itIsSoundAsItIs(Starter starter) {
    Evaluated evaluated = Workbench.evaluate(starter.folder());
    assertThat(evaluated.problems()).isEmpty();
    SizeRun run = evaluated.run().orElseThrow();
    List<String> told = new ArrayList<>();
    for (CheckAnswer answer : Workbench.check(evaluated, run)) {
      told.addAll(told(answer.findings(), run));
    }
    assertThat(told).isEmpty();
    assertThat(run.pattern().dials()).isNotEmpty();
    assertThat(run.sizes().get(0).seams()).isNotEmpty();
    assertThat(run.pattern().making().steps()).isNotEmpty();
    assertThat(run.sizes()).hasSizeGreaterThan(6);
  }

  @ParameterizedTest
  @MethodSource("starters")
  void noDialEndGivesAFinding(Starter starter) {
    SizeChart chart =
        ChartReader.read("sizes.csv", starter.bytes("sizes.csv")).chart().orElseThrow();
    String text = new String(starter.bytes("pattern.hem"), java.nio.charset.StandardCharsets.UTF_8);
    Planned planned = Plan.of(DocumentReader.read("pattern.hem", text), chart);
    assertThat(planned.findings()).isEmpty();
    Plan plan = planned.plan();
    List<String> told = new ArrayList<>();
    for (Dial dial : plan.evaluate().drawn().run().pattern().dials()) {
      for (double end : new double[] {dial.from(), dial.to()}) {
        DialSettings turned = DialSettings.NONE.with(dial.name(), new Quantity(dial.kind(), end));
        Drawn drawn = plan.evaluate(chart.sizes(), turned).drawn();
        List<Finding> findings = new ArrayList<>(drawn.findings());
        CHECKS.forEach(check -> findings.addAll(check.check(drawn.run())));
        told(findings, drawn.run())
            .forEach(words -> told.add(dial.name() + " " + end + " " + words));
      }
    }
    assertThat(told).isEmpty();
  }
}
