package org.hemwright.pattern.compare;

import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.piece.Edge;

/** New edges where they lie on the old piece. */
final class Onto {
  private Onto() {}

  /** An edge's path, counter-clockwise round the old piece also where the motion mirrors. */
  static Path path(Edge edge, Motion onto) {
    Path moved = edge.path().moved(onto);
    return onto.isMirror() ? moved.reversed() : moved;
  }
}
