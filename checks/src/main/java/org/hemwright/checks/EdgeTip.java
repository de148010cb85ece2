package org.hemwright.checks;

import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * One end of an edge of a cut copy, where it meets another edge at a corner.
 *
 * @param piece as drawn
 * @param copy the cut copy's name
 * @param half of a piece on the fold
 * @param edge its index round the piece
 * @param last whether it is the end that comes last counter-clockwise round the drawing
 */
record EdgeTip(Piece piece, String copy, EdgePlace.Half half, int edge, boolean last) {
  /** Where a layer starts or ends, if that is at a corner of a piece. */
  static Optional<EdgeTip> of(Seam.Layer layer, boolean start, SizedPattern sized) {
    return of(layer.run().get(start ? 0 : layer.run().size() - 1), start, sized);
  }

  /** Where a place starts or ends as it is sewn, if that is at a corner. */
  static Optional<EdgeTip> of(EdgePlace place, boolean start, SizedPattern sized) {
    boolean atDrawnStart = start != place.reversed();
    if ((atDrawnStart ? place.from() : place.to()).isPresent()) {
      return Optional.empty();
    }
    return sized
        .piece(place.piece())
        .flatMap(
            piece ->
                piece
                    .edge(place.edge())
                    .map(
                        edge ->
                            new EdgeTip(
                                piece,
                                place.copy(),
                                place.half(),
                                piece.edges().indexOf(edge),
                                atDrawnStart == edge.reversed())));
  }

  /** The tip of the edge that meets this one here, on the same half of the same copy. */
  EdgeTip beside() {
    int count = piece.edges().size();
    return new EdgeTip(piece, copy, half, (edge + (last ? 1 : count - 1)) % count, !last);
  }

  Edge drawn() {
    return piece.edges().get(edge);
  }

  Point point() {
    return last ? drawn().path().end() : drawn().path().start();
  }

  /** {@code front.side}. */
  String text() {
    return piece.name() + "." + drawn().name();
  }

  /** The angle inside the piece between this edge and the one beside it (radians, 0 to 2π). */
  double interior() {
    Edge before = last ? drawn() : beside().drawn();
    Edge after = last ? beside().drawn() : drawn();
    return Math.PI - before.path().endDirection().angleTo(after.path().startDirection());
  }

  /** Whether two tips are the same end of the same cut edge. */
  boolean isAt(EdgeTip other) {
    return edge == other.edge
        && piece.name().equals(other.piece.name())
        && copy.equals(other.copy)
        && half == other.half
        && last == other.last;
  }
}
