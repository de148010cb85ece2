package org.hemwright.pattern.piece;

import java.util.Optional;
import org.hemwright.pattern.finding.Origin;

/**
 * A mark at an edge that meets its mate when the seam is sewn.
 *
 * @param edge the edge's name
 * @param distance along the edge's path from its start, counter-clockwise (mm), at the stitch line
 * @param kind single or double
 * @param name its own name, where the designer gave one, so that seams may start or end at it
 * @param origin where the document puts it
 */
public record Notch(String edge, double distance, Kind kind, Optional<String> name, Origin origin) {
  public Notch {
    if (!(distance >= 0)) {
      throw new IllegalArgumentException("a notch lies along its edge, not at " + distance);
    }
  }

  /** Told apart by number: single in front, double at the back (common practice, no source). */
  public enum Kind {
    SINGLE,
    DOUBLE
  }
}
