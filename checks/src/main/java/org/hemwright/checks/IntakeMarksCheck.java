package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/**
 * What is folded or drawn up can be found on the cloth: notches where a dart, a pleat or gathers
 * begin and end, none beside them or between, the stitched point of a dart marked, its legs and the
 * lines of a pleat drawn (handbook section 1, "Notches").
 */
record IntakeMarksCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "intake-marks";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Intake intake : piece.intakes()) {
        piece.edge(intake.edge()).ifPresent(edge -> judge(piece, edge, intake, findings));
      }
    }
    return findings;
  }

  private void judge(Piece piece, Edge edge, Intake intake, List<Finding> findings) {
    for (double at : new double[] {intake.from(), intake.to()}) {
      if (isInside(edge, at)) {
        long notches = notches(piece, edge, at);
        if (notches == 0 || notches > ends(piece, edge, at)) {
          String code = notches == 0 ? "intake-notch" : "intake-beside";
          findings.add(problem(code, piece, intake, point(edge, at)).build());
        }
      }
    }
    if (intake.sewn() == 0) {
      between(piece, edge, intake, findings);
    }
    for (Path line : lines(edge, intake)) {
      if (piece.marks(Mark.Inner.class).stream().noneMatch(inner -> isAlong(inner, line))) {
        findings.add(problem("intake-line", piece, intake, line.start()).build());
      }
    }
    if (intake instanceof Intake.Dart dart
        && piece.marks(Mark.Drill.class).stream()
            .noneMatch(drill -> isAt(drill.at(), dart.tip()))) {
      findings.add(problem("intake-point", piece, intake, dart.tip()).build());
    }
  }

  private static boolean isInside(Edge edge, double at) {
    return at > Tolerance.DRAWN_LENGTH && at < edge.path().length() - Tolerance.DRAWN_LENGTH;
  }

  private long notches(Piece piece, Edge edge, double at) {
    return piece.notches().stream()
        .filter(notch -> notch.edge().equals(edge.name()))
        .filter(notch -> Math.abs(notch.distance() - at) <= settings.sewing().notchApart())
        .count();
  }

  /** How many darts, folds and gathers begin or end at a place. */
  private long ends(Piece piece, Edge edge, double at) {
    return piece.intakes().stream()
        .filter(intake -> intake.edge().equals(edge.name()))
        .flatMapToDouble(intake -> DoubleStream.of(intake.from(), intake.to()))
        .filter(end -> Math.abs(end - at) <= settings.sewing().notchApart())
        .count();
  }

  /** Notches in the mouth of a fold take the maker astray. */
  private void between(Piece piece, Edge edge, Intake intake, List<Finding> findings) {
    double clear = settings.sewing().notchApart();
    for (Notch notch : piece.notches()) {
      boolean between =
          notch.edge().equals(edge.name())
              && notch.distance() > intake.from() + clear
              && notch.distance() < intake.to() - clear;
      if (between) {
        findings.add(
            problem("intake-between", piece, intake, point(edge, notch.distance()))
                .with("there", Argument.mm(notch.distance() - intake.from()))
                .build());
      }
    }
  }

  /** The lines to fold or sew along. */
  private static List<Path> lines(Edge edge, Intake intake) {
    if (intake instanceof Intake.Dart dart) {
      Point first = point(edge, dart.from());
      Point second = point(edge, dart.to());
      return List.of(Path.polyline(List.of(first, dart.tip(), second)));
    }
    return intake instanceof Intake.Pleat pleat ? pleat.lines() : List.of();
  }

  private boolean isAlong(Mark.Inner inner, Path line) {
    Path drawn = inner.path();
    double middle = line.length() / 2;
    return isAt(drawn.start(), line.start())
        && isAt(drawn.end(), line.end())
        && isAt(drawn.nearest(line.at(middle).point()).point(), line.at(middle).point());
  }

  private boolean isAt(Point here, Point there) {
    return here.distanceTo(there) <= settings.sewing().notchApart();
  }

  private static Point point(Edge edge, double at) {
    return edge.path().at(Math.min(at, edge.path().length())).point();
  }

  private static Finding.Builder problem(String code, Piece piece, Intake intake, Point at) {
    return Finding.warn(code, piece.name() + "." + intake.edge())
        .with("piece", piece.name())
        .with("edge", intake.edge())
        .with("intake", intake.name())
        .at(Place.on(intake.origin(), piece.name(), at));
  }
}
