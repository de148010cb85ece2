package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SketchTest {
  @Test
  void theSketchIsReadWhole() {
    Document read = DocumentReader.read("sandling.hem", SampleTexts.sketch());
    assertThat(read.findings()).isEmpty();
    assertThat(read.statements()).hasSize(22);
  }

  @Test
  void everyShippedExampleIsReadWhole() {
    SampleTexts.examples()
        .forEach(
            (name, text) ->
                assertThat(DocumentReader.read(name, text).findings()).as(name).isEmpty());
  }

  @Test
  void everyBlockOfTheGuideIsReadWhole() {
    assertThat(SampleTexts.guideBlocks())
        .hasSizeGreaterThan(5)
        .allSatisfy(
            text -> assertThat(DocumentReader.read("guide", text).findings()).as(text).isEmpty());
  }
}
