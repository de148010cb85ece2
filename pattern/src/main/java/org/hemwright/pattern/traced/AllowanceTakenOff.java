package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.traced.OutlineRequest.EdgeRequest;

/**
 * The stitch line inside a drawn cut line: each edge set inward by its allowance, and neighbours
 * cut or lengthened to where they meet. A stretch that is left out, as the end of an allowance is,
 * gives way to its neighbours.
 */
final class AllowanceTakenOff {
  /** How far an edge is lengthened to meet its neighbour, besides what the allowances ask (mm). */
  private static final double REACH = 20;

  private final List<EdgeRequest> wanted;
  private final List<Path> cut;
  private final boolean clockwise;

  AllowanceTakenOff(List<EdgeRequest> wanted, List<Path> cut, boolean clockwise) {
    this.wanted = wanted;
    this.cut = cut;
    this.clockwise = clockwise;
  }

  List<Path> edges() {
    boolean plain = wanted.stream().allMatch(edge -> edge.allowance() == 0 && !edge.isLeftOut());
    if (plain) {
      return cut;
    }
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      if (!wanted.get(i).isLeftOut()) {
        kept.add(i);
      }
    }
    List<Path> inside = new ArrayList<>();
    for (int i : kept) {
      inside.add(inside(i));
    }
    int count = kept.size();
    double[] from = new double[count];
    double[] to = new double[count];
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      Meeting meeting = meeting(kept.get(i), inside.get(i), kept.get(next), inside.get(next));
      to[i] = meeting.distanceOnThis();
      from[next] = meeting.distanceOnOther();
    }
    List<Path> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (!(to[i] > from[i])) {
        throw new TracingProblem("traced-allowance-eats").with("edge", name(kept.get(i)));
      }
      edges.add(inside.get(i).part(from[i], to[i]));
    }
    return welded(edges);
  }

  private String name(int edge) {
    return wanted.get(edge).name();
  }

  /** An edge set inward, lengthened straight on at both ends. */
  private Path inside(int edge) {
    double width = wanted.get(edge).allowance();
    Path set;
    try {
      set = width == 0 ? cut.get(edge) : OffsetPath.of(cut.get(edge), clockwise ? -width : width);
    } catch (GeometryProblem none) {
      throw new TracingProblem("traced-allowance-eats").with("edge", name(edge));
    }
    double reach = REACH + 4 * widest() + leftOut();
    List<Curve> curves = new ArrayList<>();
    Point start = set.start().plus(set.startDirection().times(-reach));
    Point end = set.end().plus(set.endDirection().times(reach));
    curves.add(new Line(start, set.start()));
    curves.addAll(set.curves());
    curves.add(new Line(set.end(), end));
    return Path.of(curves);
  }

  private double widest() {
    return wanted.stream().mapToDouble(EdgeRequest::allowance).max().orElse(0);
  }

  private double leftOut() {
    double longest = 0;
    for (int i = 0; i < wanted.size(); i++) {
      if (wanted.get(i).isLeftOut()) {
        longest = Math.max(longest, cut.get(i).length());
      }
    }
    return longest;
  }

  /** Where the end of an edge meets the start of the next, as near as may be to the old corner. */
  private Meeting meeting(int before, Path one, int after, Path other) {
    Point corner = cut.get(before).end().toward(cut.get(after).start(), 0.5);
    Meeting best = null;
    for (Meeting meeting : one.meetings(other)) {
      if (best == null || meeting.point().distanceTo(corner) < best.point().distanceTo(corner)) {
        best = meeting;
      }
    }
    if (best == null) {
      throw new TracingProblem("traced-allowance-corner")
          .with("before", name(before))
          .with("after", name(after))
          .with("allowance", Argument.mm(wanted.get(before).allowance()));
    }
    return best;
  }

  /** The edges with each end put exactly on the next start. */
  private static List<Path> welded(List<Path> edges) {
    List<Curve> all = new ArrayList<>();
    edges.forEach(edge -> all.addAll(edge.curves()));
    Path round = Path.of(all);
    List<Path> welded = new ArrayList<>();
    int at = 0;
    for (Path edge : edges) {
      int count = edge.curves().size();
      welded.add(Path.of(round.curves().subList(at, at + count)));
      at += count;
    }
    return welded;
  }
}
