package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.Symmetry;

/** Seams gone wrong in one size. */
final class SeamFaults {
  private SeamFaults() {}

  private static Planted planted(Garment garment, Seam seam, SizedPattern changed, String check) {
    Set<String> subjects = new LinkedHashSet<>(Set.of("seam " + seam.name()));
    Garment.places(seam).forEach(place -> subjects.add(place.piece() + "." + place.edge()));
    return garment.planted("seam " + seam.name(), changed, check, subjects);
  }

  private static Stream<Planted> inSeams(
      Garment garment, String check, UnaryOperator<Optional<Seam>> faulty) {
    return garment.threeSizes().stream()
        .flatMap(
            sized ->
                sized.seams().stream()
                    .flatMap(
                        seam ->
                            faulty.apply(Optional.of(seam)).stream()
                                .map(
                                    other ->
                                        planted(
                                            garment, seam, Reworked.seam(sized, other), check))));
  }

  private static Seam with(Seam seam, List<Seam.Join> joins) {
    return new Seam(seam.name(), joins, seam.ease(), seam.even(), seam.origin());
  }

  private static EdgePlace on(EdgePlace place, String copy, EdgePlace.Half half) {
    return new EdgePlace(
        place.piece(), copy, half, place.edge(), place.from(), place.to(), place.reversed());
  }

