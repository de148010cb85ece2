package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What may come next follows from the table of forms, and from nothing else. */
class CompletionTest {
  private static final String ABOVE = "piece front \"Front\" number 1\n";

  private static Completion after(String text) {
    return Completion.at(text, text.length());
  }

  @Test
  void aLineStartsWithTheWordsOfItsPlace() {
    assertThat(after("").words()).isEqualTo(Forms.firstWords(Where.LEFT_EDGE));
    assertThat(after(ABOVE + "  ").words())
        .contains("point", "curve", "outline", "notch", "grain")
        .doesNotContain("piece", "dial");
    assertThat(after("paper\n  ").words()).contains("groups", "stitch").doesNotContain("point");
    Completion piece = after(ABOVE + "  po");
    assertThat(piece.from()).isEqualTo(ABOVE.length() + 2);
    assertThat(piece.examples().get(piece.words().indexOf("point"))).startsWith("point ");
  }

  @Test
  void withinALineComeTheWordsAndThingsThatItsFormTakes() {
    assertThat(after(ABOVE + "  point a ").words()).contains("at", "from", "midway", "on", "where");
    assertThat(after(ABOVE + "  point a from ").terms()).contains("point");
    assertThat(after(ABOVE + "  point a from b ").words())
        .contains("right", "left", "up", "toward");
    assertThat(after(ABOVE + "  point a from b right ").terms()).contains("number");
    assertThat(after(ABOVE + "  point a from b right 3 cm ").words()).contains("then");
    assertThat(after("let x = 1 cm, then 2 cm from size ").terms()).contains("size");
    assertThat(after("seam s front.").terms()).containsExactly("member");
  }

  @Test
  void aLineThatGoesOnIsReadAsOne() {
    assertThat(after("fabric main knit\n  widths 115 cm,\n    ").terms()).contains("literal");
  }

  @Test
  void inANoteAndAfterASlipNothingIsProposed() {
    assertThat(after(ABOVE + "  point a # from ").words()).isEmpty();
    assertThat(after(ABOVE + "  point a frm b right ").words()).isEmpty();
  }

  /** Every form's own example can be written word by word with what is proposed. */
  @Test
  void everyExamplesWordsAreProposedWhereTheyStand() {
    for (Form form : Forms.rows()) {
      if (form.where().stream().noneMatch(Where::holdsLines) || !isOneLine(form)) {
        continue;
      }
      Where where = form.where().iterator().next();
      String above = where == Where.LEFT_EDGE ? "" : opener(where) + "\n  ";
      List<String> first = Completion.at(above, above.length()).words();
      assertThat(first).as(form.example()).contains(form.example().split("[ \"]", 2)[0]);
    }
  }

  private static boolean isOneLine(Form form) {
    return form.example().lines().count() == 1;
  }

  private static String opener(Where where) {
    return Forms.at(Where.LEFT_EDGE).stream()
        .filter(form -> form.opens().filter(where::equals).isPresent())
        .map(form -> form.example().lines().findFirst().orElseThrow())
        .findFirst()
        .orElseThrow();
  }
}
