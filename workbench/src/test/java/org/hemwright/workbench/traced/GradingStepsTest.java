package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.starter.Starter;
import org.junit.jupiter.api.Test;

/** Steps typed, pasted, and taken from a drafted piece. */
class GradingStepsTest {
  private static final List<String> SIZES = List.of("8", "10", "12", "14");

  @Test
  void stepsAreSaidWhereTheyChange() {
    assertThat(StepWords.of(List.of(5.0, 5.0, 7.5), SIZES))
        .isEqualTo("5 mm, then 7.5 mm from size 14");
    assertThat(StepWords.of(List.of(-5.0, 0.0, 2.0), SIZES))
        .isEqualTo("-5 mm, then 0 mm from size 12, then -2 mm from size 14");
    assertThat(StepWords.of(List.of(0.001, -0.004, 0.0), SIZES)).isEmpty();
    assertThat(StepWords.of(List.of(1.0, 2.0), List.of("S", "M", "2X")))
        .isEqualTo("1 mm, then 2 mm from size \"2X\"");
  }

  @Test
  void whatIsTypedBecomesALine() {
    assertThat(new CornerRule("side", "", " ").line()).isEqualTo("grade side at end stays");
    assertThat(new CornerRule("side", "0 mm", "-3 mm").line())
        .isEqualTo("grade side at end down 3 mm");
    assertThat(new CornerRule("side", "1/4 hip", "25% of the waist").line())
        .isEqualTo("grade side at end right 1/4 of the hip step, up 25% of the waist step");
    assertThat(new CornerRule("hem", "\u2212 5 mm, then 7 mm from size 22", "").line())
        .isEqualTo("grade hem at end left 5 mm, then 7 mm from size 22");
  }

  @Test
  void aBlockFromASpreadsheetIsTakenInEitherShape() {
    List<String> edges = List.of("waist", "side", "hem");
    assertThat(PastedSteps.rules("corner\tacross\tup\nA\t0,5\t0\nB\t1\t-0.25\n", 10, edges, SIZES))
        .contains(
            List.of(
                new CornerRule("waist", "5 mm", ""),
                new CornerRule("side", "10 mm", "-2.5 mm"),
                new CornerRule("hem", "", "")));
    assertThat(PastedSteps.rules("5\t5\t7\n0\t0\t0\n", 1, edges, SIZES))
        .contains(
            List.of(
                new CornerRule("waist", "5 mm, then 7 mm from size 14", ""),
                new CornerRule("side", "", ""),
                new CornerRule("hem", "", "")));
    assertThat(PastedSteps.rules("5\tabout 3\n", 1, edges, SIZES)).isEmpty();
    assertThat(PastedSteps.rules("1\t2\t3\t4\n", 1, edges, SIZES)).isEmpty();
    assertThat(PastedSteps.rules("nothing", 1, edges, SIZES)).isEmpty();
  }

  /** The block's own steps: a quarter of what the chart adds to the hip, at its hip line. */
  @Test
  void stepsOfADraftedPieceAreThoseOfItsCorners() {
    Starter starter = Starter.named("trousers").orElseThrow();
    SizeRun run = Workbench.draft(starter.folder()).evaluated().run().orElseThrow();
    List<String> edges = List.of("waist", "crotch", "inseam", "hem", "outseam");
    List<CornerRule> rules = GrownAs.rules(run, "front", edges).orElseThrow();
    assertThat(rules).hasSize(5);
    assertThat(rules.get(4)).isEqualTo(new CornerRule("outseam", "", ""));
    // The run's hip steps are 4 cm, and 5.4 cm in the larger sizes (docs/charts.md).
    assertThat(rules.get(0).across()).startsWith("10 mm, then 13.5 mm from size 20");
    assertThat(GrownAs.rules(run, "front", List.of("waist", "side"))).isEmpty();
    assertThat(GrownAs.rules(run, "front", List.of("waist", "hem"))).isEmpty();
  }

  @Test
  void rulesOfAPieceAreReadAndOthersPutInTheirPlace() {
    String text =
        """
        language 1
        pattern "Copy"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base 12

        fabric main woven
          widths 150 cm

        piece panel traced "traced/panel.svg" as "Panel" number 1
          cut 1 of main
          outline traced "line" from the top left clockwise, edges waist, side, hem, centre
          allowance 1 cm
          grain up
          grade waist at start stays
          # Her own note.
          grade side at start right 1/4 of the hip step, up 2 mm, then 3 mm from size 20
          grade side at 50% from start right 1 mm
          grade side at end left 5 mm

        piece band "Band" number 2
          cut 1 of main
        """;
    Document document = DocumentReader.read("pattern.hem", text);
    PieceGrading grading = PieceGrading.of(document, "panel").orElseThrow();
    assertThat(PieceGrading.pieces(document)).containsExactly("panel");
    assertThat(grading.rules())
        .containsExactly(
            new CornerRule("waist", "1/4 of the hip step", "2 mm, then 3 mm from size 20"),
            new CornerRule("side", "-5 mm", ""),
            new CornerRule("hem", "", ""),
            new CornerRule("centre", "", ""));
    assertThat(grading.kept()).containsExactly("grade side at 50% from start right 1 mm");
    Optional<String> after =
        PieceGrading.written(document, "panel", List.of("grade waist at end stays"));
    assertThat(after.orElseThrow())
        .contains(
            "  grain up\n  grade waist at end stays\n  # Her own note.\n  grade side at 50% from"
                + " start right 1 mm\n\npiece band");
    assertThat(PieceGrading.written(document, "band", List.of())).isEmpty();
    Document none =
        DocumentReader.read(
            "pattern.hem", PieceGrading.written(document, "panel", List.of()).orElseThrow());
    assertThat(none.findings()).isEmpty();
    assertThat(PieceGrading.written(none, "panel", List.of("grade as band")).orElseThrow())
        .contains("grade side at 50% from start right 1 mm\n  grade as band\n\npiece band");
  }
}
