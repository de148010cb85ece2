package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/** Darts and pleats gone wrong in one size. */
final class DartFaults {
  private DartFaults() {}

  /** One dart of one piece in one size. */
  private record At(Garment garment, SizedPattern sized, Piece piece, Intake.Dart dart) {
    Edge edge() {
      return piece.edge(dart.edge()).orElseThrow();
    }

    Path path() {
      return edge().path();
    }

    Point apex() {
      return dart.apex();
    }

    Planted planted(Piece changed, String check) {
      return garment.planted(
          piece.name() + " " + dart.name(),
          Reworked.size(sized, changed),
          check,
          Garment.subjects(sized, piece.name(), dart.edge()));
    }
  }

  private static Stream<At> everywhere(Garment garment) {
    return garment.threeSizes().stream()
        .flatMap(
            sized ->
                sized.pieces().stream()
                    .flatMap(
                        piece ->
                            piece.intakes(Intake.Dart.class).stream()
                                .map(dart -> new At(garment, sized, piece, dart))));
  }

  private static Fault one(String words, String check, Function<At, Piece> faulty) {
    return one(words, check, at -> true, faulty);
  }

  private static Fault one(
      String words, String check, Predicate<At> where, Function<At, Piece> faulty) {
    return Fault.inOneSize(
        words,
        garment ->
            everywhere(garment).filter(where).map(at -> at.planted(faulty.apply(at), check)));
  }

  /** The piece with another path between the ends of a dart's legs, all behind it carried on. */
  private static Piece redrawn(At at, Path before, Path cap, Path after) {
    double from = before.length();
    double to = from + cap.length();
    double later = to - at.dart.to();
    List<Intake> intakes = new ArrayList<>();
    for (Intake own : at.piece.intakes()) {
      boolean behind = own.edge().equals(at.dart.edge()) && own.from() >= at.dart.to();
      intakes.add(
          own.equals(at.dart)
              ? own.at(from, to)
              : behind ? own.at(own.from() + later, own.to() + later) : own);
    }
    List<Notch> notches = new ArrayList<>();
    for (Notch own : at.piece.notches()) {
      boolean behind = own.edge().equals(at.dart.edge()) && own.distance() >= at.dart.to() - 0.01;
      double distance = own.distance() + (behind ? later : 0);
      notches.add(new Notch(own.edge(), distance, own.kind(), own.name(), own.origin()));
    }
    Piece edged = Reworked.edge(at.piece, Reworked.path(at.edge(), before.then(cap).then(after)));
    Point second = cap.end();
    List<Mark> marks =
        at.piece.marks().stream()
            .map(
                mark ->
                    isLegs(mark, at)
                        ? new Mark.Inner(
                            at.dart.name(),
                            Path.polyline(List.of(cap.start(), at.dart.tip(), second)),
                            ((Mark.Inner) mark).text(),
                            mark.origin())
                        : mark)
            .toList();
    return Reworked.marks(Reworked.notches(edged, notches), marks)
        .with(intakes, at.piece.bodyOpenings());
  }

  private static boolean isLegs(Mark mark, At at) {
    return mark instanceof Mark.Inner inner && inner.name().equals(at.dart.name());
  }

  static final Fault LEG_LONGER =
      one(
          "a leg of a dart 4 mm longer, the edge drawn up to it",
          "dart",
          at -> {
            Path path = at.path();
            Point end = path.at(at.dart.to()).point();
            Vector out = end.minus(at.apex()).unit().times(4);
            Path cap = path.part(at.dart.from(), at.dart.to());
            Path after = path.part(at.dart.to(), path.length());
            return redrawn(
                at,
                path.part(0, at.dart.from()),
                Reworked.bent(cap, Vector.ZERO, out),
                Reworked.bent(after, out, Vector.ZERO));
          });

  /** How far a cap stands out from the straight line between its legs. */
  private static double standsOut(At at) {
    Path cap = at.path().part(at.dart.from(), at.dart.to());
    Path straight = Path.straight(cap.start(), cap.end());
    double most = 0;
    for (Point point : cap.flattened(0.05)) {
      most = Math.max(most, straight.nearest(point).point().distanceTo(point));
    }
    return most;
  }

  static final Fault CAP_MISSING =
      one(
          "the cap of a dart cut off straight, where it stands out by more than 0.6 mm",
          "dart",
          at -> standsOut(at) > 0.6,
          at -> {
            Path path = at.path();
            Point from = path.at(at.dart.from()).point();
            Point to = path.at(at.dart.to()).point();
            return redrawn(
                at,
                path.part(0, at.dart.from()),
                Path.straight(from, to),
                path.part(at.dart.to(), path.length()));
          });

  static final Fault PRESSED_OTHERWISE =
      one(
          "a dart pressed to the other side than its cap was made for",
          "dart",
          at -> Math.abs(lean(at)) > Math.toRadians(4),
          at ->
              at.piece.with(
                  at.piece.intakes().stream()
                      .map(own -> own.equals(at.dart) ? turned(at.dart) : own)
                      .toList(),
                  at.piece.bodyOpenings()));

  /** How far out of square the edge meets the first leg (radians); square, both caps are alike. */
  private static double lean(At at) {
    Vector edge = at.path().part(0, at.dart.from()).endDirection();
    Vector leg = at.apex().minus(at.path().at(at.dart.from()).point());
    return Math.PI / 2 - edge.angleTo(leg);
  }

