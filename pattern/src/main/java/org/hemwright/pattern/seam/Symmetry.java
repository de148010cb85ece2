package org.hemwright.pattern.seam;

import java.util.List;
import java.util.stream.IntStream;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** Whether a piece is its own mirror image, so that its copies need not be cut mirrored. */
public final class Symmetry {

  private Symmetry() {}

  /** Whether the piece is its own mirror image over the line that halves one of its edges. */
  public static boolean isOwnMirror(Piece piece) {
    return IntStream.range(0, piece.edges().size()).anyMatch(edge -> about(piece, edge));
  }

  /** Whether the piece is its own mirror image over the line square to the middle of an edge. */
  static boolean about(Piece piece, int edge) {
    List<Edge> edges = piece.edges();
    Point start = edges.get(edge).path().start();
    Point end = edges.get(edge).path().end();
    if (start.distanceTo(end) < Tolerance.DRAWN_LENGTH) {
      return false;
    }
    Point middle = start.toward(end, 0.5);
    Vector across = end.minus(start).left();
    Motion mirror = Motion.mirror(middle, middle.plus(across));
    int count = edges.size();
    for (int i = 0; i < count; i++) {
      Path one = edges.get((edge + i) % count).path();
      Path other = edges.get(Math.floorMod(edge - i, count)).path();
      if (Math.abs(one.length() - other.length()) > Tolerance.DRAWN_LENGTH
          || !mirrored(one, other, mirror)) {
        return false;
      }
    }
    return true;
  }

  private static boolean mirrored(Path one, Path other, Motion mirror) {
    for (int k = 0; k <= 4; k++) {
      Point here = one.at(one.length() * k / 4).point();
      Point there = other.at(other.length() * (4 - k) / 4).point();
      if (mirror.apply(here).distanceTo(there) > Tolerance.DRAWN_LENGTH) {
        return false;
      }
    }
    return true;
  }
}
