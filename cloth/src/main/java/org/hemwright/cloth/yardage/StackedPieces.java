package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.Silhouette;
import org.hemwright.geometry.Tolerance;

/**
 * How many pieces of a laying lie one behind another along the cloth. What a stripe or plaid takes
 * more is about a repeat for each of them (handbook section 5, and check value 29): an estimate for
 * a cloth whose stripes the laying does not know.
 */
public final class StackedPieces {
  private StackedPieces() {}

  /** How much more to buy for stripes that repeat along the cloth (mm). */
  public static double extra(ClothLaying laying, double repeat) {
    return extra(deepest(laying), repeat);
  }

  static double extra(int stacked, double repeat) {
    return stacked * repeat;
  }

  /** The most pieces of which each lies wholly behind the one before, in its way. */
  static int deepest(ClothLaying laying) {
    List<Silhouette> shapes = new ArrayList<>();
    laying.pieces().stream()
        .map(LaidPiece::covered)
        .sorted(Comparator.comparingDouble(Silhouette::left))
        .forEach(shapes::add);
    int[] deep = new int[shapes.size()];
    int deepest = 0;
    for (int i = 0; i < deep.length; i++) {
      deep[i] = 1;
      for (int k = 0; k < i; k++) {
        if (isBehind(shapes.get(i), shapes.get(k))) {
          deep[i] = Math.max(deep[i], deep[k] + 1);
        }
      }
      deepest = Math.max(deepest, deep[i]);
    }
    return deepest;
  }

  /** Whether it would have to move when the one before does, box against box. */
  private static boolean isBehind(Silhouette shape, Silhouette before) {
    return shape.left() >= before.right() - before.length() / 2
        && shape.low() < before.high() - Tolerance.DRAWN_LENGTH
        && before.low() < shape.high() - Tolerance.DRAWN_LENGTH;
  }
}
