package org.hemwright.cloth.yardage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Hands layings on to where they hold as well and are shorter: from folded to single cloth, from a
 * napped cloth to one without, from cloth with a right side to one alike on both, from a garment to
 * one with fewer pieces, from a narrower cloth to a wider. So none of these ever needs more. A
 * width that is only asked about hands nothing to those that the fabric is sold in, whose need is
 * the same whatever is asked; nor are the parts of a piece handed to a width that takes the whole,
 * which the printed piece says is cut whole there. Where nothing may be handed on, the narrower is
 * said to need as much as the wider: {@link #least}.
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
      for (ClothSeries to : all) {
        for (ClothSeries from : all) {
          handOnParts(from, to, size);
        }
      }
    }
  }

  private static boolean handOn(ClothSeries from, ClothSeries to, int size) {
    if (from.sold() || !to.sold()) {
      Optional<ClothLaying> laying = handed(from, to, size);
      if (laying.isPresent()
          && laying.get().ids().equals(to.cut(size))
          && isShorter(laying, to, size)) {
        to.improve(size, laying.get());
        return true;
      }
    }
    return false;
  }

  /**
   * A width that is only asked about stands on no printed piece: where the whole pieces take more
   * of it than a narrower cloth is said to need, they are cut apart as for that.
   */
  private void handOnParts(ClothSeries from, ClothSeries to, int size) {
    if (from.sold() && !to.sold()) {
      Optional<ClothLaying> laying = handed(from, to, size);
      OptionalDouble known = length(to, size);
      if (laying.isPresent()
          && isShorter(laying, to, size)
          && !(known.orElse(Double.POSITIVE_INFINITY) <= need(from, size))) {
        to.improve(size, laying.get());
      }
    }
  }

  private double need(ClothSeries one, int size) {
    return Math.max(length(one, size).orElseThrow(), least(all, one, size));
  }

  private static OptionalDouble length(ClothSeries one, int size) {
    return one.answer(size).laying().stream().mapToDouble(ClothLaying::length).findFirst();
  }

  private static boolean isShorter(Optional<ClothLaying> laying, ClothSeries than, int size) {
    return laying.orElseThrow().length() < length(than, size).orElse(Double.POSITIVE_INFINITY);
  }

  /** A laying of the one as a laying of the other; absent where it holds there not. */
  private static Optional<ClothLaying> handed(ClothSeries from, ClothSeries to, int size) {
    Optional<ClothLaying> known = from.answer(size).laying();
    if (from == to || known.isEmpty() || !to.answer(size).isOfUse() || !holds(from, to, size)) {
      return Optional.empty();
    }
    Optional<List<String>> ids = to.cloth().among(known.get().ids(), size);
    if (ids.isEmpty()) {
      return Optional.empty();
    }
    ClothLaying laying = known.get();
    if (!from.cloth().is(to.cloth())) {
      laying = laying.only(ids.get());
    }
    if (from.onTable() < to.onTable()) {
      laying = laying.onWider(to.onTable());
    }
    if (from.eitherFace() != to.eitherFace()) {
      laying = laying.onClothAlike();
    }
    if (from.fold() != to.fold()) {
      laying = laying.unfolded();
    }
    return Optional.of(laying);
  }

  /**
   * The least (mm) that a series is said to need in one size, also where its own laying is shorter:
   * no less than what as little is asked of. That others were not handed its laying is so where
   * they are sold and it is only asked about, and where its pieces are cut apart and theirs whole.
   */
  static double least(List<ClothSeries> all, ClothSeries one, int size) {
    double least = 0;
    for (ClothSeries other : all) {
      if (other != one && (other.sold() || !one.sold()) && holds(one, other, size)) {
        least = Math.max(least, length(other, size).orElse(0));
      }
    }
    return least;
  }

  /** Whether a laying of the one is a laying of the other, once it is handed on. */
  private static boolean holds(ClothSeries from, ClothSeries to, int size) {
    boolean nap = from.nap() == to.nap() || from.nap() == Fabric.Nap.ONE_WAY;
    boolean fold = from.fold() == to.fold() || to.fold() == Fold.SINGLE;
    boolean face = to.eitherFace() || !from.eitherFace();
    boolean barMoves = from.fold() == Fold.PARTIAL && to.fold() == Fold.SINGLE;
    return nap
        && fold
        && face
        && from.onTable() <= to.onTable()
        && (from.cloth().is(to.cloth()) || to.cloth().isPartOf(from.cloth(), size))
        && !(barMoves && from.answer(size).laying().filter(ClothLaying::heldAcross).isPresent());
  }
}
