package org.hemwright.paper.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PageFormatTest {
  // ISO 216 (A4) and ANSI Letter, in millimetres.
  private static final double[][] PAPERS = {{210, 297}, {215.9, 279.4}};

  // Handbook section 6: keep 10 mm or more of every edge free; a centred tile of 190 × 254 mm fits
  // both papers.
  @ParameterizedTest
  @EnumSource(
      value = PageFormat.class,
      names = {"EITHER", "A4", "LETTER"})
  void framesKeepTenMillimetresFromTheEdge(PageFormat format) {
    double across = format.paperWidth() - format.grid(0).width();
    double down = format.paperHeight() - format.grid(0).height();
    assertThat(across / 2).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(down / 2).isGreaterThanOrEqualTo(10 - 1e-9);
  }

  @Test
  void theCommonPageFitsBothPapersAndIsNotScaledByEither() {
    for (double[] paper : PAPERS) {
      assertThat(PageFormat.EITHER.paperWidth()).isLessThanOrEqualTo(paper[0]);
      assertThat(PageFormat.EITHER.paperHeight()).isLessThanOrEqualTo(paper[1]);
      double fitted =
          Math.min(
              paper[0] / PageFormat.EITHER.paperWidth(),
              paper[1] / PageFormat.EITHER.paperHeight());
      assertThat(fitted).isEqualTo(1);
    }
  }

  // Handbook check value 32: what a printer does to pages of the other paper.
  @Test
  void pagesOfOnePaperFittedToTheOtherComeOutSmaller() {
    double a4OnLetter =
        Math.min(
            PageFormat.LETTER.paperWidth() / PageFormat.A4.paperWidth(),
            PageFormat.LETTER.paperHeight() / PageFormat.A4.paperHeight());
    double letterOnA4 =
        Math.min(
            PageFormat.A4.paperWidth() / PageFormat.LETTER.paperWidth(),
            PageFormat.A4.paperHeight() / PageFormat.LETTER.paperHeight());
    assertThat(a4OnLetter).isCloseTo(0.9407, within(0.0001));
    assertThat(letterOnA4).isCloseTo(0.9727, within(0.0001));
    assertThat(KeyPanel.TEN_CENTIMETRES * a4OnLetter).isCloseTo(94.1, within(0.05));
    assertThat(KeyPanel.TEN_CENTIMETRES * letterOnA4).isCloseTo(97.3, within(0.05));
  }
}
