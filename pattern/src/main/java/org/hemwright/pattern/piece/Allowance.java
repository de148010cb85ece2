package org.hemwright.pattern.piece;

import java.util.List;

/**
 * What is added outside the stitch line along one edge (handbook section 3).
 *
 * <p>Never graded by itself; a width may still be stepped by size in the document.
 */
public sealed interface Allowance {
  /** No allowance: the stitch line is the cut line, as on a fold or a raw edge. */
  Allowance NONE = new Plain(0);

  /** The distance from the stitch line to the cut line (mm). */
  double width();

  /**
   * A seam allowance, or a hem that is bound or faced.
   *
   * @param width 0 or more (mm)
   */
  record Plain(double width) implements Allowance {
    public Plain {
      if (!(width >= 0) || !Double.isFinite(width)) {
        throw new IllegalArgumentException("an allowance is 0 mm or more, not " + width);
      }
    }
  }

  /**
   * A hem, casing or facing folded back along the edge, its ends mirrored over each fold so that it
   * lies flat on the garment.
   *
   * @param folds the depth of each fold (mm), the one at the edge first: one for a single hem, two
   *     for a hem turned twice (the second is the turn-under)
   */
  record TurnedBack(List<Double> folds) implements Allowance {
    public TurnedBack {
      folds = List.copyOf(folds);
      if (folds.isEmpty() || folds.size() > 2) {
        throw new IllegalArgumentException("a hem is turned once or twice");
      }
      for (double depth : folds) {
        if (!(depth > 0) || !Double.isFinite(depth)) {
          throw new IllegalArgumentException("a turned hem is deeper than 0 mm, not " + depth);
        }
      }
    }

    @Override
    public double width() {
      return folds.stream().mapToDouble(Double::doubleValue).sum();
    }
  }
}
