package org.hemwright.workbench.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.Printing;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.reprint.Reprint;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.pattern.SizeRun;
import org.junit.jupiter.api.Test;

/** The pages to print again are those on which something that a maker goes by has moved. */
class ReprintTest {
  private static final PaperOptions PAGES = PaperOptions.everything().on(PageFormat.EITHER);
  private static final String SKIRT = Documents.text("eddy-skirt");
  private static final String CHART =
      Documents.chart("eddy-skirt").lines().limit(10).reduce("", (a, b) -> a + b + "\n");

  /** The demo in its smaller sizes, which are drawn in a fraction of the time. */
  private static SizeRun skirt(String passage, String other) {
    String small =
        SKIRT
            .replace("base 16", "base 8")
            .replace("groups 4 to 20, 18 to 34, 32 to 42", "groups 4 to 12, 10 to 18")
            .replace(", then 15 cm from size 30", "")
            .replace("from size 18", "from size 12");
    return Documents.run(Documents.with(small, passage, other), CHART);
  }

  private static SizeRun skirt() {
    return skirt("version 1.0", "version 1.0");
  }

  @Test
  void theSamePatternUnderAnotherVersionNeedsNoPageAgain() {
    for (Reprint file : Reprint.of(skirt(), skirt("version 1.0", "version 2.10"), PAGES)) {
      assertThat(file.pages()).isEmpty();
      assertThat(file.wordsOnly()).isEmpty();
      assertThat(file.gone()).isEmpty();
      assertThat(file.file()).contains("2.10");
    }
    assertThat(Compared.of(skirt(), skirt("version 1.0", "version 1.1"), PAGES).reprints())
        .isEmpty();
  }

  /**
   * Pages drawn to pixels are the outside witness: those that look otherwise are the ones named.
   */
  @Test
  void pagesThatLookOtherwiseAreNamedAndNoOthers() {
    SizeRun now = skirt("away from apex 9 cm", "away from apex 9.3 cm");
    Reprint file = Reprint.of(skirt(), now, PAGES).get(0);

    Set<Integer> named = new TreeSet<>();
    file.pages().forEach(page -> named.add(page.number()));
    file.wordsOnly().forEach(page -> named.add(page.number()));
    assertThat(named).isNotEmpty().isEqualTo(differing(skirt(), now));
    assertThat(file.pages()).hasSizeLessThan(file.of() / 2);
    assertThat(file.gone()).isEmpty();
  }

  private static Set<Integer> differing(SizeRun old, SizeRun now) {
    PatternPages was = Printing.of(old, PAGES).pages(PageFormat.EITHER);
    PatternPages is = Printing.of(now, PAGES).pages(PageFormat.EITHER);
    assertThat(is.names()).isEqualTo(was.names());
    Set<Integer> differing = new TreeSet<>();
    for (int i = 0; i < is.sheets().size(); i++) {
      byte[] before = PngWriter.write(was.sheets().get(i), 2);
      if (!Arrays.equals(before, PngWriter.write(is.sheets().get(i), 2))) {
        differing.add(i + 1);
      }
    }
    return differing;
  }

  @Test
  void aChangeInOneSizeIsForThatSizeAlone() {
    SizeRun now = skirt("let width = 13 cm,", "let width = 13 cm, then 13.1 cm from size 10,");
    Reprint file = Reprint.of(skirt(), now, PAGES).get(0);
    List<Reprint.Page> pieces =
        file.pages().stream().filter(page -> !page.name().tile().isEmpty()).toList();
    assertThat(pieces).isNotEmpty().allSatisfy(page -> assertThat(page.sizes()).contains("10"));
    assertThat(pieces).anySatisfy(page -> assertThat(page.sizes()).doesNotContain("4", "6", "16"));
  }

  @Test
  void whatWordsSayCounts() {
    SizeRun now = skirt("\"Waistband\" number 4", "\"Band for the waist\" number 4");
    Reprint file = Reprint.of(skirt(), now, PAGES).get(0);
    assertThat(file.pages()).isNotEmpty();
  }

  @Test
  void aPieceThatIsLeftOutTakesItsPagesWithIt() {
    String dial = "long_length   = 68 cm   from 60 cm to 72 cm";
    SizeRun shorter = skirt(dial, "long_length   = 61 cm   from 60 cm to 72 cm");
    SizeRun longer = skirt(dial, "long_length   = 89 cm   from 60 cm to 90 cm");
    Reprint file = Reprint.of(longer, shorter, PAGES).get(0);
    assertThat(file.pages()).isNotEmpty();
    assertThat(file.gone()).isNotEmpty();
  }
}
