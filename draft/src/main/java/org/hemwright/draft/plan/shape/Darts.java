package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;

/** The darts of a piece in one size, while lines turn them about their apexes. */
final class Darts {
  private final List<Dart> darts = new ArrayList<>();

  /**
   * One dart.
   *
   * @param drafted the angle of cloth that is drafted for it (radians)
   * @param open the angle that it opens by in the end
   * @param flare whether it stays open in the garment
   */
  record Dart(
      String name,
      EdgeSpot spot,
      double at,
      Point apex,
      double drafted,
      double open,
      boolean flare,
      DartForm.Sewing how,
      Span span) {
    Dart opened(double angle) {
      return new Dart(name, spot, at, apex, drafted, angle, flare, how, span);
    }

    /** By how much what comes after it turns about the apex, against the draft. */
    double turn() {
      return open - drafted;
    }

    boolean sharesApex(Dart other) {
      return apex.isAt(other.apex);
    }

    Joint joint(Values values, DrawnOutline outline) {
      boolean back = how.towardStart() != spot.isReversed(outline);
      Optional<Joint.Fold> fold =
          flare
              ? Optional.empty()
              : Optional.of(new Joint.Fold(name, back, how.shortOf(values), false, how.origin()));
      return new Joint(
          spot.edge(),
          at,
          spot.point(outline, at),
          apex,
          drafted,
          new Opening.Turned(apex, open),
          fold,
          how.blend(values),
          span);
    }
  }

  /** Every dart, in the order of the document. */
  List<Dart> all() {
    return darts;
  }

  void add(Dart dart) {
    darts.add(dart);
  }

  /** Turns a dart, or a share of it, about its apex. */
  void move(DartMove move, Values values, DrawnOutline outline) {
    Dart from = named(move.dart());
    double share = move.share() == Node.NONE ? 1 : values.number(move.share());
    if (!(share > 0 && share <= 1)) {
      throw new Failure(
          Cause.of("dart-share")
              .with("dart", move.dart())
              .with("share", Argument.of(org.hemwright.pattern.quantity.Quantity.ratio(share))));
    }
    double angle = share * from.open();
    double left = share == 1 ? 0 : from.open() - angle;
    darts.set(darts.indexOf(from), from.opened(left));
    if (move.to().isPresent()) {
      EdgeSpot spot = move.to().get();
      String name = move.as().orElse(move.dart());
      boolean flare = move.as().isEmpty();
      darts.add(
          new Dart(
              name,
              spot,
              spot.one(values, outline),
              from.apex(),
              0,
              angle,
              flare,
              move.how(),
              move.span()));
      return;
    }
    Dart into = named(move.as().orElseThrow());
    double apart = into.apex().distanceTo(from.apex());
    if (apart > Tolerance.SAME_POINT) {
      throw new Failure(
          Cause.of("darts-apart")
              .with("dart", from.name())
              .with("other", into.name())
              .with("apart", Argument.mm(apart))
              .at(from.apex()));
    }
    darts.set(darts.indexOf(into), into.opened(into.open() + angle));
  }

  private Dart named(String name) {
    for (Dart dart : darts) {
      if (dart.name().equals(name) && !dart.flare()) {
        return dart;
      }
    }
    throw new IllegalStateException("a dart is named before it is moved: " + name);
  }
}
