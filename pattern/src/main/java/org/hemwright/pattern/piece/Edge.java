package org.hemwright.pattern.piece;

import org.hemwright.geometry.Path;
import org.hemwright.pattern.finding.Origin;

/**
 * A named stretch of a piece's stitch line, from corner to corner.
 *
 * @param name {@code side}
 * @param path in the direction of the outline, counter-clockwise round the piece, so that the
 *     inside lies to the left
 * @param onFold whether the piece is a half, to be opened over this edge; a fold edge is straight
 *     and has no allowance
 * @param allowance what is added outside it
 * @param reversed whether the outline runs against the path as the designer drew it: places she
 *     gives along the edge are counted from her start
 * @param origin where the outline names it
 */
public record Edge(
    String name, Path path, boolean onFold, Allowance allowance, boolean reversed, Origin origin) {
  public Edge {
    if (onFold && allowance.width() != 0) {
      throw new IllegalArgumentException("a fold edge has no allowance");
    }
  }
}
