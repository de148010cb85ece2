package org.hemwright.draft.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.junit.jupiter.api.Test;

/** A name is changed wherever the document says the thing, and nowhere else (design, "Names"). */
class RenamingTest {
  private static final String TEXT =
      """
      language 1
      pattern "Trial"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 12
      units centimetres
      fabric main woven "Linen"
        widths 140 cm
      dial ease = 4 cm from 0 cm to 12 cm "Ease at the hip, not at b"
      piece front "Front" number 1
        cut 1 of main
        let b = (hip + ease) / 4
        point a at 0 cm, 0 cm
        point b from a right b   # b is a point and a number
        point c from b up 30 cm
        outline low is a to b, right is b to c, left is c to a
        allowance 1 cm
        grain up
      piece back "Back" number 2
        cut 1 of main
        point b is front.b
        point d from b up 20 cm
        point e from b left length of front.low
        outline low is e to b, right is b to d, left is d to e
        allowance 1 cm
        grain up
      seam sides front.right with back.right, ease 0 cm to 12 cm
      """;

  private static Optional<String> renamed(String owner, String name, boolean number, String to) {
    Document document = DocumentReader.read("pattern.hem", TEXT);
    return new Renaming(owner, name, number)
        .to(
            document,
            to,
            text -> {
              var planned = Plan.of(DocumentReader.read("pattern.hem", text), DragTest.CHART);
              return planned.findings();
            });
  }

  @Test
  void aPointInItsPieceAndByItsPiece() {
    assertThat(renamed("front", "b", false, "side"))
        .contains(
            TEXT.replace("point b from a right b ", "point side from a right b ")
                .replace("from b up 30", "from side up 30")
                .replace("low is a to b, right is b to c", "low is a to side, right is side to c")
                .replace("front.b", "front.side"));
  }

  @Test
  void aNumberOfTheSameName() {
    assertThat(renamed("front", "b", true, "quarter hip"))
        .contains(
            TEXT.replace("let b =", "let quarter_hip =").replace("right b ", "right quarter_hip "));
  }

  @Test
  void anEdgeAPieceAndADial() {
    assertThat(renamed("front", "right", false, "side"))
        .contains(
            TEXT.replace("b, right is b to c", "b, side is b to c")
                .replace("front.right", "front.side"));
    assertThat(renamed("", "front", false, "fore"))
        .contains(TEXT.replace("piece front", "piece fore").replace("front.", "fore."));
    assertThat(renamed("", "ease", true, "hip_ease"))
        .contains(
            TEXT.replace("dial ease", "dial hip_ease").replace("hip + ease", "hip + hip_ease"));
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefused() {
    assertThat(renamed("front", "b", false, "c")).isEmpty();
    assertThat(renamed("front", "b", false, "2nd")).isEmpty();
    assertThat(renamed("front", "b", false, "")).isEmpty();
    assertThat(renamed("front", "zz", false, "yy")).isEmpty();
  }
}
