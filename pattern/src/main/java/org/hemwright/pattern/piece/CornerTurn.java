package org.hemwright.pattern.piece;

import java.util.List;
import org.hemwright.geometry.Curve;

/**
 * How the cut line gets round one corner.
 *
 * @param before where the cut line of the edge before is left, as a place of its {@link
 *     AllowanceArm}: more than 0 where it is trimmed, less than 0 where it runs on
 * @param after where the cut line of the edge after is joined, counted likewise
 * @param between the way from the one to the other, in the direction of the outline; empty where
 *     the two meet
 */
record CornerTurn(double before, double after, List<Curve> between) {
  CornerTurn {
    between = List.copyOf(between);
  }

  /** Two cut lines that meet beside the corner. */
  static CornerTurn meeting() {
    return new CornerTurn(0, 0, List.of());
  }
}
