package org.hemwright.pattern.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.Reading;
import org.junit.jupiter.api.Test;

class WordingTest {
  private static final List<String> CHART = List.of("8", "10", "12", "14", "16", "18", "20");

  private static Wording saying(String message) {
    return Wording.of(
            new Messages(Map.of("inseams.message", message, "inseams.mend", "Move `back_fork`.")))
        .overSizes(CHART);
  }

  private static Finding.Builder inseams() {
    return Finding.fail("inseams", "seam inseam").at(new Origin("pattern.hem", 12, 3));
  }

  @Test
  void fillsEveryKindOfArgument() {
    Finding finding =
        inseams()
            .with("names", Argument.of(List.of("front", "back", "band")))
            .with("gap", Argument.mm(4))
            .with("turn", Argument.of(Quantity.angle(Math.PI / 2)))
            .with("share", Argument.of(Quantity.ratio(0.35)))
            .with("plain", Argument.of(Quantity.number(1.5)))
            .with("text", "side")
            .with("pages", Argument.of(1))
            .values(702.31, 700, "mm")
            .build();
    Wording wording =
        saying(
            "{subject}: {names}, {gap}, {turn}, {share}, {plain}, {text}, {pages}"
                + " {pages|page|pages}, {found} for {expected} in {sizes}.");
    assertThat(wording.line(finding))
        .isEqualTo(
            "pattern.hem:12:3: seam inseam: front, back and band, 4 mm, 90°, 35%, 1.5, side, 1"
                + " page, 70.23 cm for 70 cm in every size. Move `back_fork`.");
  }

  @Test
  void showsLengthsAsAsked() {
    Finding finding = inseams().with("gap", Argument.mm(12.7)).build();
    assertThat(
            saying("Off by {gap}.")
                .showing(LengthFormat.of(LengthFormat.Edition.INCHES_FIRST))
                .message(finding))
        .isEqualTo("Off by 1/2 in · 12.7 mm.");
  }

  @Test
  void groupsSizes() {
    SizeWords words = new SizeWords(CHART);
    assertThat(words.of(List.of())).isEqualTo("every size");
    assertThat(words.of(CHART)).isEqualTo("every size");
    assertThat(words.of(List.of("14"))).isEqualTo("size 14");
    assertThat(words.of(List.of("14", "16"))).isEqualTo("sizes 14 and 16");
    assertThat(words.of(List.of("14", "16", "18"))).isEqualTo("sizes 14 to 18");
    assertThat(words.of(List.of("8", "12", "14", "16", "20")))
        .isEqualTo("sizes 8, 12 to 16 and 20");
  }

  @Test
  void addsTheSizesWhereTheSentenceLeavesThemOut() {
    Finding finding = inseams().sizes(List.of("14", "16", "18")).build();
    assertThat(saying("They differ in {sizes}.").message(finding))
        .isEqualTo("They differ in sizes 14 to 18.");
    assertThat(saying("They differ.").message(finding))
        .isEqualTo("They differ. That is so in sizes 14 to 18.");
    assertThat(saying("They differ.").message(finding.in(CHART))).isEqualTo("They differ.");
  }

  @Test
  void aMissingSentenceOrValueIsRefusedByName() {
    Finding finding = inseams().build();
    assertThatThrownBy(() -> saying("Off by {gap}.").message(finding))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("inseams names {gap}, which the finding does not carry");
    assertThatThrownBy(() -> Wording.of(new Messages(Map.of())).mend(finding))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("no message file has the key inseams.mend");
    assertThat(saying("").lacking(List.of("inseams", "hems")))
        .containsExactly("hems.mend", "hems.message");
  }

  @Test
  void sharedPhrasesAreWordedOnceAndAlternativesAreJoined() {
    Wording wording =
        Wording.of(
            new Messages(
                Map.of("slot.message", "Here {wanted} is wanted.", "term.name", "a name")));
    Argument wanted =
        new Argument.AnyOf(
            List.of(new Argument.Term("name"), Argument.of("from"), Argument.of("to")));
    Finding.Builder finding = Finding.fail("slot", "line 1");
    assertThat(wording.message(finding.with("wanted", wanted).build()))
        .isEqualTo("Here a name, from or to is wanted.");
    assertThatThrownBy(
            () -> wording.message(finding.with("wanted", new Argument.Term("size")).build()))
        .hasMessage("no message file has the key term.size");
  }

  @Test
  void takesTheSentenceThatAnArgumentCallsFor() {
    Wording wording =
        Wording.of(
            new Messages(
                Map.of(
                    "edge.message", "There is no {name}.",
                    "edge.mend", "Name one of {known}.",
                    "edge.mend.near", "Did you mean {near}?")));
    Finding.Builder finding =
        Finding.fail("edge", "seam").with("name", "sidde").with("known", "side and hem");
    assertThat(wording.line(finding.build()))
        .isEqualTo("There is no sidde. Name one of side and hem.");
    assertThat(wording.line(finding.with("near", "side").build()))
        .isEqualTo("There is no sidde. Did you mean side?");
  }

  @Test
  void numbersAPhrase() {
    Wording wording =
        Wording.of(
            new Messages(
                Map.of("a.message", "Up to {end}.", "a.mend", "", "term.notch", "notch {number}")));
    assertThat(
            wording.line(
                Finding.warn("a", "seam").with("end", new Argument.Numbered("notch", 2)).build()))
        .isEqualTo("Up to notch 2.");
  }

  @Test
  void refusesAKeyTwice() {
    Messages one = new Messages(Map.of("a.message", "So."));
    assertThatThrownBy(() -> Messages.of(List.of(one, one)))
        .hasMessage("two message files have the key a.message");
    assertThatThrownBy(() -> Messages.beside(WordingTest.class, "twice.properties"))
        .hasMessage("twice.properties has the key a.message twice");
    assertThatThrownBy(() -> Messages.beside(WordingTest.class, "none.properties"))
        .hasMessageContaining("none.properties does not lie beside");
  }

  @Test
  void everyReasonOfAReadingIsWorded() {
    Wording wording = Wording.of(Wording.patternMessages());
    List<String> codes = Arrays.stream(Reading.Reason.values()).map(Reading.Reason::code).toList();
    assertThat(wording.lacking(codes)).isEmpty();
    for (String code : codes) {
      Finding finding = Finding.fail(code, "hip").with("text", "12,5 cm").build();
      assertThat(wording.line(finding)).doesNotContain("{").doesNotContainIgnoringCase("invalid");
    }
    assertThat(wording.line(Finding.fail("number-decimal-comma", "").with("text", "1,5").build()))
        .isEqualTo(
            "“1,5” has a comma where the decimal point belongs. Write a point, as in 12.5 cm.");
  }
}
