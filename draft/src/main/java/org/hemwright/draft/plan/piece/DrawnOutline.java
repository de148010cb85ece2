package org.hemwright.draft.plan.piece;

import java.util.List;
import org.hemwright.draft.plan.node.SewnPath;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.SewnEdge;

/**
 * An outline put together.
 *
 * @param stitchLine closed, counter-clockwise
 * @param edges in its order, from the first that the designer names
 * @param moved what moved since it was drafted, the outermost first
 */
public record DrawnOutline(Outline stitchLine, List<DrawnEdge> edges, List<MovedPart> moved) {
  public DrawnOutline {
    edges = List.copyOf(edges);
    moved = List.copyOf(moved);
  }

  /** An outline as drafted. */
  public DrawnOutline(Outline stitchLine, List<DrawnEdge> edges) {
    this(stitchLine, edges, List.of());
  }

  /**
   * One edge of it.
   *
   * @param index its place in the designer's list
   * @param path counter-clockwise round the piece
   * @param reversed whether that is against her direction
   * @param intakes what is folded away or drawn up on it, along its path
   * @param closed the edge as sewn, counter-clockwise, starting where the path starts: the path
   *     itself where nothing is taken in
   * @param opened how what lies beyond its end moves when all that is folded on it is opened
   */
  public record DrawnEdge(
      int index, Path path, boolean reversed, List<Intake> intakes, Path closed, Motion opened) {
    public DrawnEdge {
      intakes = List.copyOf(intakes);
    }

    /** An edge on which nothing is taken in. */
    public DrawnEdge(int index, Path path, boolean reversed) {
      this(index, path, reversed, List.of(), path, Motion.identity());
    }

    /** The edge in the direction in which she draws it. */
    public Path hers() {
      return reversed ? path.reversed() : path;
    }

    /** The same with what is taken in. */
    public SewnPath sewn() {
      SewnEdge edge = SewnEdge.of(path.length(), intakes);
      return new SewnPath(hers(), reversed ? edge.reversed() : edge);
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

  /** How what lies at a point, as drafted, has moved. */
  public Motion motionAt(Point drafted) {
    Motion motion = Motion.identity();
    for (MovedPart part : moved) {
      if (part.holds(drafted)) {
        motion = part.motion().then(motion);
      }
    }
    return motion;
  }
}
