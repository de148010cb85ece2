package org.hemwright.pattern.traced;

import java.util.List;
import org.hemwright.geometry.Vector;

/**
 * A corner or control point of a traced outline and how it moves.
 *
 * @param edge the edge's place in the outline
 * @param distance from the edge's start (mm), at most its length
 * @param moves for each size of the chart, from where it was traced (mm)
 */
public record RulePoint(int edge, double distance, List<Vector> moves) {
  public RulePoint {
    moves = List.copyOf(moves);
    if (edge < 0 || !(distance >= 0)) {
      throw new IllegalArgumentException("a rule stands on an edge, at or after its start");
    }
  }
}
