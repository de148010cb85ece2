package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.name.Lookup;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PathNode;
import org.hemwright.draft.plan.node.SmoothNode;
import org.hemwright.draft.plan.node.SmoothNode.Run;
import org.hemwright.draft.syntax.PathRule;
import org.hemwright.draft.syntax.PathTerm;
import org.hemwright.draft.syntax.Reference;

/** Turns the rules of lines, curves and arcs, and the terms that name them, into nodes. */
final class PathCompiler {
  private final Compilation shared;
  private final Compilers all;

  PathCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
  }

  /** The node of a rule. */
  Node node(PathRule rule, Scope scope) {
    Lookup lookup = shared.lookup();
    if (rule instanceof PathRule.Through through) {
      return new PathNode.Polyline(points(through.points(), scope));
    } else if (rule instanceof PathRule.Toward toward) {
      int from = lookup.point(toward.from(), scope);
      return new PathNode.Toward(
          from,
          all.directions().slot(toward.direction(), scope, from),
          all.numbers().slot(toward.distance(), scope));
    } else if (rule instanceof PathRule.Smooth smooth) {
      return smooth(smooth, scope);
    } else if (rule instanceof PathRule.ArcAbout arc) {
      return new PathNode.ArcAbout(
          lookup.point(arc.centre(), scope),
          lookup.point(arc.from(), scope),
          all.numbers().slot(arc.turning(), scope));
    } else if (rule instanceof PathRule.ArcRadius arc) {
      return new PathNode.ArcRadius(
          lookup.point(arc.from(), scope),
          lookup.point(arc.to(), scope),
          all.numbers().slot(arc.radius(), scope),
          arc.bulgingLeft(),
          arc.longWay());
    } else if (rule instanceof PathRule.ArcThrough arc) {
      return new PathNode.ArcThrough(
          lookup.point(arc.from(), scope),
          lookup.point(arc.through(), scope),
          lookup.point(arc.to(), scope));
    }
    return node(((PathRule.Is) rule).term(), scope);
  }

  private List<Integer> points(List<Reference> references, Scope scope) {
    List<Integer> points = new ArrayList<>();
    for (Reference reference : references) {
      points.add(shared.lookup().point(reference, scope));
    }
    return points;
  }

  private Node smooth(PathRule.Smooth smooth, Scope scope) {
    int start = shared.lookup().point(smooth.start(), scope);
    int leaving =
        smooth
            .leaving()
            .map(direction -> all.directions().slot(direction, scope, start))
            .orElse(Node.NONE);
    List<SmoothNode.Leg> legs = new ArrayList<>();
    int here = start;
    for (PathRule.Leg leg : smooth.legs()) {
      SmoothNode.Leg next = leg(leg, scope, here);
      legs.add(next);
      here = next.run() == Run.CORNER ? here : next.to();
    }
    return new SmoothNode(start, leaving, legs);
  }

  private SmoothNode.Leg leg(PathRule.Leg leg, Scope scope, int here) {
    if (leg instanceof PathRule.Leg.Curve curve) {
      int to = shared.lookup().point(curve.to(), scope);
      return new SmoothNode.Leg(
          curve.smoothOn() ? Run.THROUGH : Run.TO,
          to,
          curve
              .heading()
              .map(direction -> all.directions().slot(direction, scope, to))
              .orElse(Node.NONE),
          curve.tension().map(tension -> all.numbers().slot(tension, scope)).orElse(Node.NONE));
    } else if (leg instanceof PathRule.Leg.Straight straight) {
      int to = shared.lookup().point(straight.to(), scope);
      return new SmoothNode.Leg(Run.STRAIGHT, to, Node.NONE, Node.NONE);
    }
    PathRule.Leg.Corner corner = (PathRule.Leg.Corner) leg;
    int leaving =
        corner
            .leaving()
            .map(direction -> all.directions().slot(direction, scope, here))
            .orElse(Node.NONE);
    return new SmoothNode.Leg(Run.CORNER, Node.NONE, leaving, Node.NONE);
  }

  /** The slot of a term. */
  int slot(PathTerm term, Scope scope) {
    if (term instanceof PathTerm.Named named) {
      return shared.lookup().path(named.reference(), scope);
    }
    return shared.nodes().add(node(term, scope), term.span());
  }

  /** The node of a term. */
  Node node(PathTerm term, Scope scope) {
    Lookup lookup = shared.lookup();
    if (term instanceof PathTerm.Named named) {
      return new PathNode.Same(lookup.path(named.reference(), scope));
    } else if (term instanceof PathTerm.Straight straight) {
      return new PathNode.Polyline(
          List.of(lookup.point(straight.from(), scope), lookup.point(straight.to(), scope)));
    } else if (term instanceof PathTerm.StraightOn) {
      shared.problems().add(shared.problems().at(term.span(), "straight-alone"));
      return new Broken();
    } else if (term instanceof PathTerm.Part part) {
      return new PathNode.Part(
          slot(part.path(), scope),
          part.from().map(from -> lookup.point(from, scope)).orElse(Node.NONE),
          part.to().map(to -> lookup.point(to, scope)).orElse(Node.NONE));
    } else if (term instanceof PathTerm.Reversed reversed) {
      return new PathNode.Reversed(slot(reversed.path(), scope));
    } else if (term instanceof PathTerm.Moved moved) {
      return new PathNode.Moved(slot(moved.path(), scope), all.moves().slot(moved.move(), scope));
    } else if (term instanceof PathTerm.Offset offset) {
      return new PathNode.Offset(
          slot(offset.path(), scope), all.numbers().slot(offset.distance(), scope), offset.left());
    }
    if (term instanceof PathTerm.Traced traced) {
      return all.tracings().path(traced.line(), traced.span(), scope);
    }
    return chain(((PathTerm.Chain) term).parts(), scope);
  }

  /** The node of parts end to end, of which the first and the last are drawn. */
  Node chain(List<PathTerm> parts, Scope scope) {
    List<Integer> slots = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      PathTerm part = parts.get(i);
      boolean between = i > 0 && i + 1 < parts.size() && slots.get(i - 1) != Node.NONE;
      boolean straightOn = part instanceof PathTerm.StraightOn;
      slots.add(straightOn && between ? Node.NONE : slot(part, scope));
    }
    return slots.size() == 1 ? new PathNode.Same(slots.get(0)) : new PathNode.Chain(slots);
  }
}
