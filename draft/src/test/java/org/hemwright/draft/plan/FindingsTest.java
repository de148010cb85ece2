package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every problem that planning and evaluating may find, with its exact place and words. */
class FindingsTest {
  /** Told where no line of a document can say it: by dials, by the sizes asked for, by work. */
  private static final Set<String> ELSEWHERE =
      Set.of(
          "dial-unknown",
          "dial-of-other-quantity",
          "size-not-in-chart",
          "heading-missing",
          "work-exceeded");

  static Stream<FindingCase> cases() {
    return Stream.of(
            "names.txt",
            "quantities.txt",
            "drawing.txt",
            "pieces.txt",
            "shapes.txt",
            "steps.txt",
            "traced.txt")
        .flatMap(file -> FindingCase.in(file).stream());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isToldAtItsPlaceInTheseWords(FindingCase each) {
    assertThat(each.told()).isEqualTo(each.expected());
    assertThat(each.found().stream().map(Finding::code).toList()).contains(each.code());
  }

  @Test
  void everyCodeThatHasWordsHasACase() throws IOException {
    Set<String> tested = new TreeSet<>(ELSEWHERE);
    cases().forEach(each -> tested.add(each.code()));
    assertThat(tested).isEqualTo(codes());
  }

  private static Set<String> codes() throws IOException {
    try (InputStream stream = Drafting.class.getResourceAsStream("findings.properties")) {
      assertThat(stream).isNotNull();
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      String planning = text.substring(text.indexOf("# --- What planning and evaluating"));
      Matcher code = Pattern.compile("(?m)^([a-z-]+)\\.message =").matcher(planning);
      Set<String> codes = new TreeSet<>();
      while (code.find()) {
        codes.add(code.group(1));
      }
      return codes;
    }
  }

  private static List<String> told(Drafted drafted) {
    Wording wording =
        Wording.of(Drafting.messages(), Wording.patternMessages())
            .overSizes(FindingCase.CHART.sizes().stream().map(Size::name).toList());
    return drafted.findings().stream().map(wording::line).toList();
  }

  @Test
  void dialsThatAreNotThereOrOfAnotherQuantityOrTurnedTooFar() {
    String text =
        FindingCase.HEADINGS + "dial ease = 4 cm from 0 cm to 12 cm \"Ease\"\nlet half = ease / 2";
    DialSettings dials =
        DialSettings.NONE.with("length", Quantity.length(20)).with("ease", Quantity.angle(1));
    assertThat(told(Drafting.draft("p", text, FindingCase.CHART, dials)))
        .containsExactly(
            "p:1:1: The pattern has no dial “length”. Its dials are ease.",
            "p:9:1: The dial “ease” is a length, and it was given an angle. Give it a length.");
    assertThat(
            told(
                Drafting.draft(
                    "p",
                    text,
                    FindingCase.CHART,
                    DialSettings.NONE.with("ease", Quantity.length(150)))))
        .containsExactly(
            "p:9:13: The dial “ease” stands at 15 cm, and its range is 0 mm to 12 cm. Turn it"
                + " back into its range, or widen the range.");
    assertThat(
            told(
                Drafting.draft(
                    "p",
                    FindingCase.HEADINGS,
                    FindingCase.CHART,
                    DialSettings.NONE.with("ease", Quantity.length(20)))))
        .containsExactly("p:1:1: The pattern has no dial “ease”. There are no dials to turn.");
  }

  /** What a solve cannot find because of a line that was read as if mended is told at that line. */
  @Test
  void aSlipInWhatASolveNeedsIsToldWhereItIs() {
    String lines =
        """
        solve drop so that length of panel.side = 60 cm within 50 cm and 70 cm
        piece panel "Panel" number 1
          cut 1 of main
          point top_centre at 0 cm, 0 cm
          point top_side from top_centre right 20 cm
          point low_side from top_side down drop%s then right 5 cm
          outline top is top_centre to top_side, side is top_side to low_side, low is straight, back is top_centre to low_centre
          point low_centre from top_centre down 60 cm
        """;
    assertThat(Sketch.of(lines.formatted("")).codes()).isEmpty();
    for (String slip : List.of(" / 3 inches", " then upp 40 cm", " 2", " + 40", " * 12,5")) {
      Drafted drafted = Sketch.of(lines.formatted(slip)).drafted();
      assertThat(drafted.findings()).as(slip).isNotEmpty();
      assertThat(drafted.findings())
          .as(slip)
          .allSatisfy(
              finding ->
                  assertThat(finding.origin().orElseThrow().line())
                      .isEqualTo(FindingCase.HEADINGS.lines().count() + 6));
    }
  }

  @Test
  void aSizeThatTheChartLacks() {
    Drafted drafted =
        Drafting.draft(
            "p", FindingCase.HEADINGS, FindingCase.CHART, DialSettings.NONE, List.of("12", "13"));
    assertThat(told(drafted))
        .containsExactly(
            "sizes.csv:1:1: sizes.csv has no size 13. Choose among 8, 10, 12, 14, 16, 18, 20, 22,"
                + " 24 and 26.");
    assertThat(drafted.run().orElseThrow().sizes()).hasSize(1);
  }

  @Test
  void headingsThatAreMissing() {
    assertThat(told(Drafting.draft("p", "language 1\n", FindingCase.CHART)))
        .containsExactly(
            "p:1:1: There is no line that starts with “pattern”. Add one, such as: pattern"
                + " \"Sandling skirt\"",
            "p:1:1: There is no line that starts with “version”. Add one, such as: version 1.0",
            "p:1:1: There is no line that starts with “dated”. Add one, such as: dated 2026-11-25",
            "p:1:1: There is no line that starts with “by”. Add one, such as: by \"Tern Cove"
                + " Patterns\"",
            "p:1:1: There is no line that starts with “sizes”. Add one, such as: sizes from"
                + " \"sizes.csv\" base 14");
  }

  @Test
  void aDidYouMeanMendsTheText() {
    String text = FindingCase.HEADINGS + "let quarter = hpi / 4\n";
    Finding finding = Drafting.draft("p", text, FindingCase.CHART).findings().get(0);
    String mended =
        finding
            .edit()
            .map(
                edit ->
                    text.substring(0, edit.offset())
                        + edit.replacement()
                        + text.substring(edit.offset() + edit.length()))
            .orElse("");
    assertThat(mended).endsWith("let quarter = hip / 4\n");
    assertThat(Drafting.draft("p", mended, FindingCase.CHART).findings()).isEmpty();
  }
}
