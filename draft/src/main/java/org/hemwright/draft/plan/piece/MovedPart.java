package org.hemwright.draft.plan.piece;

import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;

/**
 * A part of a piece that moved when the piece was shaped.
 *
 * @param area what moved, as drafted
 * @param motion how; what lies in several areas is moved by the last of them first
 */
public record MovedPart(Outline area, Motion motion) {
  /** Whether a point of the piece, as drafted, moves with it. */
  boolean holds(Point point) {
    return area.contains(point);
  }
}
