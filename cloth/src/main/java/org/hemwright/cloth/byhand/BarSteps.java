package org.hemwright.cloth.byhand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Striped;

/**
 * The steps by which a piece may move on striped cloth without leaving its place in the repeat.
 *
 * @param along from one such place to the next along the cloth (mm); absent where it moves freely
 * @param across the same across it
 */
record BarSteps(OptionalDouble along, OptionalDouble across) {
  /** A piece that is held one way only is tried so far apart the other way (mm). */
  private static final double FREE_STEP = 8;

  static BarSteps of(ClothPiece piece) {
    return piece
        .striped()
        .map(Striped::repeat)
        .map(repeat -> new BarSteps(repeat.along(), repeat.across()))
        .orElse(new BarSteps(OptionalDouble.empty(), OptionalDouble.empty()));
  }

  boolean areHeld() {
    return along.isPresent() || across.isPresent();
  }

  /** The longer step (mm). */
  double most() {
    return Math.max(along.orElse(0), across.orElse(0));
  }

  /** The place along the cloth nearest to one that is meant, as the piece lay there (mm). */
  double along(double was, double meant) {
    return nearest(along, was, meant);
  }

  /** The same across the cloth. */
  double across(double was, double meant) {
    return nearest(across, was, meant);
  }

  private static double nearest(OptionalDouble step, double was, double meant) {
    return step.isEmpty()
        ? meant
        : was + Math.rint((meant - was) / step.getAsDouble()) * step.getAsDouble();
  }

  /**
   * Places as far apart as the steps, round one of them.
   *
   * @param farAlong how far from it at most along the cloth (mm)
   * @param farAcross how far across it; 0 on a fold
   */
  List<OwnPlace> near(OwnPlace place, double farAlong, double farAcross) {
    List<OwnPlace> places = new ArrayList<>();
    double stepAlong = along.orElse(FREE_STEP);
    double stepAcross = across.orElse(FREE_STEP);
    int manyAlong = (int) (farAlong / stepAlong);
    int manyAcross = (int) (farAcross / stepAcross);
    for (int i = -manyAlong; i <= manyAlong; i++) {
      for (int k = -manyAcross; k <= manyAcross; k++) {
        places.add(place.at(place.along() + i * stepAlong, place.across() + k * stepAcross));
      }
    }
    return places;
  }
}