  private static Intake turned(Intake.Dart own) {
    return new Intake.Dart(
        own.name(),
        own.edge(),
        own.from(),
        own.to(),
        own.apex(),
        own.tip(),
        own.angle(),
        !own.towardStart(),
        own.origin());
  }

  static final Fault MOVED =
      one(
          "a dart moved by 6 mm along its edge with its notches, point and lines, the cap left",
          "dart",
          at -> {
            double from = at.dart.from() + 6;
            double to = at.dart.to() + 6;
            Vector by = at.path().at(from).point().minus(at.path().at(at.dart.from()).point());
            Point tip = at.dart.tip().plus(by);
            Intake.Dart moved =
                new Intake.Dart(
                    at.dart.name(),
                    at.dart.edge(),
                    from,
                    to,
                    at.apex().plus(by),
                    tip,
                    at.dart.angle(),
                    at.dart.towardStart(),
                    at.dart.origin());
            Path legs =
                Path.polyline(List.of(at.path().at(from).point(), tip, at.path().at(to).point()));
            List<Mark> marks =
                at.piece.marks().stream()
                    .map(mark -> isLegs(mark, at) ? inner(mark, legs) : point(mark, at, tip))
                    .toList();
            List<Notch> notches =
                at.piece.notches().stream()
                    .map(own -> isAtEnd(own, at) ? moved(own, 6) : own)
                    .toList();
            return Reworked.marks(Reworked.notches(at.piece, notches), marks)
                .with(
                    at.piece.intakes().stream()
                        .map(own -> own.equals(at.dart) ? moved : own)
                        .toList(),
                    at.piece.bodyOpenings());
          });

  private static Mark inner(Mark mark, Path path) {
    Mark.Inner own = (Mark.Inner) mark;
    return new Mark.Inner(own.name(), path, own.text(), own.origin());
  }

  private static Mark point(Mark mark, At at, Point to) {
    return mark instanceof Mark.Drill drill && drill.at().isAt(at.dart.tip())
        ? new Mark.Drill(drill.name(), to, drill.text(), drill.origin())
        : mark;
  }

  private static Notch moved(Notch own, double by) {
    return new Notch(own.edge(), own.distance() + by, own.kind(), own.name(), own.origin());
  }

  private static boolean isAtEnd(Notch notch, At at) {
    return notch.edge().equals(at.dart.edge())
        && (Math.abs(notch.distance() - at.dart.from()) < 0.01
            || Math.abs(notch.distance() - at.dart.to()) < 0.01);
  }

  static final Fault POINT_ASTRAY =
      Fault.besideOthers(
          "the point of a dart 5 mm lower, mark and lines with it",
          garment ->
              everywhere(garment)
                  .map(
                      at -> {
                        Point mouth = at.path().at((at.dart.from() + at.dart.to()) / 2).point();
                        Vector down = at.dart.tip().minus(mouth).unit().times(5);
                        Point tip = at.dart.tip().plus(down);
                        Path legs =
                            Path.polyline(
                                List.of(
                                    at.path().at(at.dart.from()).point(),
                                    tip,
                                    at.path().at(at.dart.to()).point()));
                        Piece marked =
                            Reworked.marks(
                                at.piece,
                                at.piece.marks().stream()
                                    .map(
                                        mark ->
                                            isLegs(mark, at)
                                                ? inner(mark, legs)
                                                : point(mark, at, tip))
                                    .toList());
                        Intake.Dart deeper =
                            new Intake.Dart(
                                at.dart.name(),
                                at.dart.edge(),
                                at.dart.from(),
                                at.dart.to(),
                                at.apex().plus(down),
                                tip,
                                at.dart.angle(),
                                at.dart.towardStart(),
                                at.dart.origin());
                        return at.planted(
                            marked.with(
                                at.piece.intakes().stream()
                                    .map(own -> own.equals(at.dart) ? deeper : own)
                                    .toList(),
                                at.piece.bodyOpenings()),
                            "grade-even");
                      }));

  static final Fault POINT_NOT_MARKED =
      one(
          "the mark at the point of a dart lost",
          "intake-marks",
          at ->
              Reworked.marks(
                  at.piece,
                  at.piece.marks().stream()
                      .filter(
                          mark ->
                              !(mark instanceof Mark.Drill drill && drill.at().isAt(at.dart.tip())))
                      .toList()));

  static final Fault LEGS_NOT_DRAWN =
      one(
          "the lines of a dart lost",
          "intake-marks",
          at ->
              Reworked.marks(
                  at.piece, at.piece.marks().stream().filter(mark -> !isLegs(mark, at)).toList()));

  static final Fault NOT_CLOSED =
      one(
          "a dart left open, its edge sewn as it is drawn",
          "seam-length",
          at ->
              at.piece.with(
                  at.piece.intakes().stream().filter(own -> !own.equals(at.dart)).toList(),
                  at.piece.bodyOpenings()));

  static final Fault WIDER =
      one(
          "a dart 4 mm wider than it is drawn",
          "seam-length",
          at ->
              at.piece.with(
                  at.piece.intakes().stream()
                      .map(own -> own.equals(at.dart) ? own.at(own.from() - 2, own.to() + 2) : own)
                      .toList(),
                  at.piece.bodyOpenings()));
}
