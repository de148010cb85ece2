package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** A plan evaluated whole, in part, and again after a change. */
class EvaluationTest {
  private static final String LINES =
      """
      dial ease = 4 cm from 0 cm to 12 cm "Ease"
      let quarter = (hip + ease) / 4
      let plain = 7 cm
      solve drop so that length of panel.side = 60 cm within 10 cm and 70 cm
      piece panel "Panel" number 1
        cut 2 of main, on the fold
        point top_centre at 0 cm, 0 cm
        point top_side from top_centre right quarter
        point low_side from top_side down drop then right 5 cm
        point low_centre from top_centre down drop + 1 cm
        curve side_line from top_side leaving down to low_side
        outline top is top_centre to top_side, side is side_line, hem is low_side to low_centre, centre is straight
        fold centre
        allowance 1 cm, hem 2 cm turned back
        notch side at 50% from start when hip > 100 cm
        grain along centre
      piece patch "Patch" number 2
        cut 1 of main
        rectangle plain by 0 cm + 5 cm, edges low, right, top, left
      """;

  private static Plan plan(String lines) {
    return Plan.of(DocumentReader.read("p", FindingCase.HEADINGS + lines), FindingCase.CHART)
        .plan();
  }

  private static SizeRun run(Evaluation evaluation) {
    Drawn drawn = evaluation.drawn();
    assertThat(drawn.findings()).isEmpty();
    return drawn.run();
  }

  @Test
  void whatIsAcceptedTravelsWithTheRun() {
    String accepted =
        """
        accept  seam-length on seam  side_seams in sizes 8 to 12 because "Eased by hand"
        accept chart-step on "hip (cm)" because "As the house's chart has it"
        """;
    List<Acceptance> acceptances = run(plan(LINES + accepted).evaluate()).pattern().acceptances();
    assertThat(acceptances)
        .extracting(Acceptance::check)
        .containsExactly("seam-length", "chart-step");
    assertThat(acceptances)
        .extracting(Acceptance::subject)
        .containsExactly("seam side_seams", "hip (cm)");
    assertThat(acceptances.get(0).sizes().orElseThrow().last().name()).isEqualTo("12");
    assertThat(acceptances.get(0).reason()).isEqualTo("Eased by hand");
    assertThat(acceptances.get(1).sizes()).isEmpty();
    assertThat(acceptances.get(1).origin().line())
        .isEqualTo(FindingCase.HEADINGS.lines().count() + LINES.lines().count() + 2);
  }

  @Test
  void afterAChangedLiteralAllIsAsIfTheTextHadBeenChanged() {
    Plan plan = plan(LINES);
    Evaluation before = plan.evaluate();
    for (int i = 0; i < plan.literals().size(); i++) {
      Expression.Literal literal = plan.literals().get(i);
      if (literal.value() == 0) {
        continue;
      }
      double changed = literal.value() * 1.01;
      int start = literal.span().start() - FindingCase.HEADINGS.length();
      int end = literal.span().end() - FindingCase.HEADINGS.length();
      String unit = literal.unit().word();
      String text =
          LINES.substring(0, start)
              + changed
              + (unit.equals("%") ? "%" : " " + unit)
              + LINES.substring(end);
      Evaluation whole = plan(text).evaluate();
      Evaluation again = before.withLiteral(i, changed * literal.unit().factor());
      assertThat(sizes(again)).as(text).isEqualTo(sizes(whole));
      assertThat(again.work()).isLessThanOrEqualTo(whole.work());
    }
    assertThat(sizes(before)).isEqualTo(sizes(plan.evaluate()));
  }

  /** All that is drawn, without the places in the text, which a longer number moves. */
  private static List<String> sizes(Evaluation evaluation) {
    return run(evaluation).sizes().stream()
        .map(size -> size.toString().replaceAll("origin=p:\\d+:\\d+", ""))
        .toList();
  }

  @Test
  void onlyWhatDependsOnALiteralIsWorkedOutAgain() {
    Plan plan = plan(LINES);
    Evaluation before = plan.evaluate();
    int plain = plan.literalAt(plan.literals().get(literal(plan, 7)).span()).orElseThrow();
    Evaluation after = before.withLiteral(plain, 80);
    assertThat(after.work()).isLessThan(before.work() / 10);
    assertThat(run(after).sizes().get(0).pieces().get(0))
        .isSameAs(run(before).sizes().get(0).pieces().get(0));
  }

  private static int literal(Plan plan, double value) {
    for (int i = 0; i < plan.literals().size(); i++) {
      if (plan.literals().get(i).value() == value) {
        return i;
      }
    }
    throw new AssertionError("no literal " + value);
  }

  @Test
  void aBareZeroKeepsItsValue() {
    Plan plan = plan("let nothing = waist - 0\n");
    Evaluation evaluation = plan.evaluate();
    assertThatThrownBy(() -> evaluation.withLiteral(0, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(run(evaluation.withLiteral(0, 0)).sizes()).hasSize(10);
  }

  @Test
  void aDialIsTurnedAsIfTheTextHadIt() {
    String turned = LINES.replace("ease = 4 cm", "ease = 6 cm");
    Evaluation byDial =
        plan(LINES)
            .evaluate(
                FindingCase.CHART.sizes(), DialSettings.NONE.with("ease", Quantity.length(60)));
    assertThat(sizes(byDial)).isEqualTo(sizes(plan(turned).evaluate()));
    assertThat(run(byDial).pattern().dials().get(0).value()).isEqualTo(60);
  }

  @Test
  void someSizesAreAsTheyAreAmongAll() {
    Drafted some =
        Drafting.draft(
            "p",
            FindingCase.HEADINGS + LINES,
            FindingCase.CHART,
            DialSettings.NONE,
            List.of("20", "12"));
    SizeRun all = run(plan(LINES).evaluate());
    SizeRun run = some.run().orElseThrow();
    assertThat(run.sizes().stream().map(size -> size.size().name()).toList())
        .containsExactly("12", "20");
    assertThat(run.size("20")).isEqualTo(all.size("20"));
  }

  @Test
  void theSameTextGivesTheSameNumbersAgain() {
    assertThat(Drafting.draft("p", FindingCase.HEADINGS + LINES, FindingCase.CHART))
        .isEqualTo(Drafting.draft("p", FindingCase.HEADINGS + LINES, FindingCase.CHART));
  }

  @Test
  void aPieceThatCannotBeDrawnIsAbsentAndTheOthersAreThere() {
    Drawn drawn = plan(LINES.replace("plain = 7 cm", "plain = waist - waist")).evaluate().drawn();
    assertThat(drawn.findings().stream().map(Finding::code).toList())
        .containsExactly("rectangle-flat");
    assertThat(drawn.run().sizes().get(3).pieces()).hasSize(1);
  }
}
