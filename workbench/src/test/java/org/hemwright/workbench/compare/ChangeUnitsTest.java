package org.hemwright.workbench.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.report.CompareText;
import org.hemwright.workbench.report.OwnersChanges;
import org.junit.jupiter.api.Test;

/**
 * What changed is told in the document's units. A hip ease that grows by 1 in is shared by four
 * quarters, so each waist edge grows by 1/4 in and the band by 1 in (by hand, from the document's
 * own sums); an inch is 25.4 mm (ISO 80000-3, from memory).
 */
class ChangeUnitsTest {
  /** A length with a metric unit that no inches stand before, unless it is below 1/64 in. */
  private static final String METRIC_ALONE = "(?<! \\u00b7 )(?<![0-9.])[0-9]+(\\.[0-9]+)? cm";

  private static Compared trousers() {
    String text = Documents.text("marram-trousers");
    String chart = Documents.chart("marram-trousers");
    String wider =
        Documents.with(text, "hip_ease      = 4 in ", "hip_ease      = 5 in ")
            .replace("version 1.0", "version 1.1");
    return unprinted(Documents.run(text, chart), Documents.run(wider, chart));
  }

  private static Compared skirt() {
    String text = Documents.text("eddy-skirt");
    String chart = Documents.chart("eddy-skirt");
    String longer = Documents.with(text, "short_length  = 48 cm", "short_length  = 50 cm");
    return unprinted(Documents.run(text, chart), Documents.run(longer, chart));
  }

  private static Compared unprinted(SizeRun old, SizeRun now) {
    return new Compared(old, now, Comparison.of(old, now), List.of());
  }

  private static ChangeWords words(Compared compared) {
    return new ChangeWords(Workbench.compareWording(compared.now()));
  }

  @Test
  void inchesStandFirstInWordsWhereTheDocumentIsInInches() {
    Compared trousers = trousers();
    List<String> lines = CompareText.of(trousers, words(trousers)).lines().toList();
    assertThat(lines)
        .contains("  dial hip_ease stands at 5 in \u00b7 12.7 cm; it was 4 in \u00b7 10.16 cm.")
        .anyMatch(
            line ->
                line.startsWith(
                    "  front.waist is 1/4 in \u00b7 6.3 mm longer in every size: 9 1/4 to 16 7/8 in"
                        + " \u00b7 23.51 to 42.87 cm became "));
    assertThat(lines)
        .noneMatch(
            line -> line.replaceAll("to [0-9.]+ cm", "").matches(".*" + METRIC_ALONE + ".*"));
  }

  @Test
  void theDrawingSaysInchesToo() {
    assertThat(trousers().pictures())
        .filteredOn(picture -> picture.name().matches("compare-(front|waistband)-.*[.]svg"))
        .hasSize(2)
        .allSatisfy(
            picture ->
                assertThat(new String(picture.bytes(), StandardCharsets.UTF_8))
                    .contains(picture.name().contains("front") ? "1/4 in" : "1 in \u00b7 25.4 mm"));
  }

  @Test
  void ownersReadWhatTheyCanCut() {
    Compared trousers = trousers();
    assertThat(OwnersChanges.of(trousers, words(trousers)).lines())
        .contains(
            "- Ease at the hip: 5 in \u00b7 12.7 cm; it was 4 in \u00b7 10.16 cm.",
            "- The waist edge is 1/4 in \u00b7 6.3 mm longer in every size.",
            "- The lower edge is 1 in \u00b7 25.3 to 25.4 mm longer in every size.",
            "- The drill pocket corner moved by 1/8 in \u00b7 3.2 mm in every size.",
            "Differences finer than a printed line are left out.")
        .noneMatch(line -> line.contains("0.1 mm") || line.contains("crotch edge"));
  }

  @Test
  void aMetricDocumentStaysMetricForItsDesignerAndShowsItsMakersBoth() {
    Compared skirt = skirt();
    assertThat(CompareText.of(skirt, words(skirt)))
        .contains("dial short_length stands at 50 cm; it was 48 cm.")
        .contains("short_panel.centre is 20 mm longer in every size")
        .doesNotContain(" in \u00b7 ")
        .doesNotContain("\u00b7");
    assertThat(OwnersChanges.of(skirt, words(skirt)))
        .contains("- The centre edge is 20 mm \u00b7 25/32 in longer in every size");
  }
}
