package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.SewnEdge;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.NotchPlace;
import org.hemwright.pattern.seam.Seam;

/**
 * A stretch of an edge on its way through a layer of a seam.
 *
 * @param place of the layer
 * @param piece that it lies on
 * @param edge of that piece
 * @param from where it starts (mm from the layer's start)
 * @param to where it ends
 */
record SewnStretch(EdgePlace place, Piece piece, Edge edge, double from, double to) {
  /** A layer's stretches end to end; nothing for a layer that takes a placement line. */
  static List<SewnStretch> of(Seam.Layer layer, SizedPattern sized) {
    List<SewnStretch> stretches = new ArrayList<>();
    double walked = 0;
    for (EdgePlace place : layer.run()) {
      Optional<Piece> piece = sized.piece(place.piece());
      Optional<Edge> edge = piece.flatMap(found -> found.edge(place.edge()));
      if (piece.isEmpty() || edge.isEmpty()) {
        return List.of();
      }
      double length = length(place, piece.get(), edge.get());
      stretches.add(new SewnStretch(place, piece.get(), edge.get(), walked, walked + length));
      walked += length;
    }
    return stretches;
  }

  private static double length(EdgePlace place, Piece piece, Edge edge) {
    double whole = edge.path().length();
    double from =
        place.from().map(name -> NotchPlace.along(piece, edge, name).orElse(0)).orElse(0.0);
    double to =
        place.to().map(name -> NotchPlace.along(piece, edge, name).orElse(whole)).orElse(whole);
    SewnEdge sewn = edge.reversed() ? piece.sewn(edge).reversed() : piece.sewn(edge);
    return sewn.sewnAt(to) - sewn.sewnAt(from);
  }

  /** {@code front.side}. */
  String text() {
    return piece.name() + "." + edge.name();
  }

  double length() {
    return to - from;
  }
}
