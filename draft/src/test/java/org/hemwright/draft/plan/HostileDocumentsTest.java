package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hemwright.draft.plan.node.Work;
import org.hemwright.draft.syntax.DocumentReader;
import org.junit.jupiter.api.Test;

/** Documents that ask for too much end in a finding; none ends in an exception. */
class HostileDocumentsTest {
  private static final String SQUARE =
      """
      piece square "Square" number 1
        cut 1 of main
        rectangle 10 cm by 10 cm, edges low, right, top, left
      """;

  @Test
  void aChainOfManyThousandPointsIsDrawn() {
    StringBuilder lines = new StringBuilder(SQUARE).append("  point p0 at 0 cm, 0 cm\n");
    int count = 20_000;
    for (int i = count; i > 0; i--) {
      lines.append("  point p%d from p%d right 0.1 mm\n".formatted(i, i - 1));
    }
    lines.append("  let way = distance from p0 to p%d\n".formatted(count));
    Sketch sketch = Sketch.of(lines.toString());
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("8", "square.way")).isCloseTo(2000, within(1e-6));
  }

  @Test
  void aRingOfManyThousandNumbersIsTold() {
    StringBuilder lines = new StringBuilder();
    int count = 10_000;
    for (int i = 0; i < count; i++) {
      lines.append("let n%d = n%d + 1 cm\n".formatted(i, (i + 1) % count));
    }
    assertThat(Sketch.of(lines.toString()).codes()).containsExactly("cycle");
  }

  @Test
  void solvesInsideSolvesThatNeedMuchDrawingStop() {
    StringBuilder lines =
        new StringBuilder(
            """
            solve x so that square.sum400 + x + y = 30 cm within 0 cm and 90 cm
            solve y so that square.sum400 + 2 * x - y = 2 cm within -90 cm and 90 cm
            """);
    lines.append(SQUARE).append("  point a0 at x, y\n  let sum0 = 0 cm\n");
    int count = 400;
    for (int i = 1; i <= count; i++) {
      lines.append(
          """
            point a%d from a%d right 1 cm then up x / 100
            curve c%d from a%d leaving up tension 1.1 to a%d arriving right
            let sum%d = sum%d + length of c%d / 1000
          """
              .formatted(i, i - 1, i, i - 1, i, i, i - 1, i));
    }
    Sketch sketch = Sketch.of(lines.toString());
    assertThat(sketch.codes()).containsExactly("work-exceeded");
    assertThat(sketch.drafted().findings()).hasSize(1);
  }

  @Test
  void workIsCountedAndBounded() {
    String lines =
        """
        solve x so that 2 * x = waist within 0 cm and 100 cm
        """;
    Plan plan =
        Plan.of(DocumentReader.read("p", FindingCase.HEADINGS + lines), FindingCase.CHART).plan();
    long work = plan.evaluate().work();
    assertThat(work).isEqualTo(plan.evaluate().work()).isLessThan(Work.MOST / 1000);
  }

  @Test
  void tremendousNumbersAreFindings() {
    Sketch sketch =
        Sketch.of(
            SQUARE
                + """
                  point far at 1000000 cm, 0 cm
                  point farther from far right 1000000 cm
                  point farthest from farther right 1000000 cm
                  point a at 0 cm, 0 cm
                  curve wide from a leaving up to farther arriving down
                  let girth = length of wide
                """);
    assertThat(sketch.codes()).containsExactly("cannot-be-drawn");
  }

  @Test
  void sumsAndChoicesWithinChoicesAreRead() {
    StringBuilder sum = new StringBuilder("let sum = 1 cm");
    for (int i = 0; i < 240; i++) {
      sum.append(" + (1 cm)");
    }
    assertThat(Sketch.of(sum.append('\n').toString()).codes()).isEmpty();
  }

  @Test
  void aPathThatGrowsWithEachLineStops() {
    StringBuilder lines =
        new StringBuilder(SQUARE)
            .append("  point a at 0 cm, 0 cm\n  point b at 1 cm, 0 cm\n")
            .append("  curve c0 from a leaving up to b arriving up\n");
    for (int i = 1; i <= 40; i++) {
      lines.append(
          "  path c%d is c%d then c%d moved right %d mm\n"
              .formatted(i, i - 1, i - 1, 10 << Math.min(20, i - 1)));
    }
    assertThat(Sketch.of(lines.toString()).codes()).isNotEmpty();
  }

  @Test
  void partsBroughtIntoPartsAgainAndAgain() {
    StringBuilder lines = new StringBuilder("part p0\n  point a0 at 0 cm, 0 cm\n");
    for (int i = 1; i < 300; i++) {
      lines.append(
          "part p%d\n  bring p%d moved right 1 mm\n  point a%d at 0 cm, 0 cm\n"
              .formatted(i, i - 1, i));
    }
    assertThat(Sketch.of(lines.toString()).codes()).isEmpty();
  }
}
