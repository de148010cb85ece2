package org.hemwright.workbench.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
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
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.report.CheckAnswer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /** A starter drafted for a run. */
  private record Fitted(Starter starter, ChartRun run) {
    Plan plan() {
      SizeChart chart = chart();
      Planned planned =
          Plan.of(DocumentReader.read("pattern.hem", starter.document("Kelp", run)), chart);
      assertThat(planned.findings()).isEmpty();
      return planned.plan();
    }

    SizeChart chart() {
      return ChartReader.read("sizes.csv", starter.sizes(run)).chart().orElseThrow();
    }
  }

  static Stream<Fitted> runs() {
    return Starter.all().stream()
        .flatMap(starter -> starter.charts().stream().map(run -> new Fitted(starter, run)));
  }

  private static List<String> at(Plan plan, List<Size> sizes, DialSettings turned) {
    Drawn drawn = plan.evaluate(sizes, turned).drawn();
    List<Finding> findings = new ArrayList<>(drawn.findings());
    CHECKS.forEach(check -> findings.addAll(check.check(drawn.run())));
    return told(findings, drawn.run());
  }

  private static List<DialSettings> ends(Dial dial, DialSettings others) {
    return DoubleStream.of(dial.from(), dial.to())
        .mapToObj(end -> others.with(dial.name(), new Quantity(dial.kind(), end)))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("starters")
  void noDialEndGivesAFinding(Starter starter) {
    Fitted fitted = new Fitted(starter, ChartRun.WOMEN);
    Plan plan = fitted.plan();
    List<String> told =
        plan.evaluate().drawn().run().pattern().dials().stream()
            .flatMap(dial -> ends(dial, DialSettings.NONE).stream())
            .parallel()
            .flatMap(
                turned ->
                    at(plan, fitted.chart().sizes(), turned).stream()
                        .map(words -> turned + " " + words))
            .toList();
    assertThat(told).isEmpty();
  }

  /** The bodice's bust dart may be turned into the shoulder, the neck or the waist dart. */
  @ParameterizedTest
  @CsvSource({
    "pivot bust_dart to shoulder at 50% from start as turned_dart, turned_dart, 3",
    "pivot bust_dart to neck at 60% from start as turned_dart, turned_dart, 3",
    "merge bust_dart into waist_dart, waist_dart, 0"
  })
  void theBustDartMayBeTurned(String line, String dart, int inside) {
    Starter bodice = Starter.named("darted-bodice").orElseThrow();
    SizeChart chart =
        ChartReader.read("sizes.csv", bodice.bytes("sizes.csv")).chart().orElseThrow();
    String whole = inside > 0 ? line + ", stitched " + inside + " cm short" : line;
    String text =
        bodice
            .document("Turned")
            .replace("  # To turn the bust dart", "  " + whole + "\n  # To turn the bust dart")
            .replace("mark front.bust_dart and", "mark front." + dart + " and")
            .replace("mark front.waist_dart and front.waist_dart and", "mark front.waist_dart and")
            .replaceAll(
                "close front\\.bust_dart.*\n",
                dart.equals("waist_dart") ? "" : "close front." + dart + "\n");
    Planned planned = Plan.of(DocumentReader.read("pattern.hem", text), chart);
    assertThat(planned.findings()).isEmpty();
    assertThat(at(planned.plan(), chart.sizes(), DialSettings.NONE)).isEmpty();
  }

  /** Any two dials at their ends at once, in the first, the base and the last size. */
  @ParameterizedTest
  @MethodSource("starters")
  @Tag("whole")
  void noTwoDialEndsGiveAFinding(Starter starter) {
    Fitted fitted = new Fitted(starter, ChartRun.WOMEN);
    Plan plan = fitted.plan();
    SizeRun run = plan.evaluate().drawn().run();
    List<Size> all = fitted.chart().sizes();
    List<Size> few = List.of(all.get(0), run.pattern().base(), all.get(all.size() - 1));
    List<Dial> dials = run.pattern().dials();
    List<DialSettings> pairs = new ArrayList<>();
    for (int i = 0; i < dials.size(); i++) {
      for (int k = i + 1; k < dials.size(); k++) {
        for (DialSettings one : ends(dials.get(i), DialSettings.NONE)) {
          pairs.addAll(ends(dials.get(k), one));
        }
      }
    }
    List<String> told =
        pairs.parallelStream()
            .flatMap(turned -> at(plan, few, turned).stream().map(words -> turned + " " + words))
            .toList();
    assertThat(told).isEmpty();
  }

  /** In every run that it is drafted for, each size; and there at each end of each dial. */
  @ParameterizedTest
  @MethodSource("runs")
  @Tag("whole")
  void itIsSoundInEveryRun(Fitted fitted) {
    Plan plan = fitted.plan();
    List<Size> sizes = fitted.chart().sizes();
    List<DialSettings> settings = new ArrayList<>(List.of(DialSettings.NONE));
    SizeRun run = plan.evaluate().drawn().run();
    run.pattern().dials().forEach(dial -> settings.addAll(ends(dial, DialSettings.NONE)));
    List<Size> few = List.of(sizes.get(0), run.pattern().base(), sizes.get(sizes.size() - 1));
    List<String> told =
        settings.parallelStream()
            .flatMap(
                turned ->
                    at(plan, turned.equals(DialSettings.NONE) ? sizes : few, turned).stream()
                        .map(words -> turned + " " + words))
            .toList();
    assertThat(told).isEmpty();
    assertThat(run.pattern().details().title()).isEqualTo("Kelp");
  }
}
