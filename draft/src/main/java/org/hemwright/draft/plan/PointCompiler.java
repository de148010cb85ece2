package org.hemwright.draft.plan;

import org.hemwright.draft.plan.name.Lookup;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.CompassNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PointNode;
import org.hemwright.draft.syntax.Along;
import org.hemwright.draft.syntax.PointRule;

/** Turns the rules of points into nodes. */
final class PointCompiler {
  private final Compilation shared;
  private final Compilers all;

  PointCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
  }

  /** The node of a rule. */
  Node node(PointRule rule, Scope scope) {
    Lookup lookup = shared.lookup();
    NumberCompiler numbers = all.numbers();
    if (rule instanceof PointRule.At at) {
      return new PointNode.At(numbers.slot(at.x(), scope), numbers.slot(at.y(), scope));
    } else if (rule instanceof PointRule.From from) {
      return from(from, scope);
    } else if (rule instanceof PointRule.On on) {
      return on(on, scope);
    } else if (rule instanceof PointRule.Share share) {
      return new PointNode.Share(
          numbers.slot(share.share(), scope),
          lookup.point(share.from(), scope),
          lookup.point(share.to(), scope));
    } else if (rule instanceof PointRule.Meeting meeting) {
      return new PointNode.Meet(
          all.paths().slot(meeting.path(), scope),
          all.paths().slot(meeting.other(), scope),
          meeting.pick().which(),
          nearest(meeting.pick(), scope));
    } else if (rule instanceof PointRule.Foot foot) {
      return new PointNode.Foot(
          lookup.point(foot.from(), scope), all.paths().slot(foot.onto(), scope));
    } else if (rule instanceof PointRule.Compass compass) {
      return new CompassNode.OnPathAway(
          all.paths().slot(compass.path(), scope),
          numbers.slot(compass.radius(), scope),
          lookup.point(compass.centre(), scope),
          compass.pick().which(),
          nearest(compass.pick(), scope));
    } else if (rule instanceof PointRule.TwoCompasses two) {
      return new CompassNode.Two(
          numbers.slot(two.firstRadius(), scope),
          lookup.point(two.first(), scope),
          numbers.slot(two.secondRadius(), scope),
          lookup.point(two.second(), scope),
          two.left());
    }
    if (rule instanceof PointRule.Traced traced) {
      return all.tracings().point(traced.mark(), traced.span(), scope);
    }
    PointRule.Moved moved = (PointRule.Moved) rule;
    int point = lookup.point(moved.point(), scope);
    int motion = all.moves().slot(moved.moves(), scope);
    return motion == Node.NONE ? new PointNode.Same(point) : new PointNode.Moved(point, motion);
  }

  private int nearest(PointRule.Pick pick, Scope scope) {
    return pick.nearest().map(point -> shared.lookup().point(point, scope)).orElse(Node.NONE);
  }

  private Node from(PointRule.From from, Scope scope) {
    int here = shared.lookup().point(from.start(), scope);
    Node last = new PointNode.Same(here);
    for (int i = 0; i < from.legs().size(); i++) {
      PointRule.Leg leg = from.legs().get(i);
      last =
          new PointNode.Step(
              here,
              all.directions().slot(leg.direction(), scope, here),
              all.numbers().slot(leg.distance(), scope));
      if (i + 1 < from.legs().size()) {
        here = shared.nodes().add(last, leg.span());
      }
    }
    return last;
  }

  private Node on(PointRule.On on, Scope scope) {
    int path = all.paths().slot(on.path(), scope);
    if (on.along() instanceof Along.AtPoint at) {
      return new PointNode.OnPathAt(path, shared.lookup().point(at.point(), scope));
    } else if (on.along() instanceof Along.Measured measured) {
      return new PointNode.Along(
          path, all.numbers().slot(measured.amount(), scope), measured.fromEnd());
    }
    if (on.along() instanceof Along.Traced traced) {
      shared.problems().add(shared.problems().at(traced.span(), "traced-notch-only"));
      return new Broken();
    }
    Along.Even even = (Along.Even) on.along();
    if (even.parts() == 2) {
      return new PointNode.Middle(path);
    }
    shared.problems().add(shared.problems().at(even.span(), "several-for-one"));
    return new Broken();
  }
}
