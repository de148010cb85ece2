package org.hemwright.workbench.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Status;

/** Documents of the examples folder, with changes planted in their text. */
final class Documents {
  private Documents() {}

  static String text(String example) {
    return read(example, "pattern.hem");
  }

  static String chart(String example) {
    return read(example, "sizes.csv");
  }

  private static String read(String example, String file) {
    try {
      return Files.readString(Path.of("..", "examples", example, file));
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  static SizeRun run(String text, String chart) {
    SizeChart read =
        ChartReader.read("sizes.csv", chart.getBytes(java.nio.charset.StandardCharsets.UTF_8))
            .chart()
            .orElseThrow();
    Drafted drafted = Drafting.draft("pattern.hem", text, read);
    assertThat(drafted.findings()).noneMatch(finding -> finding.status() == Status.FAIL);
    return drafted.run().orElseThrow();
  }

  /** A text with one passage changed; that it stands there once is looked at. */
  static String with(String text, String passage, String other) {
    assertThat(text.split(java.util.regex.Pattern.quote(passage), -1)).as(passage).hasSize(2);
    return text.replace(passage, other);
  }
}
