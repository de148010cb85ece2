package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.piece.MovedPart;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * A part of the piece that moves: what a cut, or two darts of one apex, part from the rest.
 *
 * @param enter how far round the outline it begins, from the start of the edge that stays (mm)
 * @param leave how far round it ends; more than enter
 * @param apex where the two darts meet; nothing for a straight cut
 * @param motion how it moves, as drafted
 */
record Region(double enter, double leave, Optional<Point> apex, Motion motion, Span span) {
  /** Whether a place round the outline belongs to it. */
  boolean holds(double round) {
    return enter < round && round < leave;
  }

  /** The part itself. */
  MovedPart part(Path round) {
    Path edge = round.part(enter, leave);
    List<Curve> curves = new ArrayList<>(edge.curves());
    if (apex.isPresent()) {
      curves.add(new Line(edge.end(), apex.get()));
      curves.add(new Line(apex.get(), edge.start()));
    } else {
      curves.addAll(Path.straight(edge.end(), edge.start()).curves());
    }
    return new MovedPart(Outline.of(Path.of(curves)), motion);
  }
}
