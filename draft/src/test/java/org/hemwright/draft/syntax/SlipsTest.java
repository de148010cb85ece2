package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;

class SlipsTest {
  private static List<Finding> read(String text) {
    return DocumentReader.read("slip.hem", text).findings();
  }

  @Test
  void oneSlipInTheSketchIsToldOnItsLine() {
    SingleSlips.Figure figure = SingleSlips.tell(SampleTexts.sketch(), SlipsTest::read);
    assertThat(figure.told()).isGreaterThan(figure.slips() / 2);
    assertThat(figure.share()).as(figure::toString).isGreaterThan(0.99);
  }

  @Test
  void oneSlipInTheExamplesIsToldOnItsLine() {
    SingleSlips.Figure figure =
        SampleTexts.examples().values().stream()
            .map(text -> SingleSlips.tell(text, 5, SlipsTest::read))
            .reduce(SingleSlips.Figure.none(), SingleSlips.Figure::plus);
    assertThat(figure.share()).as(figure::toString).isGreaterThan(0.99);
  }

  @Test
  void everyPrefixAndSuffixIsRead() {
    String sketch = SampleTexts.sketch();
    for (int cut = 0; cut <= sketch.length(); cut++) {
      DocumentReader.read("prefix", sketch.substring(0, cut));
      DocumentReader.read("suffix", sketch.substring(cut));
    }
  }

  @Test
  void anySplicesOfTheSketchAreRead() {
    String sketch = SampleTexts.sketch();
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      StringBuilder text = new StringBuilder(sketch);
      for (int i = 0; i < 1 + round % 8; i++) {
        int at = random.nextInt(text.length());
        int from = random.nextInt(sketch.length() - 12);
        text.replace(
            at,
            Math.min(text.length(), at + random.nextInt(6)),
            sketch.substring(from, from + random.nextInt(12)));
      }
      Document read = DocumentReader.read("splice", text.toString());
      assertThat(read.text()).isEqualTo(text.toString());
    }
  }
}
