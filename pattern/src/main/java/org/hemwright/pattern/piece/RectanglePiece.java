package org.hemwright.pattern.piece;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * A plain rectangle, which a maker can cut by its measurements from a table. Its stitch line and
 * its cut line are both rectangles, once it is opened over its fold.
 *
 * @param name the piece's name
 * @param width at the cut line, along the piece's first edge that is no fold (mm)
 * @param height at the cut line, square to that (mm)
 * @param grain the angle from the width to the grain (radians, from 0 and below π): 0 when the
 *     grain lies along the width, π/2 when it lies along the height; absent without a grain arrow
 */
public record RectanglePiece(String name, double width, double height, OptionalDouble grain) {
  /** The rectangle that a piece is, if it is one. */
  public static Optional<RectanglePiece> of(Piece piece, CutLine cutLine) {
    OpenedPiece opened = OpenedPiece.of(piece);
    Vector along = opened.edges().get(0).edge().path().startDirection();
    Motion level = Motion.turn(Point.ORIGIN, -along.angle());
    Outline cut = opened.cutLine(cutLine).outline().moved(level);
    if (!isUpright(cut) || !isUpright(opened.stitchLine().moved(level))) {
      return Optional.empty();
    }
    Box box = cut.bounds();
    return Optional.of(
        new RectanglePiece(piece.name(), box.width(), box.height(), grain(piece, along)));
  }

  /** An outline that fills the smallest upright box round it is that box. */
  private static boolean isUpright(Outline outline) {
    Box box = outline.bounds();
    double gap = box.width() * box.height() - outline.signedArea();
    return Math.abs(gap) <= 2 * (box.width() + box.height()) * Tolerance.SAME_POINT;
  }

  private static OptionalDouble grain(Piece piece, Vector along) {
    if (piece.grain().isEmpty()) {
      return OptionalDouble.empty();
    }
    double turn = along.angleTo(piece.grain().get().direction());
    double upward = turn < -Tolerance.SAME_DIRECTION ? turn + Math.PI : Math.max(0, turn);
    boolean straight = upward >= Math.PI - Tolerance.SAME_DIRECTION;
    return OptionalDouble.of(straight ? 0 : upward);
  }
}
