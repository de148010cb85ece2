package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.NotchPlace;
import org.hemwright.pattern.seam.Seam;

/** Notches gone wrong in one size. */
final class NotchFaults {
  private NotchFaults() {}

  private record At(Garment garment, SizedPattern sized, Piece piece, Notch notch) {
    Edge edge() {
      return piece.edge(notch.edge()).orElseThrow();
    }

    /** Whether a seam with even marks has this edge for its first layer. */
    boolean marksEvenParts() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .filter(seam -> seam.even().isPresent())
          .flatMap(seam -> seam.joins().get(0).layers().get(0).run().stream())
          .anyMatch(p -> p.piece().equals(piece.name()) && p.edge().equals(notch.edge()));
    }

    /** Whether every seam of the edge joins it to its own like, where both sides change alike. */
    boolean isItsOwnMate() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .flatMap(seam -> seam.joins().stream())
          .allMatch(join -> join.layers().stream().map(Seam.Layer::text).distinct().count() == 1);
    }

    /** Whether the edge is the cap of a sleeve, or an armhole. */
    boolean isEased() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .anyMatch(seam -> !seam.ease().share() && seam.ease().most() > 0);
    }

    /** Whether nothing but other notches holds it: not the first from either end, at no joint. */
    boolean isBetweenEased() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .filter(seam -> !seam.ease().share() && seam.ease().most() > 0)
          .flatMap(seam -> seam.joins().stream())
          .flatMap(join -> join.layers().stream())
          .map(layer -> LayerWalk.of(layer, sized).stops())
          .map(stops -> stops.stream().filter(LayerWalk.Stop::isNotch).toList())
          .anyMatch(
              stops ->
                  stops.stream()
                      .skip(1)
                      .limit(Math.max(0, stops.size() - 2))
                      .anyMatch(stop -> stop.point().distanceTo(point()) < 0.01));
    }

    private Point point() {
      return edge().path().at(Math.min(edge().path().length(), notch.distance())).point();
    }

    /** Whether the edge closes to a loop that is stretched evenly. */
    boolean isStretched() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .anyMatch(seam -> seam.ease().share());
    }

    /** Whether it shows an even part on the edge that a stretched loop is sewn to. */
    boolean isUnderBand() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .filter(seam -> seam.ease().share())
          .anyMatch(
              seam ->
                  seam.joins().get(0).layers().get(0).run().stream()
                      .noneMatch(place -> place.piece().equals(piece.name())));
    }

    /** Whether it shows where a seam of the other layer is, as at the top of a cap. */
    boolean meetsJoint() {
      return Garment.seamsOf(sized, piece.name(), notch.edge()).stream()
          .flatMap(seam -> seam.joins().stream())
          .filter(join -> join.layers().get(0).text().equals(piece.name() + "." + notch.edge()))
          .filter(join -> join.layers().get(1).run().size() > 1)
          .anyMatch(
              join -> {
                double own = NotchPlace.along(edge(), notch);
                LayerWalk first = LayerWalk.of(join.layers().get(0), sized);
                LayerWalk other = LayerWalk.of(join.layers().get(1), sized);
                double eased = first.length() - other.length();
                return other.stops().stream()
                    .filter(stop -> stop.kind() == LayerWalk.Kind.SEAM)
                    .anyMatch(
                        stop -> {
                          double by = own - stop.distance();
                          return by > -0.5 && by < eased + 0.5;
                        });
              });
    }

    /** Whether it shows where a dart, a pleat or gathers begin or end. */
    boolean marksIntake() {
      return piece.intakes().stream()
          .filter(intake -> intake.edge().equals(notch.edge()))
          .anyMatch(
              intake ->
                  Math.abs(intake.from() - notch.distance()) < 0.01
                      || Math.abs(intake.to() - notch.distance()) < 0.01);
    }

    /** Whether a place of the edge is folded away, or close to the end of a fold. */
    boolean isFoldedAt(double distance) {
      return piece.sewn(edge()).isFolded(distance, 2);
    }

    boolean isInside() {
      double length = edge().path().length();
      return notch.distance() > 10 && notch.distance() < length - 10;
    }

    Planted planted(List<Notch> notches, String check) {
      return garment.planted(
          piece.name() + "." + notch.edge() + " notch " + piece.notches().indexOf(notch),
          Reworked.size(sized, Reworked.notches(piece, notches)),
          check,
          Garment.subjects(sized, piece.name(), notch.edge()));
    }

    List<Notch> with(Notch other) {
      return piece.notches().stream().map(own -> own.equals(notch) ? other : own).toList();
    }

    Notch at(double distance) {
      return new Notch(notch.edge(), distance, notch.kind(), notch.name(), notch.origin());
    }
  }

  private static Stream<At> everywhere(Garment garment) {
    return garment.threeSizes().stream()
        .flatMap(
            sized ->
                sized.pieces().stream()
                    .flatMap(
                        piece ->
                            piece.notches().stream()
                                .map(notch -> new At(garment, sized, piece, notch))));
  }

  static final Fault MOVED =
      Fault.besideOthers(
          "a notch moved by 5 mm",
          garment ->
              everywhere(garment)
                  .filter(At::isInside)
                  .flatMap(
                      at ->
                          Stream.of(5.0, -5.0)
                              .map(
                                  by ->
                                      at.planted(
                                          at.with(at.at(at.notch.distance() + by)),
                                          movedCheck(at)))));

  private static String movedCheck(At at) {
    if (at.marksIntake()) {
      return "intake-marks";
    }
    return at.marksEvenParts()
        ? "seam-marks"
        : at.isItsOwnMate()
            ? "grade-even"
            : at.isEased() && !(at.isBetweenEased() && !at.meetsJoint())
                ? "cap-ease"
                : "notch-mates";
  }

  static final Fault REMOVED =
      Fault.besideOthers(
          "a notch removed",
          garment ->
              everywhere(garment)
                  .filter(At::isInside)
                  .map(
                      at ->
                          at.planted(
                              at.piece.notches().stream().filter(n -> !n.equals(at.notch)).toList(),
                              removedCheck(at))));

  private static String removedCheck(At at) {
    if (at.marksIntake()) {
      return "intake-marks";
    }
    return at.marksEvenParts()
        ? "seam-marks"
        : at.isItsOwnMate()
            ? "nest-alike"
            : at.isUnderBand()
                ? "making-marks"
                : at.isStretched() || at.meetsJoint() ? "loop-marks" : "notch-mates";
  }

  static final Fault KIND_SWAPPED =
      Fault.besideOthers(
          "a single notch made double, or a double one single",
          garment ->
              everywhere(garment)
                  .map(
                      at -> {
                        Notch other =
                            new Notch(
                                at.notch.edge(),
                                at.notch.distance(),
                                at.notch.kind() == Notch.Kind.SINGLE
                                    ? Notch.Kind.DOUBLE
                                    : Notch.Kind.SINGLE,
                                at.notch.name(),
                                at.notch.origin());
                        return at.planted(at.with(other), "nest-alike");
                      }));

  static final Fault DOUBLED =
      Fault.besideOthers(
          "a notch put in a second time, 12 mm further on",
          garment ->
              everywhere(garment)
                  .filter(at -> at.edge().path().length() > at.notch.distance() + 30)
                  .map(
                      at -> {
                        List<Notch> more = new ArrayList<>(at.piece.notches());
                        more.add(
                            new Notch(
                                at.notch.edge(),
                                at.notch.distance() + 12,
                                at.notch.kind(),
                                Optional.empty(),
                                at.notch.origin()));
                        return at.planted(more, doubledCheck(at));
                      }));

  private static String doubledCheck(At at) {
    if (at.isFoldedAt(at.notch.distance() + 12)) {
      return "intake-marks";
    }
    return at.isItsOwnMate() ? "nest-alike" : "notch-mates";
  }
}
