package org.hemwright.pattern.measure;

import java.util.Optional;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * A level on a piece that flares, such as the sector of a circle skirt: it runs square to both
 * sides, as far below the top edge on the one as on the other, and not straight across the drawing.
 * Exact for sectors of a circle.
 *
 * @param side the edge on which the level stands
 * @param other the edge at its other end, a fold or the other side
 * @param length from side to side (mm)
 */
record FlaredLevel(Edge side, Edge other, double length) {
  /** A side that leans more than this from the upright flares. */
  private static final double LEANS = Math.toRadians(20);

  /** The level that stands at a point on a side that flares; absent where it does not. */
  static Optional<FlaredLevel> of(Piece piece, Point at) {
    for (int i = 0; i < piece.edges().size(); i++) {
      Edge edge = piece.edges().get(i);
      PathPlace place = edge.path().nearest(at);
      boolean leans = Math.abs(place.tangent().dx()) > StrictMath.sin(LEANS);
      boolean inside =
          place.distance() > Tolerance.DRAWN_LENGTH
              && place.distance() < edge.path().length() - Tolerance.DRAWN_LENGTH;
      if (place.point().distanceTo(at) <= Tolerance.DRAWN_LENGTH
          && inside
          && leans
          && !edge.onFold()
          && piece.edges().size() > 2) {
        return across(piece, i, place);
      }
    }
    return Optional.empty();
  }

  private static Optional<FlaredLevel> across(Piece piece, int index, PathPlace place) {
    int count = piece.edges().size();
    Edge side = piece.edges().get(index);
    boolean topAtStart = side.path().start().y() > side.path().end().y();
    int step = topAtStart ? count - 1 : 1;
    Edge other = piece.edges().get((index + 2 * step) % count);
    double below = topAtStart ? place.distance() : side.path().length() - place.distance();
    if (below > other.path().length() || other.name().equals(side.name())) {
      return Optional.empty();
    }
    double along = topAtStart ? other.path().length() - below : below;
    PathPlace there = other.path().at(along);
    Vector down = topAtStart ? place.tangent() : place.tangent().negated();
    Vector downThere = topAtStart ? there.tangent().negated() : there.tangent();
    double turn = Math.abs(down.angleTo(downThere));
    double chord = there.point().distanceTo(place.point());
    double length =
        turn > Tolerance.SAME_DIRECTION ? chord * (turn / 2) / StrictMath.sin(turn / 2) : chord;
    return Optional.of(new FlaredLevel(side, other, length));
  }
}
