package org.hemwright.workbench.page;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * Carries a place from the size in which something was found to the size that is drawn: along an
 * edge by its share of the edge, inside a piece by its share of the piece's width and height.
 */
final class PinPlace {
  /** A place this close to an edge is a place on it (mm). */
  private static final double ON_EDGE = 3;

  private PinPlace() {}

  /**
   * The place on the drawn piece.
   *
   * @param sizes in which it was found; any when empty
   * @param point on the piece in one of these sizes
   */
  static Point on(Piece drawn, String drawnSize, SizeRun run, List<String> sizes, Point point) {
    Optional<Piece> found = Optional.empty();
    double nearest = Double.MAX_VALUE;
    for (var sized : run.sizes()) {
      String size = sized.size().name();
      Optional<Piece> piece = sized.piece(drawn.name());
      if (piece.isPresent() && (sizes.isEmpty() || sizes.contains(size))) {
        double distance = piece.get().stitchLine().path().nearest(point).point().distanceTo(point);
        boolean same = size.equals(drawnSize) && distance <= nearest;
        if (same || distance < nearest) {
          nearest = distance;
          found = piece;
        }
      }
    }
    return found
        .map(piece -> carried(piece, drawn, point, nearestIsEdge(piece, point)))
        .orElse(point);
  }

  private static boolean nearestIsEdge(Piece piece, Point point) {
    return piece.stitchLine().path().nearest(point).point().distanceTo(point) <= ON_EDGE;
  }

  private static Point carried(Piece from, Piece to, Point point, boolean onEdge) {
    if (onEdge) {
      Edge edge = from.edges().get(0);
      PathPlace place = edge.path().nearest(point);
      for (Edge each : from.edges()) {
        PathPlace own = each.path().nearest(point);
        if (own.point().distanceTo(point) < place.point().distanceTo(point)) {
          edge = each;
          place = own;
        }
      }
      Optional<Edge> there = to.edge(edge.name());
      if (there.isPresent()) {
        double share = place.distance() / edge.path().length();
        return there.get().path().at(share * there.get().path().length()).point();
      }
    }
    Box was = from.stitchLine().bounds();
    Box is = to.stitchLine().bounds();
    return new Point(
        is.minX() + (point.x() - was.minX()) / was.width() * is.width(),
        is.minY() + (point.y() - was.minY()) / was.height() * is.height());
  }
}
