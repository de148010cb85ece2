package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.post.Feedback;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The testers' form goes out and comes back. */
class FeedbackTest {
  private static final BookletMaking MADE = Examples.booklet("eddy-skirt");

  private static String form() {
    return MADE.posts(Optional.empty()).stream()
        .filter(file -> file.name().equals("testers/feedback.csv"))
        .map(file -> new String(file.bytes(), StandardCharsets.UTF_8))
        .findFirst()
        .orElseThrow();
  }

  /** The form as a tester fills it in. */
  private static String filled(Map<String, String> answers) {
    StringBuilder csv = new StringBuilder();
    form()
        .lines()
        .forEach(
            line -> {
              String field = line.substring(1, line.indexOf('"', 1));
              String answer = answers.get(field);
              csv.append(
                      answer == null
                          ? line
                          : line.substring(0, line.lastIndexOf(",\"") + 2)
                              + answer.replace("\"", "\"\"")
                              + "\"")
                  .append("\r\n");
            });
    return csv.toString();
  }

  private static Feedback read(Map<String, String> answers) {
    return MADE.feedback(new TreeMap<>(Map.of("ada.csv", filled(answers))));
  }

  @Test
  void anEmptyFormAsksForTheSizeAndNothingElse() {
    Feedback read = MADE.feedback(new TreeMap<>(Map.of("empty.csv", form())));
    assertThat(read.findings())
        .extracting(finding -> finding.code())
        .containsExactly("feedback-size");
  }

  @Test
  void measuredStandsBesidePredicted() {
    Feedback read =
        read(Map.of("tester", "Ada", "size", "16", "view", "B", "finished.hip", "60 1/2 in"));
    assertThat(read.findings()).isEmpty();
    Feedback.Measured hip = read.measured().get(0);
    assertThat(hip.measured()).isEqualTo(60.5 * 25.4);
    double predicted =
        MADE.given().telling().measured().girths().stream()
            .filter(girth -> girth.view().equals("B") && girth.level().equals("hip"))
            .map(girth -> girth.girth().get("16"))
            .findFirst()
            .orElseThrow();
    assertThat(hip.predicted()).isEqualTo(predicted);
    assertThat(hip.difference()).isEqualTo(60.5 * 25.4 - predicted);
  }

  @Test
  void clothAndProblemsAreReadInTheUnitsOfPeople() {
    Feedback read =
        read(
            Map.of(
                "tester", "Ben",
                "size", "8",
                "view", "A",
                "cloth.main.width", "60 in",
                "cloth.main.used", "1 1/2 yd",
                "step.close_feed", "It was \"short\""));
    assertThat(read.findings()).isEmpty();
    assertThat(read.cloth().get(0).used()).isEqualTo(1.5 * 914.4);
    assertThat(read.cloth().get(0).width()).isEqualTo(60 * 25.4);
    assertThat(read.problems()).containsOnlyKeys("close_feed");
    assertThat(read.problems().get("close_feed").get(0).words()).isEqualTo("It was \"short\"");
  }

  @Test
  void whatCannotBeReadIsToldWithItsLine() {
    Feedback read =
        read(Map.of("size", "16", "view", "C", "finished.hip", "wide", "version", "0.9"));
    assertThat(read.findings())
        .extracting(finding -> finding.code())
        .containsExactlyInAnyOrder("feedback-version", "feedback-view", "feedback-length");
    assertThat(read.findings())
        .allSatisfy(finding -> assertThat(finding.origin().orElseThrow().line()).isGreaterThan(1));
  }

  /** What spreadsheets of other countries make of the form: semicolons or tabs, decimal commas. */
  @ParameterizedTest
  @ValueSource(strings = {";", "\t"})
  void aFormSavedByAnotherCountrysSpreadsheetIsReadAsItWasMeant(String separator) {
    String csv =
        String.join(
            "\r\n",
            "\uFEFFfield|question|answer",
            "tester||Cleo",
            "version||1.0",
            "size||16",
            "view||B",
            "finished.hip||153,4",
            "cloth.main.width||150 cm",
            "cloth.main.used||1,4 m",
            "step.close_feed||",
            "");
    Feedback read = MADE.feedback(new TreeMap<>(Map.of("cleo.csv", csv.replace("|", separator))));
    assertThat(read.findings()).isEmpty();
    assertThat(read.measured().get(0).measured()).isEqualTo(1534);
    assertThat(read.cloth().get(0).used()).isEqualTo(1400);
    assertThat(read.problems()).isEmpty();
  }

  @Test
  void everyFaultOfAFormIsToldAtOnce() {
    Feedback read =
        read(
            Map.of(
                "size", "99",
                "view", "C",
                "version", "0.9",
                "scale", "9.7 cm",
                "body.hip", "a lot",
                "finished.hip", "-3 cm",
                "cloth.main.width", "wide",
                "cloth.main.used", "long"));
    assertThat(read.findings())
        .extracting(finding -> finding.code())
        .containsExactlyInAnyOrder(
            "feedback-size",
            "feedback-view",
            "feedback-version",
            "feedback-scale",
            "feedback-length",
            "feedback-length",
            "feedback-length",
            "feedback-length");
    assertThat(read.measured()).isEmpty();
    assertThat(read.cloth()).isEmpty();
  }

  @Test
  void anAnswerGivenTwiceIsToldAndTheFirstIsTaken() {
    String csv = filled(Map.of("size", "16", "view", "B", "finished.hip", "150 cm"));
    Feedback read =
        MADE.feedback(
            new TreeMap<>(Map.of("twice.csv", csv + "finished.hip,,190 cm\r\nshoe,,42\r\n")));
    assertThat(read.findings())
        .extracting(finding -> finding.code())
        .containsExactlyInAnyOrder("feedback-twice", "feedback-field");
    assertThat(read.measured().get(0).measured()).isEqualTo(1500);
  }

  @Test
  void inchesMayBeMarkedAsPeopleMarkThem() {
    for (String hip : new String[] {"60 1/2\"", "60.5 \u2033", "60 1/2 in"}) {
      Feedback read = read(Map.of("size", "16", "view", "B", "finished.hip", hip));
      assertThat(read.findings()).as(hip).isEmpty();
      assertThat(read.measured().get(0).measured()).as(hip).isEqualTo(60.5 * 25.4);
    }
  }

  @Test
  void nothingIsLeftOutInSilence() {
    assertThat(MADE.feedback(new TreeMap<>(Map.of("two.csv", "size,16\nview,B\n"))).findings())
        .extracting(finding -> finding.code())
        .containsExactly("feedback-columns");
    Feedback read =
        MADE.feedback(
            new TreeMap<>(
                Map.of(
                    "dora.csv",
                    """
                    tester,,Dora
                    version,,1.0
                    size,,16
                    view,,B
                    finished.knee,,90 cm
                    finished.hip,,1.2.3 m
                    cloth.main.used,,1.4 m
                    """)));
    assertThat(read.findings())
        .extracting(finding -> finding.code())
        .containsExactlyInAnyOrder("feedback-level", "feedback-length", "feedback-width");
  }
}
