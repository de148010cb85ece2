package org.hemwright.checks;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.Symmetry;

/** Every cut copy and half of one size as the seams bring them together. */
final class CutHalves {
  private final SizedPattern sized;

  /** Which tips each join brings to which. */
  private final Map<String, List<EdgeTip>> together = new LinkedHashMap<>();

  CutHalves(SizedPattern sized) {
    this.sized = sized;
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (boolean start : new boolean[] {true, false}) {
          List<EdgeTip> tips =
              join.layers().stream()
                  .flatMap(layer -> EdgeTip.of(layer, start, sized).stream())
                  .toList();
          for (EdgeTip tip : tips) {
            together.computeIfAbsent(key(tip), k -> new ArrayList<>()).addAll(tips);
          }
        }
      }
    }
  }

  SizedPattern sized() {
    return sized;
  }

  private static String key(EdgeTip tip) {
    return String.join(
        "\n",
        tip.piece().name(),
        tip.copy(),
        tip.half().name(),
        tip.drawn().name(),
        Boolean.toString(tip.last()));
  }

  /** Whether a place names an edge or a placement line of a copy and half that is cut. */
  boolean has(EdgePlace place) {
    return sized
        .piece(place.piece())
        .filter(piece -> copy(piece, place).isPresent())
        .filter(piece -> (place.half() == EdgePlace.Half.WHOLE) == piece.foldEdge().isEmpty())
        .filter(piece -> path(piece, place).isPresent())
        .isPresent();
  }

  private static Optional<Copy> copy(Piece piece, EdgePlace place) {
    List<Copy> copies = piece.card().copies();
    return copies.isEmpty()
        ? Optional.of(new Copy("1", false))
        : copies.stream().filter(copy -> copy.name().equals(place.copy())).findFirst();
  }

  private static Optional<Path> path(Piece piece, EdgePlace place) {
    return piece
        .edge(place.edge())
        .map(Edge::path)
        .or(
            () ->
                piece.marks(Mark.Placement.class).stream()
                    .filter(line -> line.name().equals(place.edge()))
                    .map(Mark.Placement::path)
                    .findFirst());
  }

  /** The middle of the edge or line. */
  Optional<Point> middle(EdgePlace place) {
    return sized
        .piece(place.piece())
        .flatMap(piece -> path(piece, place))
        .map(path -> path.at(path.length() / 2).point());
  }

  /** Whether it is the mirror image of the drawing, face up. */
  boolean isMirrored(EdgePlace place) {
    boolean copy =
        sized
            .piece(place.piece())
            .flatMap(piece -> copy(piece, place))
            .filter(Copy::mirrored)
            .isPresent();
    return copy != (place.half() == EdgePlace.Half.MIRRORED);
  }

  /** Whether the piece is its own mirror image, so that a left is as good as a right. */
  boolean isOwnMirror(EdgePlace place) {
    return sized.piece(place.piece()).filter(Symmetry::isOwnMirror).isPresent();
  }

  /**
   * +1 where a layer runs counter-clockwise round its pieces seen face up, −1 where clockwise, 0 on
   * a placement line.
   */
  int hand(Seam.Layer layer) {
    EdgePlace place = layer.run().get(0);
    Optional<Edge> edge = sized.piece(place.piece()).flatMap(piece -> piece.edge(place.edge()));
    return edge.map(
            found -> {
              boolean drawn = found.reversed() == isMirrored(place);
              return drawn != place.reversed() ? 1 : -1;
            })
        .orElse(0);
  }

  /** Whether the start of a place is met by who walks round the corner from the end of another. */
  boolean goesOn(EdgePlace before, EdgePlace after) {
    EdgeTip wanted = EdgeTip.of(after, true, sized).orElseThrow();
    Deque<EdgeTip> open = new ArrayDeque<>(List.of(EdgeTip.of(before, false, sized).orElseThrow()));
    Set<String> seen = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      EdgeTip beside = open.remove().beside();
      if (beside.isAt(wanted)) {
        return true;
      }
      if (seen.add(key(beside))) {
        if (beside.drawn().onFold()) {
          open.add(otherHalf(beside));
        } else {
          open.addAll(together.getOrDefault(key(beside), List.of()));
        }
      }
    }
    return false;
  }

  private static EdgeTip otherHalf(EdgeTip tip) {
    EdgePlace.Half half =
        tip.half() == EdgePlace.Half.DRAWN ? EdgePlace.Half.MIRRORED : EdgePlace.Half.DRAWN;
    return new EdgeTip(tip.piece(), tip.copy(), half, tip.edge(), tip.last());
  }
}
