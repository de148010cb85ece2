package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * Takes the cut line round one corner as its {@link CornerFinish} says (handbook section 3).
 *
 * <p>With the widths <i>a</i> before and <i>b</i> after the corner and the outline turning by
 * <i>t</i> there (left is positive), the two straight offsets meet (<i>b</i> − <i>a</i> cos
 * <i>t</i>) / sin <i>t</i> beyond the corner on the first of them. Where the narrower of them is
 * less than the wider times cos <i>t</i>, that meeting would rob the wider allowance near the
 * corner; there it ends square to its stitch line instead, with a step to the narrower.
 */
final class CornerDrawing {
  /** Rays from a corner are followed this many allowances far. */
  private static final double REACH = 50;

  private final AllowanceArm before;
  private final AllowanceArm after;
  private final double turn;
  private final AllowanceFindings findings;

  private CornerDrawing(AllowanceArm before, AllowanceArm after, AllowanceFindings findings) {
    this.before = before;
    this.after = after;
    this.turn = before.leave().negated().angleTo(after.leave());
    this.findings = findings;
  }

  /** The way round the corner between two arms. */
  static CornerTurn of(
      AllowanceArm before, AllowanceArm after, CornerFinish finish, AllowanceFindings findings) {
    return new CornerDrawing(before, after, findings).finished(finish);
  }

  private CornerTurn finished(CornerFinish finish) {
    if (before.isBare() && after.isBare()) {
      return CornerTurn.meeting();
    }
    if (before.edge().onFold()) {
      return ontoFold(before, after, finish);
    }
    if (after.edge().onFold()) {
      return ontoFold(after, before, finish);
    }
    if (finish instanceof CornerFinish.Mitred mitred) {
      return mitred(mitred.limit());
    }
    if (finish instanceof CornerFinish.Square square) {
      return square(square.edge());
    }
    if (finish instanceof CornerFinish.TurnedBack turnedBack) {
      return turnedBack(turnedBack.edge());
    }
    return stepped();
  }

  /** Whether the corner is an internal one, or none at all. */
  private boolean isInternal() {
    return turn <= Tolerance.SAME_DIRECTION;
  }

  private CornerTurn turn(double onBefore, double onAfter, List<Curve> between) {
    return new CornerTurn(onBefore, onAfter, between);
  }

  /** A turn given from one arm to the other, whichever comes first in the outline. */
  private CornerTurn turn(AllowanceArm from, double onFrom, double onTo, List<Curve> between) {
    return from.before() ? turn(onFrom, onTo, between) : turn(onTo, onFrom, reversed(between));
  }

  private static List<Curve> reversed(List<Curve> curves) {
    List<Curve> back = new ArrayList<>(curves.size());
    for (int i = curves.size() - 1; i >= 0; i--) {
      back.add(curves.get(i).reversed());
    }
    return back;
  }

  private static List<Curve> line(Point from, Point to) {
    return from.isAt(to) ? List.of() : List.of(new Line(from, to));
  }

  private CornerTurn mitred(double limit) {
    double narrow = Math.min(before.width(), after.width());
    double wide = Math.max(before.width(), after.width());
    double cos = StrictMath.cos(turn);
    double sin = StrictMath.sin(turn);
    if (narrow < wide * cos - Tolerance.NO_LENGTH) {
      return steppedAtWider();
    }
    double half = StrictMath.tan(turn / 2);
    double difference = after.width() - before.width();
    double step = Math.abs(difference) <= Tolerance.NO_LENGTH ? 0 : difference / sin;
    double onBefore = before.width() * half + step;
    double onAfter = after.width() * half - step;
    if (turn < 0) {
      return crossing(-onBefore, -onAfter);
    }
    Point tip = before.at(-onBefore);
    double far = before.corner().distanceTo(tip);
    if (far > limit * wide) {
      return cutShort(tip.minus(before.corner()).unit(), limit * wide);
    }
    return turn(-onBefore, -onAfter, line(tip, after.at(-onAfter)));
  }

  /** A mitre cut off square to the way to its tip. */
  private CornerTurn cutShort(Vector way, double distance) {
    double onBefore = reach(before, way, distance);
    double onAfter = reach(after, way, distance);
    return turn(onBefore, onAfter, line(before.at(onBefore), after.at(onAfter)));
  }

  /** Where an arm's run beyond the corner gets {@code distance} far along a way. */
  private static double reach(AllowanceArm arm, Vector way, double distance) {
    double beside = arm.beside().minus(arm.corner()).dot(way);
    return Math.min(0, (distance - beside) / arm.leave().dot(way));
  }

  /** At an internal corner the cut lines are trimmed to their crossing. */
  private CornerTurn crossing(double straightBefore, double straightAfter) {
    Optional<Meeting> nearest =
        before.cut().meetings(after.cut()).stream()
            .min(Comparator.comparingDouble(m -> m.distanceOnThis() + m.distanceOnOther()));
    if (nearest.isPresent()) {
      return turn(nearest.get().distanceOnThis(), nearest.get().distanceOnOther(), List.of());
    }
    boolean slight = Math.max(straightBefore, straightAfter) <= Tolerance.OFFSET;
    if (!slight) {
      findings.withoutRoom(before.edge(), after.edge(), before.corner());
    }
    return CornerTurn.meeting();
  }

