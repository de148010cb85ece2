package org.hemwright.checks.fault;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Edges, corners and allowances gone wrong in one size. */
final class EdgeFaults {
  /** How much longer an edge becomes (mm). */
  private static final double LONGER = 4;

  private EdgeFaults() {}

  /** One edge of one piece in one size. */
  private record At(Garment garment, SizedPattern sized, Piece piece, int index) {
    Edge edge() {
      return piece.edges().get(index);
    }

    String name() {
      return piece.name() + "." + edge().name();
    }

    Set<String> subjects() {
      return Garment.subjects(sized, piece.name(), edge().name());
    }

    Planted planted(Piece changed, String check) {
      return garment.planted(name(), Reworked.size(sized, changed), check, subjects());
    }
  }

  private static Stream<At> everywhere(Garment garment) {
    return garment.threeSizes().stream()
        .flatMap(
            sized ->
                sized.pieces().stream()
                    .flatMap(
                        piece ->
                            IntStream.range(0, piece.edges().size())
                                .mapToObj(i -> new At(garment, sized, piece, i))));
  }

  /** Whether a seam holds an edge to others of its own length. */
  private static boolean isHeld(At at) {
    return Garment.seamsOf(at.sized, at.piece.name(), at.edge().name()).stream()
        .filter(seam -> seam.ease().least() == seam.ease().most())
        .flatMap(seam -> seam.joins().stream())
        .anyMatch(join -> isSewnToAnother(at, join) && !goesOnRound(at, join));
  }

  /** Whether the layer takes the next edge of the piece too, which shortens as this one grows. */
  private static boolean goesOnRound(At at, Seam.Join join) {
    String next = at.piece.edges().get((at.index + 1) % at.piece.edges().size()).name();
    return join.layers().stream()
        .anyMatch(
            layer ->
                layer.run().stream()
                        .filter(place -> place.piece().equals(at.piece.name()))
                        .filter(p -> p.edge().equals(at.edge().name()) || p.edge().equals(next))
                        .map(EdgePlace::edge)
                        .distinct()
                        .count()
                    == 2);
  }

  private static boolean isSewnToAnother(At at, Seam.Join join) {
    long layers =
        join.layers().stream()
            .filter(
                layer ->
                    layer.run().stream()
                        .anyMatch(
                            place ->
                                place.piece().equals(at.piece.name())
                                    && place.edge().equals(at.edge().name())))
            .count();
    return layers == 1;
  }

  /** The end of an edge carried on by 4 mm in its own direction. */
  private static Piece longer(At at) {
    Vector on = at.edge().path().endDirection().times(LONGER);
    return Reworked.cornerMoved(at.piece, (at.index + 1) % at.piece.edges().size(), on);
  }

  static final Fault SEWN_EDGE_LONGER =
      Fault.inOneSize(
          "an edge 4 mm longer, sewn to another",
          garment ->
              everywhere(garment)
                  .filter(EdgeFaults::isHeld)
                  .map(at -> at.planted(longer(at), "seam-length")));

  static final Fault FREE_EDGE_LONGER =
      Fault.besideOthers(
          "an edge 4 mm longer that no seam holds to a length",
          garment ->
              everywhere(garment)
                  .filter(at -> !isHeld(at))
                  .map(at -> at.planted(longer(at), "grade-even")));

  static final Fault CORNER_MOVED =
      Fault.besideOthers(
          "a corner moved by 4 mm",
          garment ->
              everywhere(garment)
                  .map(
                      at -> {
                        Vector out = at.edge().path().startDirection().turned(2.5).times(LONGER);
                        return at.planted(
                            Reworked.cornerMoved(at.piece, at.index, out), "grade-even");
                      }));

  static final Fault CURVE_BULGED =
      Fault.besideOthers(
          "a curve bulged by 4 mm at its middle, its ends kept",
          garment ->
              everywhere(garment)
                  .filter(at -> at.edge().path().length() > 60 && !at.edge().onFold())
                  .map(at -> at.planted(bulged(at), "grade-even")));

  private static Piece bulged(At at) {
    Path path = at.edge().path();
    Point middle = path.at(path.length() / 2).point();
    Vector by = path.at(path.length() / 2).left().times(LONGER);
    List<Path> halves = path.splitAt(path.length() / 2);
    Path first = Reworked.bent(halves.get(0), Vector.ZERO, by);
    Path second = Reworked.bent(halves.get(1), by, Vector.ZERO);
    if (!first.end().isAt(middle.plus(by))) {
      throw new AssertionError("the middle moves");
    }
    return Reworked.edge(at.piece, Reworked.path(at.edge(), first.then(second)));
  }

  static final Fault ALLOWANCE_ON_ONE_SIDE =
      Fault.inOneSize(
          "an allowance 4 mm wider on one side of a seam",
          garment ->
              everywhere(garment)
                  .filter(at -> at.edge().allowance() instanceof Allowance.Plain)
                  .filter(
                      at ->
                          Garment.seamsOf(at.sized, at.piece.name(), at.edge().name()).stream()
                              .filter(seam -> EdgeFaults.allEdges(at.sized, seam))
                              .flatMap(seam -> seam.joins().stream())
                              .anyMatch(join -> isSewnToAnother(at, join)))
                  .map(
                      at -> {
                        double width = at.edge().allowance().width() + 4;
                        Edge wider = Reworked.allowance(at.edge(), new Allowance.Plain(width));
                        return at.planted(Reworked.edge(at.piece, wider), "allowance-equal");
                      }));

  /** Whether a seam takes edges only, and no placement line. */
  static boolean allEdges(SizedPattern sized, Seam seam) {
    return Garment.places(seam)
        .allMatch(
            place ->
                sized.piece(place.piece()).flatMap(piece -> piece.edge(place.edge())).isPresent());
  }

  static final Fault NOT_SQUARE_AT_FOLD =
      Fault.inOneSize(
          "an edge that leaves the fold out of square",
          garment ->
              everywhere(garment)
                  .filter(at -> at.edge().onFold())
                  .flatMap(
                      at ->
                          Stream.of(0, 1)
                              .map(
                                  end -> {
                                    int count = at.piece.edges().size();
                                    int corner = (at.index + end) % count;
                                    int beside = (at.index + (end == 0 ? count - 1 : 1)) % count;
                                    At edge = new At(garment, at.sized, at.piece, beside);
                                    double out =
                                        0.1 * edge.edge().path().length() * (end == 0 ? 1 : -1);
                                    Vector along = at.edge().path().startDirection().times(out);
                                    return edge.planted(
                                        Reworked.cornerMoved(at.piece, corner, along),
                                        "square-at-fold");
                                  })));
}
