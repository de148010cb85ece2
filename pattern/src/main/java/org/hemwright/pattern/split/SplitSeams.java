package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.NotchPlace;
import org.hemwright.pattern.seam.Seam;

/** Seams of a size in which one piece is cut apart: they run along the parts in its place. */
record SplitSeams(PieceParts parts) {
  /** A seam along the parts. */
  Seam along(Seam seam) {
    return new Seam(
        seam.name(),
        seam.joins().stream()
            .map(join -> new Seam.Join(join.layers().stream().map(this::layer).toList()))
            .toList(),
        seam.ease(),
        seam.even(),
        seam.origin());
  }

  private Seam.Layer layer(Seam.Layer layer) {
    return new Seam.Layer(layer.run().stream().flatMap(place -> along(place).stream()).toList());
  }

  /** The stretches of parts in the place of a stretch of the whole piece, in the same order. */
  private List<EdgePlace> along(EdgePlace place) {
    Piece whole = parts.whole();
    if (!place.piece().equals(whole.name())) {
      return List.of(place);
    }
    Optional<Edge> edge = whole.edge(place.edge());
    Optional<Path> path = edge.map(Edge::path).or(() -> line(whole, place.edge()));
    if (path.isEmpty()) {
      return List.of();
    }
    double length = path.get().length();
    boolean against = edge.filter(Edge::reversed).isPresent();
    OptionalDouble from = notch(edge, place.from());
    OptionalDouble to = notch(edge, place.to());
    double start = against ? length - from.orElse(0) : from.orElse(0);
    double end = against ? length - to.orElse(length) : to.orElse(length);
    double low = Math.min(start, end);
    double high = Math.max(start, end);
    List<PieceParts.Stretch> run =
        new ArrayList<>(
            parts.stretches().stream()
                .filter(stretch -> stretch.edge().equals(place.edge()))
                .filter(
                    stretch ->
                        Math.min(high, stretch.to()) - Math.max(low, stretch.from())
                            > Tolerance.DRAWN_LENGTH)
                .toList());
    boolean back = against != place.reversed();
    Comparator<PieceParts.Stretch> order = Comparator.comparingDouble(PieceParts.Stretch::from);
    run.sort(back ? order.reversed() : order);
    List<EdgePlace> places = new ArrayList<>();
    for (PieceParts.Stretch stretch : run) {
      places.add(
          new EdgePlace(
              parts.parts().get(stretch.part()).name(),
              parts.copy(stretch.part(), place.copy(), place.half()),
              parts.half(stretch.part(), place.half()),
              stretch.name(),
              place.from().filter(name -> isWithin(stretch, start)),
              place.to().filter(name -> isWithin(stretch, end)),
              place.reversed()));
    }
    return places;
  }

  private static Optional<Path> line(Piece piece, String name) {
    return piece.marks(Mark.Placement.class).stream()
        .filter(line -> line.name().equals(name))
        .map(Mark.Placement::path)
        .findFirst();
  }

  private OptionalDouble notch(Optional<Edge> edge, Optional<String> name) {
    return edge.isPresent() && name.isPresent()
        ? NotchPlace.along(parts.whole(), edge.get(), name.get())
        : OptionalDouble.empty();
  }

  private static boolean isWithin(PieceParts.Stretch stretch, double at) {
    return at > stretch.from() + Tolerance.DRAWN_LENGTH
        && at < stretch.to() - Tolerance.DRAWN_LENGTH;
  }

  /** The seams that join the parts again. */
  List<Seam> joining() {
    List<Seam> seams = new ArrayList<>();
    boolean half = parts.whole().foldEdge().isPresent();
    for (PieceParts.Join join : parts.joins()) {
      List<Seam.Join> passes = new ArrayList<>();
      for (Copy copy : parts.whole().card().copies()) {
        if (join.first() == join.second()) {
          passes.add(
              pass(
                  place(join, join.first(), copy, EdgePlace.Half.DRAWN),
                  place(join, join.first(), copy, EdgePlace.Half.MIRRORED)));
        } else if (half) {
          for (EdgePlace.Half side : List.of(EdgePlace.Half.DRAWN, EdgePlace.Half.MIRRORED)) {
            passes.add(
                pass(
                    place(join, join.first(), copy, side), place(join, join.second(), copy, side)));
          }
        } else {
          passes.add(
              pass(
                  place(join, join.first(), copy, EdgePlace.Half.WHOLE),
                  place(join, join.second(), copy, EdgePlace.Half.WHOLE)));
        }
      }
      if (!passes.isEmpty()) {
        seams.add(new Seam(join.seam(), passes, Seam.Ease.NONE, parts.split().origin()));
      }
    }
    return seams;
  }

  private static Seam.Join pass(EdgePlace first, EdgePlace second) {
    return new Seam.Join(List.of(new Seam.Layer(List.of(first)), new Seam.Layer(List.of(second))));
  }

  private EdgePlace place(PieceParts.Join join, int part, Copy copy, EdgePlace.Half half) {
    return new EdgePlace(
        parts.parts().get(part).name(),
        parts.copy(part, copy.name(), half),
        parts.half(part, half),
        join.seam(),
        Optional.empty(),
        Optional.empty(),
        false);
  }
}
