package org.hemwright.checks;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Edges that close to a loop when the pieces are sewn. */
final class SewnLoop {
  private SewnLoop() {}

  /**
   * Whether a layer is one whole edge whose ends are sewn to each other, as those of a band, a cuff
   * and a sleeve cap are.
   */
  static boolean isOneEdge(Seam.Layer layer, SizedPattern sized) {
    EdgePlace place = layer.run().get(0);
    return layer.run().size() == 1
        && place.from().isEmpty()
        && place.to().isEmpty()
        && place.half() == EdgePlace.Half.WHOLE
        && sized.piece(place.piece()).filter(p -> closes(p, place, sized)).isPresent();
  }

  private static boolean closes(Piece piece, EdgePlace place, SizedPattern sized) {
    Optional<Edge> edge = piece.edge(place.edge());
    if (edge.isEmpty()) {
      return false;
    }
    int count = piece.edges().size();
    int index = piece.edges().indexOf(edge.get());
    String before = piece.edges().get((index + count - 1) % count).name();
    String after = piece.edges().get((index + 1) % count).name();
    return sized.seams().stream()
        .flatMap(seam -> seam.joins().stream())
        .anyMatch(join -> takes(join, place, before) && takes(join, place, after));
  }

  private static boolean takes(Seam.Join join, EdgePlace of, String edge) {
    return join.layers().stream()
        .map(Seam.Layer::run)
        .filter(run -> run.size() == 1)
        .map(run -> run.get(0))
        .anyMatch(
            place ->
                place.piece().equals(of.piece())
                    && place.copy().equals(of.copy())
                    && place.edge().equals(edge));
  }

  /** The edges of all layers of all joins that a seam takes on a piece. */
  static List<EdgePlace> places(Seam seam) {
    return seam.joins().stream()
        .flatMap(join -> join.layers().stream())
        .flatMap(layer -> layer.run().stream())
        .toList();
  }
}
