package org.hemwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.syntax.SampleTexts;
import org.hemwright.draft.syntax.SingleSlips;
import org.hemwright.draft.syntax.SingleSlips.Figure;
import org.hemwright.pattern.body.SizeChart;
import org.junit.jupiter.api.Test;

/**
 * One slip of the hand in a document that is read, planned and drawn: the first finding stands on
 * its line in at least nine of ten.
 */
class SlipsEvaluatedTest {
  private static Figure tell(String text, SizeChart chart, int oneIn) {
    List<String> size = List.of(chart.sizes().get(chart.sizes().size() / 2).name());
    return SingleSlips.tell(
        text,
        oneIn,
        slipped -> Drafting.draft("slip.hem", slipped, chart, DialSettings.NONE, size).findings());
  }

  @Test
  void inTheSkirtOfTheGuide() {
    Figure figure = tell(SandlingSkirtTest.TEXT, SandlingSkirtTest.CHART, 4);
    assertThat(figure.told()).isGreaterThan(9 * figure.slips() / 10);
    assertThat(figure.share()).as(figure::toString).isGreaterThanOrEqualTo(0.98);
  }

  @Test
  void inTheShippedExamples() {
    Figure all = Figure.none();
    for (String name : SampleTexts.examples().keySet()) {
      all = all.plus(tell(SampleTexts.examples().get(name), chart(name), 50));
    }
    assertThat(all.told()).isGreaterThan(9 * all.slips() / 10);
    assertThat(all.share()).as(all::toString).isGreaterThanOrEqualTo(0.98);
  }

  private static SizeChart chart(String example) {
    try {
      return Charts.of(Files.readString(Path.of("../examples", example, "sizes.csv")));
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }
}
