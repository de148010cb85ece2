package org.hemwright.cloth.yardage;

import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Hands layings on to where they hold as well and are shorter: from folded to single cloth, from a
 * napped cloth to one without, from a garment to one with fewer pieces, from a narrower cloth to a
 * wider. So none of these ever needs more. A width that is only asked about hands nothing to those
 * that the fabric is sold in, whose need is the same whatever is asked.
 */
final class CarryOver {
  private final List<ClothSeries> all;
  private final int sizes;

  private CarryOver(List<ClothSeries> all) {
    this.all = all;
    sizes = all.isEmpty() ? 0 : all.get(0).cloth().pieces().size();
  }

  /**
   * Hands on among series.
   *
   * @param all of each cloth the wider after the narrower
   */
  static void among(List<ClothSeries> all) {
    new CarryOver(all).handOn();
  }

  private void handOn() {
    for (int size = 0; size < sizes; size++) {
      for (boolean changed = true; changed; ) {
        changed = false;
        for (ClothSeries to : all) {
          for (ClothSeries from : all) {
            changed |= from != to && handOn(from, to, size);
          }
        }
      }
    }
  }

  private static boolean handOn(ClothSeries from, ClothSeries to, int size) {
    Optional<ClothLaying> known = from.answer(size).laying();
    if (known.isEmpty() || !to.answer(size).isOfUse() || !holds(from, to, size)) {
      return false;
    }
    Optional<List<String>> ids = to.cloth().among(known.get().ids(), size);
    boolean barMoves = from.fold() == Fold.PARTIAL && to.fold() == Fold.SINGLE;
    if (ids.isEmpty() || (barMoves && known.get().heldAcross())) {
      return false;
    }
    ClothLaying laying = known.get();
    if (!from.cloth().is(to.cloth())) {
      laying = laying.only(ids.get());
    }
    if (from.onTable() < to.onTable()) {
      laying = laying.onWider(to.onTable());
    }
    if (from.fold() != to.fold()) {
      laying = laying.unfolded();
    }
    Optional<ClothLaying> own = to.answer(size).laying();
    if (own.isPresent() && own.get().length() <= laying.length()) {
      return false;
    }
    to.improve(size, laying);
    return true;
  }

  /** Whether a laying of the one is a laying of the other, once it is handed on. */
  private static boolean holds(ClothSeries from, ClothSeries to, int size) {
    boolean pieces = from.cloth().is(to.cloth()) || to.cloth().isPartOf(from.cloth(), size);
    boolean nap = from.nap() == to.nap() || from.nap() == Fabric.Nap.ONE_WAY;
    boolean fold = from.fold() == to.fold() || to.fold() == Fold.SINGLE;
    boolean width = from.onTable() <= to.onTable() && (from.sold() || !to.sold());
    return pieces && nap && fold && width;
  }
}
