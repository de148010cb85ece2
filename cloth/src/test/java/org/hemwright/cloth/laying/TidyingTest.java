package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person can follow more easily; the measure is {@link Laying#tidiness}. */
class TidyingTest {
  private static final double SAME = 1e-6;

  @Test
  void twoInLineGoToTheEdgeTogether() {
    // each counts 0.75 for the line; by itself at the edge it would count 1, and the other nothing
    StripProblem problem =
        new StripProblem(
            "line",
            10,
            List.of(LooseShapes.rectangle("a", 1, 4, 2), LooseShapes.rectangle("b", 1, 4, 3)));
    Layout loose =
        new Layout(
            8,
            List.of(
                new Placement("a", Turn.AS_DRAWN, 0, 4), new Placement("b", Turn.AS_DRAWN, 4, 4)));
    Laying laying = new Laying(problem);
    assertThat(laying.tidiness(loose)).isEqualTo(0.875);
    Layout tidy = laying.tidied(loose, 8);
    assertThat(laying.tidiness(tidy)).isEqualTo(1);
    assertThat(new LayoutChecker(problem).accepts(tidy)).isTrue();
    assertThat(tidy.length()).isLessThanOrEqualTo(8);
  }

  @Test
  void thoseInLineStayWhereWallsTakeTheEdges() {
    // a wall along the near edge and one along the far edge leave no edge to go to
    StripProblem problem =
        new StripProblem(
            "walls",
            10,
            List.of(
                LooseShapes.rectangle("wall", 2, 8, 1),
                LooseShapes.rectangle("a", 1, 4, 2),
                LooseShapes.rectangle("b", 1, 4, 3)));
    Layout loose =
        new Layout(
            8,
            List.of(
                new Placement("wall", Turn.AS_DRAWN, 0, 0),
                new Placement("wall", Turn.AS_DRAWN, 0, 9),
                new Placement("a", Turn.AS_DRAWN, 0, 4),
                new Placement("b", Turn.AS_DRAWN, 4, 4)));
    Laying laying = new Laying(problem);
    Layout tidy = laying.tidied(loose, 8);
    assertThat(new LayoutChecker(problem).accepts(tidy)).isTrue();
    assertThat(laying.tidiness(tidy)).isGreaterThanOrEqualTo(laying.tidiness(loose));
    assertThat(laying.tidiness(tidy)).isLessThan(1);
    double low = tidy.placements().get(2).y();
    assertThat(low).isBetween(1 - SAME, 7 + SAME);
  }
}
