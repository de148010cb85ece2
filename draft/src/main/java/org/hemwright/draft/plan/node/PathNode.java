package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;

/** A node that gives a path. */
public interface PathNode extends DrawnNode<Path> {
  @Override
  default int cost() {
    return 10;
  }

  /** Another path, under a name of its own. */
  record Same(int of) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(of);
    }

    @Override
    public Path value(Values values) {
      return values.path(of);
    }
  }

  /** Straight from point to point. */
  record Polyline(List<Integer> points) implements PathNode {
    public Polyline {
      points = List.copyOf(points);
    }

    @Override
    public int[] inputs() {
      return points.stream().mapToInt(point -> point).toArray();
    }

    @Override
    public Path value(Values values) {
      values.spend(2L * points.size());
      List<Point> through = new ArrayList<>(points.size());
      for (int point : points) {
        through.add(values.point(point));
      }
      return Path.polyline(through);
    }
  }

  /** Straight from a point, a distance in a direction. */
  record Toward(int from, int direction, int distance) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, direction, distance);
    }

    @Override
    public void check(Typing typing) {
      typing.length(distance);
    }

    @Override
    public Path value(Values values) {
      Point start = values.point(from);
      return Path.straight(
          start, start.plus(values.direction(direction).times(values.number(distance))));
    }
  }

  /** The arc about a centre from a point, turning by an angle. */
  record ArcAbout(int centre, int from, int turning) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(centre, from, turning);
    }

    @Override
    public void check(Typing typing) {
      typing.angle(turning);
    }

    @Override
    public Path value(Values values) {
      return CircularArc.about(values.point(centre), values.point(from), values.number(turning));
    }

    @Override
    public int cost() {
      return 30;
    }
  }

  /** The arc between two points with a radius. */
  record ArcRadius(int from, int to, int radius, boolean bulgingLeft, boolean longWay)
      implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, to, radius);
    }

    @Override
    public void check(Typing typing) {
      typing.length(radius);
    }

    @Override
    public Path value(Values values) {
      return CircularArc.between(
          values.point(from), values.point(to), values.number(radius), !bulgingLeft, longWay);
    }

    @Override
    public int cost() {
      return 30;
    }
  }

  /** The arc through three points. */
  record ArcThrough(int from, int through, int to) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, through, to);
    }

    @Override
    public Path value(Values values) {
      return CircularArc.through(values.point(from), values.point(through), values.point(to));
    }

    @Override
    public int cost() {
      return 30;
    }
  }

  /** The stretch of a path between two points on it; against the path where they lie so. */
  record Part(int path, int from, int to) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, from, to);
    }

    @Override
    public Path value(Values values) {
      Path whole = values.path(path);
      double start = from == NONE ? 0 : OnPath.distance(values, path, from);
      double end = to == NONE ? whole.length() : OnPath.distance(values, path, to);
      if (Math.abs(start - end) <= Tolerance.SAME_POINT && !whole.isClosed()) {
        throw new Failure(
            Cause.of("part-without-length").with("path", values.program().text(path)));
      }
      return start > end && !whole.isClosed()
          ? whole.part(end, start).reversed()
          : whole.part(start, end);
    }

    @Override
    public int cost() {
      return 60;
    }
  }

  /** A path walked the other way. */
  record Reversed(int path) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(path);
    }

    @Override
    public Path value(Values values) {
      return values.path(path).reversed();
    }
  }

  /** A path carried by a motion. */
  record Moved(int path, int motion) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, motion);
    }

    @Override
    public Path value(Values values) {
      Path still = values.path(path);
      return still.moved(values.motion(motion));
    }
  }

  /** The path that runs beside another. */
  record Offset(int path, int distance, boolean left) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, distance);
    }

    @Override
    public void check(Typing typing) {
      typing.length(distance);
    }

    @Override
    public Path value(Values values) {
      Path along = values.path(path);
      values.spend(500L * along.curves().size());
      double aside = values.number(distance);
      return OffsetPath.of(along, left ? aside : -aside);
    }
  }

  /**
   * Paths end to end.
   *
   * @param parts slots, or {@link #NONE} for straight on to the start of the next
   */
  record Chain(List<Integer> parts) implements PathNode {
    public Chain {
      parts = List.copyOf(parts);
    }

    @Override
    public int[] inputs() {
      return parts.stream().mapToInt(part -> part).filter(part -> part != NONE).toArray();
    }

    @Override
    public Path value(Values values) {
      Path last = values.path(parts.get(0));
      List<Curve> curves = new ArrayList<>(last.curves());
      for (int i = 1; i < parts.size(); i++) {
        boolean straight = parts.get(i) == NONE;
        i += straight ? 1 : 0;
        Path next = values.path(parts.get(i));
        if (!last.end().isAt(next.start())) {
          if (!straight) {
            throw gap(values, last, parts.get(i - 1), next, parts.get(i));
          }
          curves.addAll(Path.straight(last.end(), next.start()).curves());
        }
        curves.addAll(next.curves());
        last = next;
      }
      return Path.of(curves);
    }

    private static Failure gap(Values values, Path last, int before, Path next, int after) {
      Program program = values.program();
      boolean turned = last.end().isAt(next.end());
      return new Failure(
          Cause.of(turned ? "chain-turned" : "chain-gap")
              .with("before", program.text(before))
              .with("after", program.text(after))
              .with("gap", Argument.mm(last.end().distanceTo(next.start())))
              .at(last.end()));
    }
  }
}
