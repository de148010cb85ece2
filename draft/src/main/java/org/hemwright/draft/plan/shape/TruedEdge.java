package org.hemwright.draft.plan.shape;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.jspecify.annotations.Nullable;

/**
 * An edge as it is sewn: folds closed, cuts spread, and one smooth line drawn across every joint
 * that needs it.
 *
 * <p>Beside a dart the line is redrawn all the way to the next joint or the end of the edge, where
 * it keeps its direction, and it goes through the ends of the legs. Beside a cut it is redrawn from
 * the middle of the stretch before to the middle of the stretch after. The designer may say how far
 * instead.
 */
final class TruedEdge {
  private final Path drafted;
  private final List<Joint> joints;
  private final List<Motion> before = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private @Nullable Path last;
  private @Nullable Way pending;
  private @Nullable SmoothCurve bridge;
  private boolean asCut;

  /** A place and the way through it. */
  private record Way(Point point, Vector direction) {}

  private TruedEdge(Path drafted, List<Joint> joints) {
    this.drafted = drafted;
    this.joints = joints;
  }

  /** Trues an edge; see {@link ShapedEdge#of}. */
  static TruedEdge of(Path drafted, List<Joint> joints, Motion start) {
    TruedEdge edge = new TruedEdge(drafted, joints);
    edge.draw(start);
    return edge;
  }

  /** The trued line, which starts where the edge starts when the piece is shaped. */
  Path path() {
    return last == null ? Path.of(curves) : last;
  }

  /** How what lies before a joint, as drafted, moves when it is sewn. */
  Motion before(int joint) {
    return before.get(joint);
  }

  private void draw(Motion start) {
    Motion here = start;
    List<Integer> trued = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      before.add(here);
      if (joints.get(i).isTrued()) {
        trued.add(i);
        here = joints.get(i).sewn().then(here);
      }
    }
    if (trued.isEmpty()) {
      last = start.equals(Motion.identity()) ? drafted : drafted.moved(start);
      return;
    }
    for (int arc = 0; arc <= trued.size(); arc++) {
      boolean ends = arc == trued.size();
      Motion own = ends ? here : before(trued.get(arc));
      double from = arc == 0 ? 0 : joints.get(trued.get(arc - 1)).at();
      double to = ends ? drafted.length() : joints.get(trued.get(arc)).at();
      double keptFrom = from + (arc == 0 ? 0 : reach(joints.get(trued.get(arc - 1)), to - from));
      double keptTo = to - (ends ? 0 : reach(joints.get(trued.get(arc)), to - from));
      asCut = arc > 0 && joints.get(trued.get(arc - 1)).isLeftAsCut();
      keep(keptFrom, keptTo, arc == 0, ends, own);
      if (!ends && joints.get(trued.get(arc)).fold().isPresent()) {
        through(own.apply(joints.get(trued.get(arc)).firstEnd()));
      }
    }
  }

  /** How far from a joint the line is redrawn, on a stretch of a length (mm). */
  private static double reach(Joint joint, double stretch) {
    if (joint.blend().isPresent()) {
      return Math.min(stretch, joint.halfMouth() + joint.blend().getAsDouble());
    }
    return joint.fold().isPresent() ? stretch : stretch / 2;
  }

  /** Keeps a stretch of the drafted line; where none is left, its end at an end of the edge. */
  private void keep(double from, double to, boolean first, boolean ends, Motion motion) {
    if (to - from > Tolerance.DRAWN_LENGTH) {
      Path stretch = drafted.part(from, to).moved(motion);
      arrive(new Way(stretch.start(), stretch.startDirection()));
      curves.addAll(stretch.curves());
      pending = new Way(stretch.end(), stretch.endDirection());
    } else if (first || ends || Math.abs(to - from) <= Tolerance.DRAWN_LENGTH) {
      PathPlace place = drafted.at(first ? 0 : ends ? drafted.length() : to);
      Vector direction = ends ? drafted.endDirection() : place.tangent();
      Way way = new Way(motion.apply(place.point()), motion.apply(direction));
      arrive(way);
      pending = way;
    }
  }

  /** Goes smoothly on through a point. */
  private void through(Point point) {
    bridge = bridge().to(point);
  }

  private SmoothCurve bridge() {
    SmoothCurve going = bridge;
    Way from = pending;
    if (going != null) {
      return going;
    }
    if (from == null) {
      throw new IllegalStateException("an edge starts with a place of its own");
    }
    return SmoothCurve.from(from.point).leaving(from.direction);
  }

  /** Ends the stretch that is being redrawn, if one is. */
  private void arrive(Way way) {
    Way from = pending;
    if (from == null) {
      return;
    }
    boolean plain = bridge == null;
    boolean together = plain && from.point.isAt(way.point);
    if (!together && plain && asCut) {
      curves.addAll(Path.straight(from.point, way.point).curves());
    } else if (!together) {
      curves.addAll(bridge().to(way.point).arriving(way.direction).path().curves());
    }
    bridge = null;
  }
}
