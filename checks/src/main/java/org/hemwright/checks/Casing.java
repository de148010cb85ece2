package org.hemwright.checks;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * The tunnel that holds an elastic: a band folded so that two of its edges meet, or an edge turned
 * back.
 *
 * @param edge along which it runs
 * @param depth from fold to stitching (mm)
 */
record Casing(Edge edge, double depth) {
  /**
   * A piece's casing; absent where the piece has no edge that tells.
   *
   * @param named the edge along which it runs, where the document names it
   */
  static Optional<Casing> of(Piece piece, Optional<String> named, SizedPattern sized) {
    Optional<Edge> own = named.flatMap(piece::edge);
    if (own.isPresent() && own.get().allowance() instanceof Allowance.TurnedBack hem) {
      return Optional.of(new Casing(own.get(), hem.folds().get(0)));
    }
    for (Seam seam : sized.seams()) {
      List<Seam.Layer> layers = seam.joins().get(0).layers();
      if (layers.size() == 2
          && layers.get(0).run().size() == 1
          && layers.get(1).run().size() == 1) {
        EdgePlace first = layers.get(0).run().get(0);
        EdgePlace second = layers.get(1).run().get(0);
        Optional<Edge> edge = piece.edge(first.edge());
        Optional<Edge> other = piece.edge(second.edge());
        if (first.piece().equals(piece.name())
            && second.piece().equals(piece.name())
            && first.copy().equals(second.copy())
            && edge.isPresent()
            && other.isPresent()
            && areOpposite(piece, edge.get(), other.get())
            && edge.get().path().length() >= across(edge.get(), other.get())) {
          return Optional.of(new Casing(edge.get(), across(edge.get(), other.get()) / 2));
        }
      }
    }
    List<Edge> turned =
        piece.edges().stream()
            .filter(edge -> edge.allowance() instanceof Allowance.TurnedBack)
            .toList();
    return turned.stream()
        .filter(edge -> turned.size() == 1 || piece.openings().contains(edge.name()))
        .findFirst()
        .map(edge -> new Casing(edge, ((Allowance.TurnedBack) edge.allowance()).folds().get(0)));
  }

  private static boolean areOpposite(Piece piece, Edge edge, Edge other) {
    int count = piece.edges().size();
    int apart = Math.abs(piece.edges().indexOf(edge) - piece.edges().indexOf(other));
    return apart > 1 && apart < count - 1;
  }

  private static double across(Edge edge, Edge other) {
    Point middle = edge.path().at(edge.path().length() / 2).point();
    return other.path().nearest(middle).point().distanceTo(middle);
  }

  /** The middle of its edge. */
  Point point() {
    return edge.path().at(edge.path().length() / 2).point();
  }
}
