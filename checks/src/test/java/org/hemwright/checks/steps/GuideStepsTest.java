package org.hemwright.checks.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.make.Step;
import org.junit.jupiter.api.Test;

/** The steps in the examples of the language guide make their garments, and every act is shown. */
class GuideStepsTest {
  private static final Path GUIDE = Path.of("../docs/language.md");

  private static List<String> blocks(String kind) throws IOException {
    Matcher matcher =
        Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(GUIDE));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }

  private static List<SizeRun> runs() throws IOException {
    SizeChart chart =
        ChartReader.read("sizes.csv", blocks("csv").get(0).getBytes(StandardCharsets.UTF_8))
            .chart()
            .orElseThrow();
    List<String> blocks = blocks("hem");
    String headings = blocks.get(0).substring(0, blocks.get(0).indexOf("\ndial ") + 1);
    List<SizeRun> runs = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i).contains("\nmake\n")) {
        String text = i == 0 ? blocks.get(0) : headings + "\n" + blocks.get(i);
        Drafted drafted = Drafting.draft("pattern.hem", text, chart);
        assertThat(drafted.findings()).isEmpty();
        runs.add(drafted.run().orElseThrow());
      }
    }
    return runs;
  }

  @Test
  void theStepsOfEveryExampleMakeIt() throws IOException {
    for (SizeRun run : runs()) {
      for (var check : StandardChecks.with(CheckSettings.HANDBOOK)) {
        if (check.id().startsWith("making-")) {
          assertThat(check.check(run)).as(check.id()).isEmpty();
        }
      }
    }
  }

  /** What a making section must be able to say (common practice, no source). */
  @Test
  void everyActIsShown() throws IOException {
    Set<String> shown = new TreeSet<>();
    for (SizeRun run : runs()) {
      for (Step step : run.pattern().making().steps()) {
        shown.add(step.act().word());
      }
    }
    assertThat(shown)
        .contains(
            "sew",
            "finish",
            "press",
            "fold",
            "hem",
            "gather",
            "ease",
            "topstitch",
            "attach",
            "form casing",
            "thread",
            "lay in",
            "apply",
            "join",
            "baste",
            "staystitch",
            "understitch",
            "clip",
            "notch",
            "trim",
            "grade",
            "turn out",
            "try on",
            "mark",
            "fuse",
            "close",
            "insert zip",
            "set in",
            "bind",
            "buttonhole",
            "button",
            "eyelet",
            "bar tack",
            "hand sew",
            "leave raw",
            "pin",
            "test",
            "do");
  }
}
