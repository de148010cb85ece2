package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Edges that do not run on smoothly across a seam, in one size. */
final class JunctionFaults {
  private static final double TURN = Math.toRadians(6);

  private JunctionFaults() {}

  static final Fault NOT_SMOOTH =
      Fault.inOneSize(
          "an edge turned by 6° where it runs on across a seam",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.seams().stream()
                              .filter(seam -> EdgeFaults.allEdges(sized, seam))
                              .flatMap(seam -> atEnds(garment, sized, seam))));

  private static Stream<Planted> atEnds(Garment garment, SizedPattern sized, Seam seam) {
    List<Planted> planted = new ArrayList<>();
    List<Seam.Layer> layers = seam.joins().get(0).layers();
    for (boolean start : new boolean[] {true, false}) {
      Optional<Corner> first = Corner.of(layers.get(0), start, sized);
      Optional<Corner> second = Corner.of(layers.get(1), start, sized);
      if (first.isPresent()
          && second.isPresent()
          && runsOn(sized, first.get().beside(), second.get().beside())) {
        Corner corner = first.get();
        Edge turned = Reworked.turnedAtEnd(corner.beside().edge(), corner.besideEnds(), TURN);
        planted.add(
            garment.planted(
                "seam " + seam.name() + (start ? " start" : " end"),
                Reworked.size(sized, Reworked.edge(corner.piece(), turned)),
                "junction",
                Set.of("seam " + seam.name())));
      }
    }
    return planted.stream();
  }

  /** One edge of a piece. */
  private record Side(Piece piece, Edge edge) {
    String name() {
      return piece.name() + "." + edge.name();
    }
  }

  /** Where a layer starts or ends, with the edge beside it there. */
  private record Corner(Piece piece, int edge, boolean last) {
    static Optional<Corner> of(Seam.Layer layer, boolean start, SizedPattern sized) {
      EdgePlace place = layer.run().get(start ? 0 : layer.run().size() - 1);
      Piece piece = sized.piece(place.piece()).orElseThrow();
      Edge edge = piece.edge(place.edge()).orElseThrow();
      boolean atDrawnStart = start != place.reversed();
      return place.from().isPresent() || place.to().isPresent()
          ? Optional.empty()
          : Optional.of(
              new Corner(piece, piece.edges().indexOf(edge), atDrawnStart == edge.reversed()));
    }

    Side beside() {
      int count = piece.edges().size();
      return new Side(piece, piece.edges().get((edge + (last ? 1 : count - 1)) % count));
    }

    /** Whether the edge beside ends at this corner; else it begins there. */
    boolean besideEnds() {
      return !last;
    }
  }

  /** Whether both are left free, or follow each other in a layer, and neither is a fold. */
  private static boolean runsOn(SizedPattern sized, Side one, Side other) {
    if (one.edge().onFold() || other.edge().onFold() || one.name().equals(other.name())) {
      return false;
    }
    boolean oneSewn = !Garment.seamsOf(sized, one.piece().name(), one.edge().name()).isEmpty();
    boolean otherSewn =
        !Garment.seamsOf(sized, other.piece().name(), other.edge().name()).isEmpty();
    if (!oneSewn && !otherSewn) {
      return true;
    }
    return sized.seams().stream()
        .flatMap(seam -> seam.joins().stream())
        .flatMap(join -> join.layers().stream())
        .map(
            layer -> layer.run().stream().map(place -> place.piece() + "." + place.edge()).toList())
        .anyMatch(
            run -> {
              for (int i = 1; i < run.size(); i++) {
                if (new HashSet<>(List.of(run.get(i - 1), run.get(i)))
                    .equals(Set.of(one.name(), other.name()))) {
                  return true;
                }
              }
              return false;
            });
  }
}
