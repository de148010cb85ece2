package org.hemwright.draft.plan.shape;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;

/**
 * A place on an edge at which its two sides come apart: a dart, a fold of a pleat, an end of a cut.
 *
 * @param edge the edge's place in the designer's list
 * @param at along the edge as drafted, counter-clockwise (mm)
 * @param place where that is
 * @param inner the apex of a dart, or the other end of a cut
 * @param drafted the angle of cloth that is drafted there and belongs to a dart (radians); 0 where
 *     the shape is cut open
 * @param opening how what comes after it moves away, from where it lies when the joint is closed
 * @param fold what is folded away there; nothing where the joint stays open in the sewn garment
 * @param blend how far from the joint the trued line leaves the drafted one (mm); 0 for not at all
 */
record Joint(
    int edge,
    double at,
    Point place,
    Point inner,
    double drafted,
    Opening opening,
    Optional<Fold> fold,
    OptionalDouble blend,
    Span span) {
  /**
   * What is folded away.
   *
   * @param towardStart whether the cloth beneath lies toward where the edge comes from,
   *     counter-clockwise
   * @param shortOf how far the stitched point of a dart stays short of its apex (mm)
   * @param pleat whether it is a fold of a pleat rather than a dart
   */
  record Fold(String name, boolean towardStart, double shortOf, boolean pleat, Origin origin) {}

  /** Whether the edge must be redrawn across it. */
  boolean isTrued() {
    return drafted > 0 || fold.isEmpty();
  }

  /** Whether a cut's sides are joined by a straight line. */
  boolean isLeftAsCut() {
    return fold.isEmpty() && blend.isPresent() && blend.getAsDouble() == 0;
  }

  /** Whether it takes anything in: a dart that is pivoted away does not. */
  boolean folds() {
    return fold.isPresent() && !(opening instanceof Opening.Turned turned && turned.angle() == 0);
  }

  /** Half of the cloth that is drafted for it, measured straight across at the edge (mm). */
  double halfMouth() {
    return inner.distanceTo(place) * StrictMath.sin(drafted / 2);
  }

  /** Where its first leg ends, as drafted: as far from the apex as its place on the edge. */
  Point firstEnd() {
    return drafted > 0 ? Motion.turn(inner, -drafted / 2).apply(place) : place;
  }

  /** How what is drafted after it moves when it is sewn. */
  Motion sewn() {
    if (fold.isEmpty()) {
      return opening.motion(1);
    }
    return drafted > 0 ? Motion.turn(inner, -drafted) : Motion.move(Vector.ZERO);
  }
}
