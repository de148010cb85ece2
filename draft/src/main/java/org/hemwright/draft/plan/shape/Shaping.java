package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Span;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/** Collects, for one piece in one size, what comes apart and what moves. */
final class Shaping {
  private final Values values;
  private final DrawnOutline outline;
  private final int anchor;
  private final Darts darts = new Darts();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Region> regions = new ArrayList<>();

  /**
   * Nothing yet.
   *
   * @param anchor the place in the designer's list of the edge that stays where it is
   */
  Shaping(Values values, DrawnOutline outline, int anchor) {
    this.values = values;
    this.outline = outline;
    this.anchor = anchor;
  }

  void add(ShapeForm form) {
    if (form instanceof DartForm dart) {
      darts.add(dart.dart(values, outline));
    } else if (form instanceof DartMove move) {
      darts.move(move, values, outline);
    } else if (form instanceof CutForm cut) {
      cut(cut);
    } else if (form instanceof PleatForm pleat) {
      pleat(pleat);
    }
  }

  private void cut(CutForm cut) {
    List<double[]> ends = EdgeSpot.pairs(cut.far(), cut.near(), values, outline);
    OptionalDouble blend =
        cut.asCut()
            ? OptionalDouble.of(0)
            : cut.blend() == Node.NONE
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, values.number(cut.blend())));
    for (double[] each : ends) {
      Point from = cut.far().point(outline, each[0]);
      double[] widths = cut.widths(values, from, cut.near().point(outline, each[1]));
      Ends both = ends(cut.far(), each[0], cut.near(), each[1], cut.span());
      boolean farFirst = both.first.point.equals(from);
      Opening opening = both.opening(widths[farFirst ? 0 : 1], widths[farFirst ? 1 : 0]);
      regions.add(both.region(opening));
      joints.add(both.joint(both.first, both.second, opening, Optional.empty(), blend));
      joints.add(both.joint(both.second, both.first, opening.inverse(), Optional.empty(), blend));
    }
  }

  private void pleat(PleatForm pleat) {
    double deep = pleat.deep(values);
    for (PleatForm.Cut cut : pleat.cuts(values, outline)) {
      Ends ends = ends(pleat.spot(), cut.at(), pleat.to(), cut.farAt(), pleat.span());
      boolean nearFirst = ends.first.edge == pleat.spot().edge() && ends.first.at == cut.at();
      End near = nearFirst ? ends.first : ends.second;
      End far = nearFirst ? ends.second : ends.first;
      double wide = 2 * deep * cut.folds().size();
      Opening whole =
          ends.opening(
              nearFirst || !pleat.fades() ? wide : 0, nearFirst && pleat.fades() ? 0 : wide);
      Opening one =
          ends.opening(
              nearFirst || !pleat.fades() ? 2 * deep : 0,
              nearFirst && pleat.fades() ? 0 : 2 * deep);
      regions.add(ends.region(whole));
      for (boolean back : cut.folds()) {
        Joint.Fold fold = new Joint.Fold(pleat.name(), back, 0, true, pleat.origin());
        joints.add(
            ends.joint(
                near,
                far,
                nearFirst ? one : one.inverse(),
                Optional.of(fold),
                OptionalDouble.empty()));
      }
      joints.add(
          ends.joint(
              far,
              near,
              nearFirst ? whole.inverse() : whole,
              Optional.empty(),
              OptionalDouble.empty()));
    }
  }

  /** One end of a cut, and how far round the outline it lies. */
  private record End(int edge, double at, Point point, double round) {}

  /** Both ends of a cut, in the order in which the outline meets them. */
  private record Ends(End first, End second, Span span) {
    Opening opening(double atFirst, double atSecond) {
      return Opening.ofCut(first.point, second.point, atFirst, atSecond);
    }

    Region region(Opening opening) {
      return new Region(first.round, second.round, Optional.empty(), opening.motion(1), span);
    }

    Joint joint(
        End here, End there, Opening opening, Optional<Joint.Fold> fold, OptionalDouble blend) {
      return new Joint(here.edge, here.at, here.point, there.point, 0, opening, fold, blend, span);
    }
  }

  private Ends ends(EdgeSpot one, double at, EdgeSpot other, double otherAt, Span span) {
    End here = new End(one.edge(), at, one.point(outline, at), round(one.edge(), at));
    End there =
        new End(other.edge(), otherAt, other.point(outline, otherAt), round(other.edge(), otherAt));
    Path line = Path.straight(here.point, there.point);
    for (Meeting meeting : line.meetings(outline.stitchLine().path())) {
      double on = meeting.distanceOnThis();
      if (on > Tolerance.DRAWN_LENGTH && on < line.length() - Tolerance.DRAWN_LENGTH) {
        throw new Failure(Cause.of("cut-leaves-piece").at(meeting.point()));
      }
    }
    return here.round <= there.round ? new Ends(here, there, span) : new Ends(there, here, span);
  }

  /** How far round the outline a place on an edge lies, from the start of the anchor. */
  private double round(int edge, double at) {
    double walked = 0;
    for (DrawnEdge each : inOrder()) {
      if (each.index() == edge) {
        return walked + at;
      }
      walked += each.path().length();
    }
    throw new IllegalArgumentException("an outline has no edge " + edge);
  }

  /** How far round the outline an edge starts. */
  double startOf(int edge) {
    return round(edge, 0);
  }

  /** The outline as drafted, from the start of the anchor. */
  Path round() {
    List<Curve> curves = new ArrayList<>();
    inOrder().forEach(edge -> curves.addAll(edge.path().curves()));
    return Path.of(curves);
  }

  private List<DrawnEdge> inOrder() {
    List<DrawnEdge> all = outline.edges();
    int first = all.indexOf(outline.edge(anchor));
    List<DrawnEdge> order = new ArrayList<>(all.subList(first, all.size()));
    order.addAll(all.subList(0, first));
    return order;
  }

  /** The joints on all edges. */
  List<Joint> joints() {
    List<Joint> all = new ArrayList<>(joints);
    darts.all().forEach(dart -> all.add(dart.joint(values, outline)));
    return all;
  }

  /** What moves, the outermost first; regions that are neither apart nor one in another refused. */
  List<Region> regions() {
    List<Region> all = new ArrayList<>(regions);
    List<Darts.Dart> left = new ArrayList<>(darts.all());
    left.removeIf(
        dart -> left.stream().noneMatch(other -> other.sharesApex(dart) && other.turn() != 0));
    while (!left.isEmpty()) {
      Darts.Dart lead = left.get(0);
      List<Darts.Dart> group = new ArrayList<>(left);
      group.removeIf(dart -> !dart.sharesApex(lead));
      left.removeAll(group);
      group.sort(Comparator.comparingDouble(dart -> round(dart.spot().edge(), dart.at())));
      double turned = 0;
      for (int i = 0; i + 1 < group.size(); i++) {
        turned += group.get(i).turn();
        if (turned != 0) {
          all.add(
              new Region(
                  round(group.get(i).spot().edge(), group.get(i).at()),
                  round(group.get(i + 1).spot().edge(), group.get(i + 1).at()),
                  Optional.of(lead.apex()),
                  Motion.turn(lead.apex(), turned),
                  group.get(i).span()));
        }
      }
    }
    all.sort(
        Comparator.comparingDouble(Region::enter)
            .thenComparing(Region::leave, Comparator.reverseOrder()));
    refuseCrossing(all);
    return all;
  }

  private static void refuseCrossing(List<Region> all) {
    for (int i = 0; i < all.size(); i++) {
      for (Region later : all.subList(i + 1, all.size())) {
        Region region = all.get(i);
        if (later.enter() < region.leave() && later.leave() > region.leave()) {
          throw new Failure(Cause.of("cuts-cross").at(later.span()));
        }
      }
    }
  }
}
