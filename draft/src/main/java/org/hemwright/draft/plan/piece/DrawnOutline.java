package org.hemwright.draft.plan.piece;

import java.util.List;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;

/**
 * An outline put together.
 *
 * @param stitchLine closed, counter-clockwise
 * @param edges in its order, from the first that the designer names
 */
public record DrawnOutline(Outline stitchLine, List<DrawnEdge> edges) {
  public DrawnOutline {
    edges = List.copyOf(edges);
  }

  /**
   * One edge of it.
   *
   * @param index its place in the designer's list
   * @param path counter-clockwise round the piece
   * @param reversed whether that is against her direction
   */
  public record DrawnEdge(int index, Path path, boolean reversed) {
    /** The edge in the direction in which she draws it. */
    public Path hers() {
      return reversed ? path.reversed() : path;
    }
  }

  /** The edge at a place in her list. */
  public DrawnEdge edge(int index) {
    for (DrawnEdge edge : edges) {
      if (edge.index() == index) {
        return edge;
      }
    }
    throw new IllegalArgumentException("an outline has no edge " + index);
  }
}