  private CornerTurn steppedAtWider() {
    AllowanceArm wider = before.width() > after.width() ? before : after;
    AllowanceArm narrower = other(wider);
    return met(narrower, wider.outward())
        .map(on -> turn(narrower, on, 0, line(narrower.at(on), wider.beside())))
        .orElse(CornerTurn.meeting());
  }

  /** Where a ray from the corner meets an arm's cut line; absent with a finding that says so. */
  private Optional<Double> met(AllowanceArm arm, Vector ray) {
    if (arm.isBare()) {
      return Optional.of(0.0);
    }
    double reach = REACH * Math.max(before.width(), after.width());
    Optional<Double> along = arm.meets(ray, reach);
    if (along.isEmpty()) {
      findings.withoutRoom(arm.edge(), other(arm).edge(), arm.corner());
    }
    return along;
  }

  private AllowanceArm other(AllowanceArm arm) {
    return arm.before() ? after : before;
  }

  private CornerTurn stepped() {
    if (turn < 0) {
      return mitred(1);
    }
    return turn(0, 0, line(before.beside(), after.beside()));
  }

  private CornerTurn square(String edge) {
    Optional<AllowanceArm> first = named(edge);
    if (first.isEmpty() || turnsTooLittle(first.get(), "square")) {
      return mitred(usualLimit());
    }
    return met(other(first.get()), first.get().leave().negated())
        .map(onNext -> squared(first.get(), other(first.get()), onNext))
        .orElse(CornerTurn.meeting());
  }

  private CornerTurn squared(AllowanceArm first, AllowanceArm next, double onNext) {
    Point foot = next.at(onNext);
    double onFirst = foot.minus(first.corner()).dot(first.leave());
    return turn(first, onFirst, onNext, line(first.at(onFirst), foot));
  }

  private CornerTurn turnedBack(String edge) {
    Optional<AllowanceArm> hem = named(edge);
    if (hem.isEmpty() || turnsTooLittle(hem.get(), "turned back")) {
      return mitred(usualLimit());
    }
    if (hem.get().isBare()) {
      return mitred(usualLimit());
    }
    AllowanceArm neighbour = other(hem.get());
    return met(neighbour, hem.get().leave().negated())
        .flatMap(on -> folded(hem.get(), neighbour, on))
        .orElse(CornerTurn.meeting());
  }

  private Optional<CornerTurn> folded(AllowanceArm hem, AllowanceArm neighbour, double on) {
    return TurnBack.of(hem, neighbour, on, findings)
        .end()
        .map(end -> turn(neighbour, on, end.onHem(), end.fromNeighbour()));
  }

  private static double usualLimit() {
    return ((CornerFinish.Mitred) CornerFinish.USUAL).limit();
  }

  private Optional<AllowanceArm> named(String edge) {
    if (before.edge().name().equals(edge)) {
      return Optional.of(before);
    }
    if (after.edge().name().equals(edge)) {
      return Optional.of(after);
    }
    findings.stranger(before.edge(), after.edge(), edge, before.corner());
    return Optional.empty();
  }

  /**
   * Whether an edge, run on, meets the neighbour's cut line only farther away than a mitre may
   * reach, or not at all: then the corner is mitred, and a finding says so.
   */
  private boolean turnsTooLittle(AllowanceArm arm, String finish) {
    if (isInternal()) {
      findings.internal(arm.edge(), other(arm).edge(), finish, arm.corner());
      return true;
    }
    if (turn < StrictMath.asin(1 / usualLimit())) {
      findings.tooFlat(arm.edge(), other(arm).edge(), finish, turn, arm.corner());
      return true;
    }
    return false;
  }

  /** The cut line ends on the fold, which runs on through the allowance. */
  private CornerTurn ontoFold(AllowanceArm fold, AllowanceArm arm, CornerFinish finish) {
    if (isInternal()) {
      findings.internal(fold.edge(), arm.edge(), "on the fold", arm.corner());
      return CornerTurn.meeting();
    }
    double limit = finish instanceof CornerFinish.Mitred mitred ? mitred.limit() : usualLimit();
    return met(arm, fold.leave().negated())
        .map(on -> ontoFold(fold, arm, on, limit * arm.width()))
        .orElse(CornerTurn.meeting());
  }

  private CornerTurn ontoFold(AllowanceArm fold, AllowanceArm arm, double onArm, double farthest) {
    Vector way = fold.leave().negated();
    double far = arm.at(onArm).minus(arm.corner()).dot(way);
    if (onArm < 0 && far > farthest) {
      double cutOff = reach(arm, way, farthest);
      return turn(fold, -farthest, cutOff, line(fold.at(-farthest), arm.at(cutOff)));
    }
    return turn(fold, -far, onArm, List.of());
  }
}
