package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * A dart sews closed and lies flat: its legs are as long as each other, the edge runs smoothly
 * across it when it is closed, and its cap, folded the way it is pressed, lies along the edge
 * beneath it (handbook section 1, "Darts").
 */
record DartCheck(CheckSettings settings) implements EachSizeCheck {
  /** Where between the fold of a dart and its leg the cap is looked at. */
  private static final double[] SHARES = {0.02, 0.25, 0.5, 0.75};

  @Override
  public String id() {
    return "dart";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Intake.Dart dart : piece.intakes(Intake.Dart.class)) {
        piece
            .edge(dart.edge())
            .filter(edge -> dart.to() <= edge.path().length() + Tolerance.DRAWN_LENGTH)
            .ifPresent(edge -> new Closed(piece, edge, dart).judge(findings));
      }
    }
    return findings;
  }

  /** One dart, its second side turned about the apex onto the first. */
  private final class Closed {
    private final Piece piece;
    private final Intake.Dart dart;
    private final Path path;
    private final double to;
    private final Point first;
    private final Point second;

    /** How far the second side turns about the apex (radians). */
    private final double turn;

    Closed(Piece piece, Edge edge, Intake.Dart dart) {
      this.piece = piece;
      this.dart = dart;
      this.path = edge.path();
      this.to = Math.min(dart.to(), path.length());
      this.first = path.at(dart.from()).point();
      this.second = path.at(to).point();
      this.turn = second.minus(dart.apex()).angleTo(first.minus(dart.apex()));
    }

    void judge(List<Finding> findings) {
      if (!legs(findings) && !across(findings)) {
        cap(findings);
      }
    }

    private Finding.Builder problem(String code, Point at) {
      return Finding.fail(code, piece.name() + "." + dart.edge())
          .with("piece", piece.name())
          .with("edge", dart.edge())
          .with("dart", dart.name())
          .at(Place.on(dart.origin(), piece.name(), at));
    }

    private Status judged(double by) {
      return by > settings.sewing().seamFail() ? Status.FAIL : Status.WARN;
    }

    private boolean legs(List<Finding> findings) {
      double one = first.distanceTo(dart.tip());
      double other = second.distanceTo(dart.tip());
      double by = Math.abs(one - other);
      if (by <= settings.sewing().seamWarn()) {
        return false;
      }
      findings.add(
          problem("dart-legs", dart.tip())
              .with("by", Argument.mm(by))
              .values(Math.max(one, other), Math.min(one, other), "mm")
              .build()
              .as(judged(by)));
      return true;
    }

    private boolean across(List<Finding> findings) {
      if (dart.from() <= Tolerance.DRAWN_LENGTH || to >= path.length() - Tolerance.DRAWN_LENGTH) {
        return false;
      }
      Vector before = path.part(0, dart.from()).endDirection();
      Vector after = path.part(to, path.length()).startDirection().turned(turn);
      double bend = before.angleTo(after);
      if (Math.abs(bend) <= settings.sewing().angleWarn()) {
        return false;
      }
      findings.add(
          problem(bend > 0 ? "dart-dip" : "dart-peak", first)
              .with("angle", Argument.of(Quantity.angle(Math.abs(bend))))
              .values(180 - Math.toDegrees(bend), 180, "deg")
              .build()
              .as(Math.abs(bend) > settings.sewing().angleFail() ? Status.FAIL : Status.WARN));
      return true;
    }

    /** The half of the cap that lies on the edge beneath, held against that edge. */
    private void cap(List<Finding> findings) {
      double middle = (dart.from() + to) / 2;
      double beneath = dart.towardStart() ? dart.from() : path.length() - to;
      if (beneath <= Tolerance.DRAWN_LENGTH) {
        return;
      }
      Path side = dart.towardStart() ? path.part(0, dart.from()) : path.part(to, path.length());
      Path edge = onward(side, dart.towardStart());
      double worst = 0;
      Point where = first;
      for (double share : SHARES) {
        double on =
            dart.towardStart()
                ? middle + share * (to - middle)
                : middle - share * (middle - dart.from());
        Point drawn = path.at(on).point();
        double angle = dart.towardStart() ? turn : -turn;
        Point folded = dart.apex().plus(drawn.minus(dart.apex()).turned(angle));
        double off = edge.nearest(folded).point().distanceTo(folded);
        if (off > worst) {
          worst = off;
          where = drawn;
        }
      }
      if (worst > settings.sewing().dartCap()) {
        findings.add(
            problem("dart-cap", where)
                .with("by", Argument.mm(worst))
                .values(worst, 0, "mm")
                .build()
                .as(judged(worst)));
      }
    }

    /** The edge carried on past its end at a corner, where the dart lies close to it. */
    private Path onward(Path side, boolean atStart) {
      double on = to - dart.from();
      if (atStart) {
        Point back = side.start().minus(side.startDirection().times(on));
        return Path.straight(back, side.start()).then(side);
      }
      Point ahead = side.end().plus(side.endDirection().times(on));
      return side.then(Path.straight(side.end(), ahead));
    }
  }
}
