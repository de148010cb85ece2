package org.hemwright.paper.cutting;

import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.fabric.Fabric;

/**
 * What a maker must mind when she lays a cloth with stripes or checks: where it is folded, both
 * layers must show the same bars in the same places, or only one of them is matched (common
 * practice, no source); uneven ones are cut from a single layer (handbook section 5).
 */
public enum StripeCaution {
  /** Folded along a bar, the layers bar on bar. */
  FOLDED_ON_A_BAR,
  /** Folded anywhere, the layers bar on bar. */
  FOLDED,
  /** Not folded: each piece goes by the bars. */
  SINGLE,
  /** Never folded, since no layer can have the bars of the other. */
  UNEVEN;

  /** What to mind with a row of a cloth with stripes. */
  public static StripeCaution of(YardageRow row) {
    Fabric.Repeat repeat = row.fabric().repeat().orElseThrow();
    if (!repeat.liesFolded()) {
      return UNEVEN;
    }
    if (row.fold() == Fold.SINGLE) {
      return SINGLE;
    }
    return repeat.across().isPresent() ? FOLDED_ON_A_BAR : FOLDED;
  }
}
