package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.ChildSize;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cautions for children's clothes, held to handbook section 7 and check values 39 and 40. */
class ChildChecksTest {
  private static SizeRun run(String people, String sizes, double length, String... make) {
    String text =
        """
        language 1
        pattern "Small coat"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base %s
        %s
        units centimetres

        fabric main woven "Cotton"
          widths 150 cm

        piece body "Body" number 1
          cut 1 of main
          rectangle 40 cm by %s cm, edges low, side, top, back
          allowance 1 cm
          grain up

        make
          %s
        """
            .formatted(sizes.split(" ", -1)[0], people, length, String.join("\n  ", make));
    Drafted drafted = Drafting.draft("pattern.hem", text, chart(sizes));
    assertThat(drafted.findings()).isEmpty();
    return drafted.run().orElseThrow();
  }

  private static SizeChart chart(String sizes) {
    StringBuilder csv = new StringBuilder("size,chest (cm)\n");
    int chest = 50;
    for (String size : sizes.replace("\"", "").split(" ", -1)) {
      csv.append(size).append(',').append(chest++).append('\n');
    }
    return ChartReader.read("sizes.csv", csv.toString().getBytes(StandardCharsets.UTF_8))
        .chart()
        .orElseThrow();
  }

  private static List<Finding> findings(String check, SizeRun run) {
    return StandardChecks.with(CheckSettings.HANDBOOK).stream()
        .filter(each -> each.id().equals(check))
        .flatMap(each -> each.check(run).stream())
        .toList();
  }

  /** Check value 39: a hooded jacket of size 8 with a neck cord; a waist cord of 3.5 in, most 3. */
  @Test
  void cordsOfAJacketInSizeEight() {
    SizeRun run =
        run(
            "for children",
            "8 10",
            50,
            "cord neck_cord in body at neck, length 100 cm",
            "cord waist_cord in body at waist, length 100 cm, free ends 3 1/2 in, bar tacked",
            "cord short_cord in body at waist, length 100 cm, free ends 3 in, bar tacked");
    assertThat(findings("child-cords", run))
        .extracting(Finding::code, Finding::subject)
        .containsExactly(
            tuple("cord-at-neck", "cord neck_cord"), tuple("cord-ends-long", "cord waist_cord"));
    assertThat(Told.by("child-cords", run))
        .allMatch(words -> words.startsWith("WARN") && words.contains("rules"));
  }

  /** Handbook section 7: 7 to 14 years no free ends there; the other rule ends with size 12. */
  @Test
  void olderChildrenMayHaveACordWithoutFreeEnds() {
    assertThat(
            findings(
                "child-cords",
                run(
                    "for children",
                    "12 14 16",
                    50,
                    "cord hood_cord in body at hood, length 100 cm")))
        .extracting(Finding::code, Finding::sizes)
        .containsExactly(
            tuple("cord-at-neck", List.of("12")), tuple("cord-ends-at-neck", List.of("14")));
  }

  @Test
  void aCordWithTogglesThatCanBeDrawnOutIsToldOfBoth() {
    assertThat(
            findings(
                "child-cords",
                run(
                    "for children",
                    "8 10",
                    50,
                    "cord waist_cord in body at waist, length 100 cm, with toggles")))
        .extracting(Finding::code)
        .containsExactlyInAnyOrder("cord-ends-unsaid", "cord-toggles", "cord-untacked");
  }

  @Test
  void nothingIsSaidOfClothesForAdults() {
    SizeRun run =
        run(
            "for women",
            "8 10",
            90,
            "sleepwear",
            "cord neck_cord in body at neck, length 100 cm, with toggles",
            "button 3 of 12 mm on body");
    for (String check : List.of("child-cords", "child-small-parts", "child-sleepwear")) {
      assertThat(findings(check, run)).as(check).isEmpty();
    }
  }

  @Test
  void smallPartsAreToldForTheYoungestOnly() {
    SizeRun run =
        run(
            "for children",
            "\"2T\" \"3T\" 4",
            50,
            "button 3 of 12 mm on body",
            "eyelet 2 of 8 mm in body");
    assertThat(findings("child-small-parts", run))
        .hasSize(2)
        .allSatisfy(each -> assertThat(each.sizes()).containsExactly("2T", "3T"));
  }

  /**
   * Check value 40: a nightgown of 9 months, in one piece of 70 cm, is no exempt infant garment.
   */
  @ParameterizedTest
  @CsvSource({"70, sleepwear-infant", "64.8, ''", "65, sleepwear-infant"})
  void aNightgownOfNineMonths(double length, String code) {
    List<Finding> found =
        findings("child-sleepwear", run("for babies", "\"9M\" \"6M\"", length, "sleepwear"));
    assertThat(found)
        .extracting(Finding::code)
        .isEqualTo(code.isEmpty() ? List.of() : List.of(code));
  }

  @Test
  void sleepwearAboveNineMonthsIsToFitCloselyOrResistFlame() {
    assertThat(findings("child-sleepwear", run("for children", "\"12M\" 8 14 16", 40, "sleepwear")))
        .singleElement()
        .satisfies(each -> assertThat(each.sizes()).containsExactly("12M", "8", "14"));
  }

  @ParameterizedTest
  @CsvSource({
    "2T, 2, ''",
    "9M, 0.75, ''",
    "3-6M, 0.5, ''",
    "18 months, 1.5, ''",
    "8, 8, ''",
    "104, '', 1040",
    "S, '', ''"
  })
  void aSizeTellsAgeOrHeight(String name, String years, String height) {
    ChildSize child = ChildSize.of(new Size(0, name), chart("8"));
    assertThat(child.years()).isEqualTo(number(years));
    assertThat(child.height()).isEqualTo(number(height));
  }

  private static OptionalDouble number(String text) {
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }
}
