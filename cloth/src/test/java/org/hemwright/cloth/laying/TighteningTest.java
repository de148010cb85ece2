package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Layouts made as short as their arrangement allows, curved shapes too. */
class TighteningTest {

  private static LooseShape disc(String id, double radius, int corners) {
    List<Spot> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * StrictMath.PI * i / corners;
      outline.add(new Spot(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    return new LooseShape(id, 1, List.of(Turn.AS_DRAWN), outline);
  }

  @Test
  void threeDiscsMoveTogetherUntilTheyTouch() {
    // circles of radius 1 on a strip 3 wide, up, down and up: each is sqrt(4 − 1) behind the last
    List<LooseShape> discs = List.of(disc("a", 1, 360), disc("b", 1, 360), disc("c", 1, 360));
    StripProblem problem = new StripProblem("discs", 3, discs);
    Layout loose =
        new Layout(
            6.2,
            List.of(
                new Placement("a", Turn.AS_DRAWN, 1.05, 1.9),
                new Placement("b", Turn.AS_DRAWN, 3.1, 1.1),
                new Placement("c", Turn.AS_DRAWN, 5.2, 1.95)));
    assertThat(new LayoutChecker(problem).accepts(loose)).isTrue();
    LayTask task = new LayTask(problem);
    Tightening tightening = new Tightening(task);
    Places tight = task.like(loose, task.columns());
    for (double before = 0; before != tight.length; ) {
      before = tight.length;
      tight = tightening.tighten(tight);
    }
    Layout layout = task.layout(tight);
    assertThat(new LayoutChecker(problem).accepts(layout)).isTrue();
    // an inscribed polygon of 360 corners lies within r(1 − cos 0.5°) of its circle
    assertThat(layout.length())
        .isCloseTo(2 + 2 * StrictMath.sqrt(3), org.assertj.core.api.Assertions.within(0.001));
  }
}
