package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Vector;

/**
 * A rule before it is known whether another says the same point.
 *
 * @param edge which edge of the piece, from 0
 * @param distance where on it (mm from its start)
 * @param moves for each size of the chart, by how much the point lies elsewhere than in the base
 *     size (mm)
 * @param span where the document says so
 */
record GradeRule(int edge, double distance, List<Vector> moves, Span span) {
  GradeRule {
    moves = List.copyOf(moves);
  }
}
