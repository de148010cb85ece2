package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.junit.jupiter.api.Test;

/** A left and a right piece that differ, sewn to the halves of pieces on the fold. */
class LoneSidesTest {
  private static final String SHIRT =
      """
      piece left "Left front" number 1
        cut 1 of main
        rectangle 25 cm by 60 cm, edges hem, side, top, front
        allowance 1 cm
      piece right "Right front" number 2
        cut 1 of main
        rectangle 27 cm by 60 cm, edges hem, front, top, side
        allowance 1 cm
      piece back "Back" number 3
        cut 1 of main, on the fold
        rectangle 25 cm by 60 cm, edges hem, side, top, centre
        fold centre
        allowance 1 cm
      piece yoke "Yoke" number 4
        cut 2 of main, on the fold
        copies outer, inner
        rectangle 25 cm by 8 cm, edges low, arm, high, centre
        fold centre
        allowance 1 cm
      seam left_side  left.side with back.side
      seam right_side back.side with right.side
      seam yoke_back  back.top with yoke.outer.low with yoke.inner.low
      """;

  private static Seam seam(String name) {
    Sketch sketch = Sketch.of(SHIRT);
    assertThat(sketch.drafted().findings()).isEmpty();
    return sketch.drafted().run().orElseThrow().size("14").orElseThrow().seams().stream()
        .filter(seam -> seam.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static EdgePlace place(Seam seam, int layer) {
    return seam.joins().get(0).layers().get(layer).run().get(0);
  }

  /**
   * Seen from outside, a left front has its side to the right of its centre, as it is drawn here;
   * the back's half as drawn is its right. So the left front goes to the mirrored half, the right
   * front to the drawn one.
   */
  @Test
  void eachFrontTakesTheHalfThatFacesIt() {
    Seam left = seam("left_side");
    Seam right = seam("right_side");
    assertThat(left.joins()).hasSize(1);
    assertThat(right.joins()).hasSize(1);
    assertThat(place(left, 1).half()).isEqualTo(EdgePlace.Half.MIRRORED);
    assertThat(place(right, 0).half()).isEqualTo(EdgePlace.Half.DRAWN);
  }

  /** The inner yoke lies with its right side to the wearer: its other half is on the same side. */
  @Test
  void twoLikeLayersLieFaceToFaceOrBackToBack() {
    Seam seam = seam("yoke_back");
    assertThat(seam.joins()).hasSize(2);
    for (Seam.Join join : seam.joins()) {
      List<EdgePlace.Half> halves =
          join.layers().stream().map(layer -> layer.run().get(0).half()).toList();
      assertThat(halves.get(1)).isNotEqualTo(halves.get(2));
    }
  }
}
