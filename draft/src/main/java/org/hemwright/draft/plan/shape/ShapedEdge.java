package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Intake;

/**
 * Draws one edge as it is cut: the trued line opened at each of its folds, with their caps.
 *
 * <p>A fold is opened about its line. The cloth beneath a closed fold lies under the trued edge on
 * the side that it is pressed to, so its own edge there is that stretch of the trued edge: once as
 * it is, on the side where the cloth runs on flat, and once mirrored in the line, on the side that
 * is turned (handbook section 1: fold closed the way it will be pressed, true, unfold).
 */
final class ShapedEdge {
  private static final double FAR = 3;

  private final String name;
  private final TruedEdge trued;
  private final List<Joint> joints;
  private final List<Curve> curves = new ArrayList<>();
  private final List<Intake> intakes = new ArrayList<>();
  private double drawn;

  /** How the stretch of the trued line that comes next is carried to where it is cut. */
  private Motion carried = Motion.identity();

  private ShapedEdge(String name, TruedEdge trued, List<Joint> joints) {
    this.name = name;
    this.trued = trued;
    this.joints = joints;
  }

  /**
   * An edge as cut.
   *
   * @param path counter-clockwise
   * @param closed as sewn, from the same start
   * @param intakes what is folded away, along the path
   * @param opened how what lies beyond its end moves when the folds are opened
   */
  record Drawn(Path path, Path closed, List<Intake> intakes, Motion opened) {
    Drawn {
      intakes = List.copyOf(intakes);
    }
  }

  /**
   * Draws an edge.
   *
   * @param name the edge's name
   * @param drafted counter-clockwise
   * @param joints on it, in its order
   * @param start how the part of the piece where it starts has moved
   */
  static Drawn of(String name, Path drafted, List<Joint> joints, Motion start) {
    TruedEdge trued = TruedEdge.of(drafted, joints, start);
    return new ShapedEdge(name, trued, joints).drawn();
  }

  private Drawn drawn() {
    Path whole = trued.path();
    double from = 0;
    for (int i = 0; i < joints.size(); i++) {
      Joint joint = joints.get(i);
      if (joint.folds()) {
        Point end = trued.before(i).apply(joint.firstEnd());
        double at = whole.nearest(end).distance();
        boolean onLast = intakes.size() > 0 && Math.abs(at - from) <= Tolerance.SAME_POINT;
        if (!onLast) {
          add(whole.part(from, at).moved(carried));
          from = at;
        }
        fold(joint, i, from);
      }
    }
    add(from == 0 ? whole : whole.part(from, whole.length()).moved(carried));
    return new Drawn(from == 0 ? whole : Path.of(curves), whole, intakes, carried);
  }

  private void add(Path stretch) {
    curves.addAll(stretch.curves());
    drawn += stretch.length();
  }

  private Failure pastEnd(Joint joint) {
    return new Failure(
        Cause.of("fold-past-end")
            .with("fold", joint.fold().map(Joint.Fold::name).orElse(""))
            .with("edge", name)
            .at(joint.span())
            .at(joint.place()));
  }

  /** Opens a fold and goes on beyond it. */
  private void fold(Joint joint, int index, double at) {
    Joint.Fold fold = joint.fold().orElseThrow();
    Motion before = trued.before(index);
    Point end = trued.path().at(at).point();
    Point inner = before.apply(joint.inner());
    Opening opening = joint.opening().carried(before);
    Motion mirror = Motion.mirror(inner, end);
    Motion beyond = opening.motion(1).then(carried);
    Path beneath = beneath(joint, opening, inner, end, at);
    Path first;
    Path second;
    if (fold.towardStart()) {
      first = beneath.reversed().moved(mirror.then(carried));
      second = beneath.moved(beyond);
    } else {
      first = beneath.moved(carried);
      second = beneath.reversed().moved(mirror.then(beyond));
    }
    double from = drawn;
    add(first);
    add(second);
    intakes.add(
        fold.pleat()
            ? pleat(fold, from, List.of(end, first.end(), end), inner, opening)
            : dart(fold, from, inner, first.end(), (Opening.Turned) opening));
    carried = beyond;
  }

  /** The stretch of the trued edge under which the folded cloth lies, in the edge's direction. */
  private Path beneath(Joint joint, Opening opening, Point inner, Point end, double at) {
    boolean back = joint.fold().orElseThrow().towardStart();
    Vector out = end.minus(inner);
    Path line =
        Path.straight(inner, inner.plus(out.times(FAR))).moved(opening.motion(back ? -0.5 : 0.5));
    Path whole = trued.path();
    double nearest = -1;
    for (Meeting meeting : line.meetings(whole)) {
      double place = meeting.distanceOnOther();
      boolean beside = back ? place < at : place > at;
      boolean nearer = nearest < 0 || Math.abs(place - at) < Math.abs(nearest - at);
      if (beside && nearer) {
        nearest = place;
      }
    }
    if (nearest < 0) {
      throw pastEnd(joint);
    }
    return back ? whole.part(nearest, at) : whole.part(at, nearest);
  }

  private Intake dart(
      Joint.Fold fold, double from, Point inner, Point cap, Opening.Turned opening) {
    Point apex = carried.apply(inner);
    Vector out = cap.minus(apex);
    Point tip = apex.plus(out.unit().times(Math.min(fold.shortOf(), out.length() / 2)));
    return new Intake.Dart(
        fold.name(),
        name,
        from,
        drawn,
        apex,
        tip,
        opening.angle(),
        fold.towardStart(),
        fold.origin());
  }

  /**
   * A fold of a pleat.
   *
   * @param ends of its outer fold and its placing line as sewn, and between them where the fold
   *     beneath ends as cut
   */
  private Intake pleat(
      Joint.Fold fold, double from, List<Point> ends, Point inner, Opening opening) {
    List<Path> lines = new ArrayList<>();
    lines.add(Path.straight(carried.apply(ends.get(0)), carried.apply(inner)));
    lines.add(Path.straight(ends.get(1), opening.motion(0.5).then(carried).apply(inner)));
    Motion beyond = opening.motion(1).then(carried);
    lines.add(Path.straight(beyond.apply(ends.get(2)), beyond.apply(inner)));
    return new Intake.Pleat(
        fold.name(), name, from, drawn, lines, fold.towardStart(), fold.origin());
  }
}