  static final Fault DELETED =
      Fault.inOneSize(
          "a seam left out",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.seams().stream()
                              .filter(seam -> holdsAlone(sized, seam))
                              .map(
                                  seam ->
                                      planted(
                                          garment,
                                          seam,
                                          Reworked.seams(
                                              sized,
                                              sized.seams().stream()
                                                  .filter(other -> !other.equals(seam))
                                                  .toList()),
                                          "edge-used"))));

  /** Whether an edge with an allowance is in no other seam. */
  private static boolean holdsAlone(SizedPattern sized, Seam seam) {
    return Garment.places(seam)
        .anyMatch(
            place ->
                Garment.seamsOf(sized, place.piece(), place.edge()).size() == 1
                    && sized
                        .piece(place.piece())
                        .flatMap(piece -> piece.edge(place.edge()))
                        .filter(edge -> edge.allowance() instanceof Allowance.Plain)
                        .filter(edge -> edge.allowance().width() > 0)
                        .isPresent());
  }

  static final Fault WRONG_HALF =
      Fault.inOneSize(
          "a seam with the wrong half of a fold piece",
          garment -> inSeams(garment, "seam-sides", seam -> seam.flatMap(SeamFaults::otherHalf)));

  private static Optional<Seam> otherHalf(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    EdgePlace place = join.layers().get(join.layers().size() - 1).run().get(0);
    if (place.half() == EdgePlace.Half.WHOLE) {
      return Optional.empty();
    }
    EdgePlace.Half other =
        place.half() == EdgePlace.Half.DRAWN ? EdgePlace.Half.MIRRORED : EdgePlace.Half.DRAWN;
    return Optional.of(withLast(seam, on(place, place.copy(), other)));
  }

  private static Seam withLast(Seam seam, EdgePlace place) {
    Seam.Join join = seam.joins().get(0);
    List<Seam.Layer> layers = new ArrayList<>(join.layers());
    List<EdgePlace> run = new ArrayList<>(layers.get(layers.size() - 1).run());
    run.set(0, place);
    layers.set(layers.size() - 1, new Seam.Layer(run));
    List<Seam.Join> joins = new ArrayList<>(seam.joins());
    joins.set(0, new Seam.Join(layers));
    return with(seam, joins);
  }

  static final Fault WRONG_COPY =
      Fault.inOneSize(
          "a left taken for a right in one join",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.seams().stream()
                              .flatMap(
                                  seam ->
                                      otherCopy(sized, seam).stream()
                                          .map(
                                              other ->
                                                  planted(
                                                      garment,
                                                      seam,
                                                      Reworked.seam(sized, other),
                                                      wrongCopyCheck(other))))));

  /** In a third layer the copy that is passed over is told; taken twice, the one taken. */
  private static String wrongCopyCheck(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    EdgePlace last = join.layers().get(join.layers().size() - 1).run().get(0);
    boolean twice =
        seam.joins().stream()
                .flatMap(each -> each.layers().stream())
                .flatMap(layer -> layer.run().stream())
                .filter(last::equals)
                .count()
            > 1;
    return join.layers().size() > 2 && !twice ? "edge-used" : "seam-sides";
  }

  private static Optional<Seam> otherCopy(SizedPattern sized, Seam seam) {
    Seam.Join join = seam.joins().get(0);
    EdgePlace place = join.layers().get(join.layers().size() - 1).run().get(0);
    Piece piece = sized.piece(place.piece()).orElseThrow();
    return piece.card().copies().stream()
        .filter(copy -> !copy.name().equals(place.copy()))
        .findFirst()
        .map(copy -> withLast(seam, on(place, copy.name(), place.half())));
  }

  static final Fault PARTNERS_SWAPPED =
      Fault.inOneSize(
          "left and right partners of a seam exchanged",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.seams().stream()
                              .filter(seam -> needsLeftAndRight(sized, seam))
                              .flatMap(
                                  seam ->
                                      swapped(seam).stream()
                                          .map(
                                              other ->
                                                  planted(
                                                      garment,
                                                      seam,
                                                      Reworked.seam(sized, other),
                                                      "seam-sides")))));

  /** Whether a left is not as good as a right, as it is for a pocket that is its own mirror. */
  private static boolean needsLeftAndRight(SizedPattern sized, Seam seam) {
    Piece first =
        sized.piece(seam.joins().get(0).layers().get(0).run().get(0).piece()).orElseThrow();
    return EdgeFaults.allEdges(sized, seam) || !Symmetry.isOwnMirror(first);
  }

  private static Optional<Seam> swapped(Seam seam) {
    if (seam.joins().size() != 2 || seam.joins().get(0).layers().size() != 2) {
      return Optional.empty();
    }
    List<Seam.Layer> one = seam.joins().get(0).layers();
    List<Seam.Layer> other = seam.joins().get(1).layers();
    return Optional.of(
        with(
            seam,
            List.of(
                new Seam.Join(List.of(one.get(0), other.get(1))),
                new Seam.Join(List.of(other.get(0), one.get(1))))));
  }

  static final Fault TURNED =
      Fault.inOneSize(
          "a layer sewn from its other end",
          garment ->
              inSeams(
                  garment,
                  "seam-sides",
                  seam ->
                      seam.filter(own -> !bindsSlit(garment, own)).flatMap(SeamFaults::turned)));

  /** A binding along a slit, which goes up one side and down the other, has no other end. */
  private static boolean bindsSlit(Garment garment, Seam seam) {
    SizedPattern sized = garment.threeSizes().get(0);
    return Garment.places(seam)
        .anyMatch(
            place ->
                sized.piece(place.piece()).stream()
                    .flatMap(piece -> piece.marks(Mark.Placement.class).stream())
                    .filter(line -> line.name().equals(place.edge()))
                    .anyMatch(line -> line.path().isClosed()));
  }

  private static Optional<Seam> turned(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    Seam.Layer first = join.layers().get(0);
    if (first.run().size() > 1) {
      return Optional.empty();
    }
    EdgePlace back = first.run().get(0).turned();
    List<Seam.Layer> layers = new ArrayList<>(join.layers());
    layers.set(0, new Seam.Layer(List.of(back)));
    List<Seam.Join> joins = new ArrayList<>(seam.joins());
    joins.set(0, new Seam.Join(layers));
    return Optional.of(with(seam, joins));
  }

  static final Fault RUN_OUT_OF_ORDER =
      Fault.inOneSize(
          "two edges of a run sewn in the wrong order",
          garment -> inSeams(garment, "seam-sides", seam -> seam.flatMap(SeamFaults::disordered)));

  private static Optional<Seam> disordered(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    List<Seam.Layer> layers = new ArrayList<>(join.layers());
    for (int i = 0; i < layers.size(); i++) {
      if (layers.get(i).run().size() > 2) {
        List<EdgePlace> run = new ArrayList<>(layers.get(i).run());
        EdgePlace second = run.get(1);
        run.set(1, run.get(2));
        run.set(2, second);
        layers.set(i, new Seam.Layer(run));
        List<Seam.Join> joins = new ArrayList<>(seam.joins());
        joins.set(0, new Seam.Join(layers));
        return Optional.of(with(seam, joins));
      }
    }
    return Optional.empty();
  }

  static final Fault JOIN_LOST =
      Fault.inOneSize(
          "one of two joins of a seam left out",
          garment ->
              inSeams(
                  garment,
                  "edge-used",
                  seam ->
                      seam.filter(each -> each.joins().size() > 1)
                          .map(each -> with(each, each.joins().subList(1, each.joins().size())))));
}
