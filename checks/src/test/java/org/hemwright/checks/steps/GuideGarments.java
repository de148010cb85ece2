package org.hemwright.checks.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;

/** The garments of the language guide that say how they are made. */
final class GuideGarments {
  private GuideGarments() {}

  private static final Path GUIDE = Path.of("../docs/language.md");

  private static List<String> blocks(String kind) {
    Matcher matcher = Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL).matcher(guide());
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }

  private static String guide() {
    try {
      return Files.readString(GUIDE);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  static List<SizeRun> runs() {
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
}
