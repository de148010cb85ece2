package org.hemwright.pattern.piece;

import java.util.List;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;

/**
 * The line that is cut: the stitch line with each edge's allowance outside it and each corner
 * finished as the piece says.
 *
 * @param outline closed, counter-clockwise; within 0.05 mm of the true offset
 * @param edges for each edge of the piece, in order, its own stretch of the cut line
 */
public record CutLine(Outline outline, List<Path> edges) {
  public CutLine {
    edges = List.copyOf(edges);
  }
}
