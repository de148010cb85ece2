package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A dial may be turned to its ends, and two at once: the examples are sound there too. One dial is
 * turned in all sizes, two in the smallest, a middle and the largest.
 */
@Tag("whole")
class DialEndsTest {
  private static final List<Check> CHECKS = StandardChecks.with(CheckSettings.HANDBOOK);

  static Stream<String> examples() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("pattern.hem")))
          .map(folder -> folder.getFileName().toString())
          .sorted()
          .toList()
          .stream();
    }
  }

  private static Plan plan(String example) throws IOException {
    Path folder = Path.of("..", "examples", example);
    SizeChart chart =
        ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
            .chart()
            .orElseThrow();
    String text = Files.readString(folder.resolve("pattern.hem"));
    Planned planned = Plan.of(DocumentReader.read("pattern.hem", text), chart);
    assertThat(planned.findings()).isEmpty();
    return planned.plan();
  }

  private static List<DialSettings> ends(Dial dial, DialSettings others) {
    return Stream.of(dial.from(), dial.to())
        .map(end -> others.with(dial.name(), new Quantity(dial.kind(), end)))
        .toList();
  }

  /** On every core: each setting is a run of its own. */
  private static List<String> told(Plan plan, List<DialSettings> turned, List<Size> sizes) {
    return turned.parallelStream().flatMap(dials -> told(plan, dials, sizes).stream()).toList();
  }

  private static List<String> told(Plan plan, DialSettings dials, List<Size> sizes) {
    Drawn drawn = plan.evaluate(sizes, dials).drawn();
    List<String> told = new ArrayList<>();
    drawn.findings().forEach(finding -> told.add(dials.values() + ": " + finding.code()));
    List<SizeRun> runs = new ArrayList<>(List.of(drawn.run()));
    for (SplitChoice split : SplitChoice.declared(drawn.run())) {
      runs.add(SplitRun.of(drawn.run(), List.of(split)));
    }
    for (Check check : CHECKS) {
      for (SizeRun run : check.asksOfParts() ? runs : runs.subList(0, 1)) {
        Told.by(check, run).stream()
            .filter(words -> !words.startsWith(Status.OK.toString()))
            .forEach(words -> told.add(dials.values() + ": " + words));
      }
    }
    return told;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noDialEndGivesAFinding(String example) throws IOException {
    Plan plan = plan(example);
    List<Dial> dials = plan.evaluate().drawn().run().pattern().dials();
    List<DialSettings> turned =
        dials.stream().flatMap(dial -> ends(dial, DialSettings.NONE).stream()).toList();
    assertThat(told(plan, turned, plan.chart().sizes())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noTwoDialEndsGiveAFinding(String example) throws IOException {
    Plan plan = plan(example);
    List<Dial> dials = plan.evaluate().drawn().run().pattern().dials();
    List<Size> all = plan.chart().sizes();
    List<Size> three = List.of(all.get(0), all.get(all.size() / 2), all.get(all.size() - 1));
    List<DialSettings> turned = new ArrayList<>();
    for (int i = 0; i < dials.size(); i++) {
      for (DialSettings end : ends(dials.get(i), DialSettings.NONE)) {
        for (Dial other : dials.subList(i + 1, dials.size())) {
          turned.addAll(ends(other, end));
        }
      }
    }
    assertThat(told(plan, turned, three)).isEmpty();
  }
}
