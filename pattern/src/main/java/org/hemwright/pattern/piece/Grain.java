package org.hemwright.pattern.piece;

import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;

/**
 * The one arrow that lies parallel to the selvedge.
 *
 * @param from the arrow's foot, on the piece
 * @param to its head; apart from the foot
 * @param origin where the document lays it
 */
public record Grain(Point from, Point to, Origin origin) {
  public Grain {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a grain arrow has a length");
    }
  }

  /** Along the grain, unit. */
  public Vector direction() {
    return to.minus(from).unit();
  }
}
