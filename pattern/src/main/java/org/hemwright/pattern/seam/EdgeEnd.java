package org.hemwright.pattern.seam;

import java.util.Optional;

/**
 * One end of an edge of a cut part.
 *
 * @param part the part
 * @param edge the edge's index in the outline's order
 * @param last whether it is the end that comes last counter-clockwise round the drawing
 */
record EdgeEnd(CutPart part, int edge, boolean last) {
  /** The edge that meets this one here, on the same part. */
  EdgeEnd besideAtCorner() {
    return part.besideAtCorner(edge, last);
  }

  /** The other end of the same edge. */
  EdgeEnd otherEnd() {
    return new EdgeEnd(part, edge, !last);
  }

  /** Whether who sets out from here along the edge walks against the designer's direction. */
  boolean leavesAgainstDrawing() {
    return last != part.edge(edge).reversed();
  }

  /** The whole edge walked from here. */
  EdgePlace place() {
    return new EdgePlace(
        part.piece().name(),
        part.copy().name(),
        part.half(),
        part.edge(edge).name(),
        Optional.empty(),
        Optional.empty(),
        leavesAgainstDrawing());
  }

  /** +1 when who sets out from here walks counter-clockwise round the part, face up; else −1. */
  int hand() {
    return part.hand(edge) * (leavesAgainstDrawing() ? -1 : 1);
  }
}
