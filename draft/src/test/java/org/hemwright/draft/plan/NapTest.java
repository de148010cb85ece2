package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.pattern.fabric.Fabric.Nap.EITHER_WAY;
import static org.hemwright.pattern.fabric.Fabric.Nap.ONE_WAY;

import java.util.List;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * For which naps a cloth is laid. Envelopes tell lining and interfacing once, what the garment
 * shows with a nap and without (common practice, no source); knits lie one way (handbook section
 * 5).
 */
class NapTest {
  private static final List<Fabric.Nap> BOTH = List.of(EITHER_WAY, ONE_WAY);

  /** A second fabric with these lines, and what the garment is made of besides. */
  private static Fabric second(String fabric, String rest) {
    Sketch sketch =
        new Sketch(
            Drafting.draft(
                "p",
                FindingCase.HEADINGS.substring(0, FindingCase.HEADINGS.indexOf("fabric "))
                    + "fabric wool woven\n  widths 140 cm\n"
                    + fabric
                    + rest,
                FindingCase.CHART));
    assertThat(sketch.codes()).isEmpty();
    List<Fabric> fabrics = sketch.drafted().run().orElseThrow().pattern().fabrics();
    assertThat(fabrics.get(0).naps()).isEqualTo(BOTH);
    return fabrics.get(1);
  }

  private static final String PIECE =
      """
      piece tab "Tab" number 1
        cut 1 of wool
        cut 1 of other
        rectangle 20 cm by 6 cm, edges low, right, top, left
        allowance 1 cm
      """;

  @ParameterizedTest
  @CsvSource({
    "woven, , EITHER_WAY",
    "woven, nap none, EITHER_WAY",
    "woven, nap one way, ONE_WAY",
    "woven, nap either way, EITHER_WAY ONE_WAY",
    "knit, , ONE_WAY",
    "knit, nap none, EITHER_WAY",
    "knit, nap either way, EITHER_WAY ONE_WAY",
    "woven, repeat along 5 cm, ONE_WAY"
  })
  void aSecondClothIsLaidByWhatIsSaidOfIt(String kind, String line, String naps) {
    String fabric = "fabric other " + kind + "\n  widths 90 cm\n";
    Fabric other = second(fabric + (line == null ? "" : "  " + line + "\n"), PIECE);
    assertThat(other.naps()).hasToString(List.of(naps.split(" ")).toString());
    assertThat(other.hasNoNap()).isEqualTo(naps.equals("EITHER_WAY"));
  }

  @Test
  void whatIsFusedHasNoNapUnlessItIsSaidToLieOneWay() {
    String fuse = PIECE + "make\n  fuse tab with other\n";
    String either = "fabric other woven\n  widths 90 cm\n  nap either way\n";
    assertThat(second(either, fuse).naps()).containsExactly(EITHER_WAY);
    assertThat(second(either.replace("either", "one"), fuse).naps()).containsExactly(ONE_WAY);
  }

  @Test
  void aClothHasARightSideUnlessItIsSaidToHaveNone() {
    String plain = "fabric other woven\n  widths 90 cm\n";
    assertThat(second(plain, PIECE).sidesAlike()).isFalse();
    assertThat(second(plain + "  both sides alike\n  nap either way\n", PIECE).traits())
        .containsExactly(Fabric.Trait.SIDES_ALIKE);
  }
}
