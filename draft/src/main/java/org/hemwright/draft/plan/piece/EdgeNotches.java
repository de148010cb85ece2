package org.hemwright.draft.plan.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Notch;

/**
 * Notches that one statement puts on one edge.
 *
 * @param piece the piece's name
 * @param edge the edge's name
 * @param distances from her start of the edge (mm), rising
 * @param kind single or double
 * @param name the name that the designer gave, if any
 * @param origin where the statement stands
 */
record EdgeNotches(
    String piece,
    String edge,
    List<Double> distances,
    Notch.Kind kind,
    Optional<String> name,
    Origin origin) {
  EdgeNotches {
    distances = List.copyOf(distances);
  }

  /** Several, on one edge or more. */
  record Several(List<EdgeNotches> all) {
    Several {
      all = List.copyOf(all);
    }
  }
}
