package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** Hems and the corners of allowances gone wrong in one size. */
final class CornerFaults {
  private CornerFaults() {}

  static final Fault HEM_CORNER_LOST =
      Fault.inOneSize(
          "the mirrored corner of a turned-back hem lost, its side let out by 40 mm or more",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .flatMap(piece -> withoutMirroredCorners(garment, sized, piece))));

  private static Stream<Planted> withoutMirroredCorners(
      Garment garment, SizedPattern sized, Piece piece) {
    return IntStream.range(0, piece.corners().size())
        .filter(i -> piece.corners().get(i).finish() instanceof CornerFinish.TurnedBack)
        .filter(i -> !piece.edges().get(i).onFold() && !before(piece, i).onFold())
        .mapToObj(
            i ->
                garment.planted(
                    piece.name() + " corner " + i,
                    Reworked.size(sized, plain(letOut(piece, i), i)),
                    "hem-flat",
                    Garment.subjects(sized, piece.name(), piece.corners().get(i).after())));
  }

  private static Edge before(Piece piece, int corner) {
    return piece.edges().get((corner + piece.edges().size() - 1) % piece.edges().size());
  }

  /** The corner moved along the hem. */
  private static Piece letOut(Piece piece, int corner) {
    boolean hemFirst = isHem(before(piece, corner));
    Vector out =
        hemFirst
            ? before(piece, corner).path().endDirection()
            : piece.edges().get(corner).path().startDirection().negated();
    Piece moved = Reworked.cornerMoved(piece, corner, out.times(40));
    Edge beside = hemFirst ? piece.edges().get(corner) : before(piece, corner);
    double far = 0.15 * beside.path().length();
    return far <= 40 ? moved : Reworked.cornerMoved(piece, corner, out.times(far));
  }

  private static Piece plain(Piece piece, int index) {
    List<Corner> corners = new ArrayList<>(piece.corners());
    Corner own = corners.get(index);
    corners.set(index, new Corner(own.before(), own.after(), own.point(), CornerFinish.USUAL));
    return Reworked.corners(piece, corners);
  }

  static final Fault HEM_DEEPER =
      Fault.inOneSize(
          "a hem 10 mm deeper on one of two pieces that it runs across",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .filter(piece -> runsOnToAnother(sized, piece))
                              .flatMap(
                                  piece ->
                                      piece.edges().stream()
                                          .filter(CornerFaults::isHem)
                                          .filter(edge -> runsOn(sized, piece, edge))
                                          .map(
                                              edge ->
                                                  garment.planted(
                                                      piece.name() + "." + edge.name(),
                                                      Reworked.size(sized, deeper(piece, edge)),
                                                      "allowance-ends",
                                                      Garment.subjects(
                                                          sized, piece.name(), edge.name()))))));

  static final Fault HEM_ASTRAY =
      Fault.besideOthers(
          "a hem 10 mm deeper than in the other sizes",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .flatMap(
                                  piece ->
                                      piece.edges().stream()
                                          .filter(CornerFaults::isHem)
                                          .filter(edge -> runsOn(sized, piece, edge))
                                          .map(
                                              edge ->
                                                  garment.planted(
                                                      piece.name() + "." + edge.name(),
                                                      Reworked.size(sized, deeper(piece, edge)),
                                                      "grade-even",
                                                      Garment.subjects(
                                                          sized, piece.name(), edge.name()))))));

  private static boolean isHem(Edge edge) {
    return edge.allowance() instanceof Allowance.TurnedBack;
  }

  /** Whether an edge beside a hem is sewn to an edge of another piece that has a hem too. */
  /** Whether a seam begins beside a hem and beside another piece's hem. */
  private static boolean runsOn(SizedPattern sized, Piece piece, Edge hem) {
    int count = piece.edges().size();
    int index = piece.edges().indexOf(hem);
    List<String> beside =
        List.of(
            piece.edges().get((index + 1) % count).name(),
            piece.edges().get((index + count - 1) % count).name());
    return sized.seams().stream()
        .flatMap(seam -> seam.joins().stream())
        .filter(join -> join.layers().stream().allMatch(layer -> layer.run().size() == 1))
        .map(join -> join.layers().stream().map(layer -> layer.run().get(0)).toList())
        .filter(
            places ->
                places.stream()
                    .anyMatch(p -> p.piece().equals(piece.name()) && beside.contains(p.edge())))
        .anyMatch(
            places ->
                places.stream()
                    .filter(p -> !p.piece().equals(piece.name()))
                    .anyMatch(
                        p ->
                            isBesideHem(
                                sized.piece(p.piece()).orElseThrow(), p.piece(), p.edge())));
  }

  private static boolean runsOnToAnother(SizedPattern sized, Piece piece) {
    return sized.pieces().stream()
        .filter(other -> !other.name().equals(piece.name()))
        .filter(other -> other.edges().stream().anyMatch(CornerFaults::isHem))
        .anyMatch(
            other ->
                sized.seams().stream()
                    .map(seam -> seam.joins().get(0))
                    .anyMatch(
                        join ->
                            join.layers().stream()
                                        .map(layer -> layer.run().get(0).piece())
                                        .distinct()
                                        .count()
                                    == 2
                                && join.layers().stream()
                                    .allMatch(
                                        layer ->
                                            layer.run().size() == 1
                                                && isBesideHem(
                                                    layer.run().get(0).piece().equals(piece.name())
                                                        ? piece
                                                        : other,
                                                    layer.run().get(0).piece(),
                                                    layer.run().get(0).edge()))));
  }

  private static boolean isBesideHem(Piece piece, String name, String edge) {
    int count = piece.edges().size();
    return piece.name().equals(name)
        && IntStream.range(0, count)
            .filter(i -> piece.edges().get(i).name().equals(edge))
            .anyMatch(
                i ->
                    isHem(piece.edges().get((i + 1) % count))
                        || isHem(piece.edges().get((i + count - 1) % count)));
  }

  private static Piece deeper(Piece piece, Edge edge) {
    List<Double> folds = new ArrayList<>(((Allowance.TurnedBack) edge.allowance()).folds());
    folds.set(0, folds.get(0) + 10);
    return Reworked.edge(piece, Reworked.allowance(edge, new Allowance.TurnedBack(folds)));
  }

  static final Fault CORNER_CUT_OTHERWISE =
      Fault.besideOthers(
          "a corner of the allowances finished another way",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .flatMap(
                                  piece ->
                                      IntStream.range(0, piece.corners().size())
                                          .mapToObj(
                                              i ->
                                                  garment.planted(
                                                      piece.name() + " corner " + i,
                                                      Reworked.size(sized, stepped(piece, i)),
                                                      "nest-alike",
                                                      Garment.subjects(
                                                          sized,
                                                          piece.name(),
                                                          piece.corners().get(i).after()))))));

  private static Piece stepped(Piece piece, int index) {
    List<Corner> corners = new ArrayList<>(piece.corners());
    Corner own = corners.get(index);
    corners.set(
        index, new Corner(own.before(), own.after(), own.point(), new CornerFinish.Stepped()));
    return Reworked.corners(piece, corners);
  }
}
