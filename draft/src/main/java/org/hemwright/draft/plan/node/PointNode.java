package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.PointRule;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;

/** A node that gives a point. */
public interface PointNode extends DrawnNode<Point> {
  /** Right and up from the origin. */
  record At(int x, int y) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(x, y);
    }

    @Override
    public void check(Typing typing) {
      typing.length(x);
      typing.length(y);
    }

    @Override
    public Point value(Values values) {
      return new Point(values.number(x), values.number(y));
    }
  }

  /** Another point, under a name of its own. */
  record Same(int of) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(of);
    }

    @Override
    public Point value(Values values) {
      return values.point(of);
    }
  }

  /** A distance away in a direction. */
  record Step(int from, int direction, int distance) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, direction, distance);
    }

    @Override
    public void check(Typing typing) {
      typing.length(distance);
    }

    @Override
    public Point value(Values values) {
      return values.point(from).plus(values.direction(direction).times(values.number(distance)));
    }
  }

  /** A length or a share along a path. */
  record Along(int path, int amount, boolean fromEnd) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, amount);
    }

    @Override
    public void check(Typing typing) {
      typing.lengthOrShare(amount);
    }

    @Override
    public Point value(Values values) {
      return values.path(path).at(OnPath.distance(values, path, amount, fromEnd)).point();
    }

    @Override
    public int cost() {
      return 40;
    }
  }

  /** The middle of a path. */
  record Middle(int path) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(path);
    }

    @Override
    public Point value(Values values) {
      Path line = values.path(path);
      return line.at(line.length() / 2).point();
    }

    @Override
    public int cost() {
      return 40;
    }
  }

  /** A point that must lie on a path. */
  record OnPathAt(int path, int point) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, point);
    }

    @Override
    public Point value(Values values) {
      return values.path(path).at(OnPath.distance(values, path, point)).point();
    }

    @Override
    public int cost() {
      return 60;
    }
  }

  /** A share of the straight way between two points. */
  record Share(int share, int from, int to) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(share, from, to);
    }

    @Override
    public void check(Typing typing) {
      typing.plain(share);
    }

    @Override
    public Point value(Values values) {
      return values.point(from).toward(values.point(to), values.number(share));
    }
  }

  /** Where two paths meet. */
  record Meet(int path, int other, PointRule.Which which, int nearest) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, other, nearest);
    }

    @Override
    public Point value(Values values) {
      Path first = values.path(path);
      Path second = values.path(other);
      values.spend(100L * first.curves().size() * second.curves().size());
      List<Point> places = new ArrayList<>();
      for (Meeting meeting : first.meetings(second)) {
        places.add(meeting.point());
      }
      if (places.isEmpty()) {
        throw new Failure(
            Cause.of("no-meeting")
                .with("first", values.program().text(path))
                .with("second", values.program().text(other)));
      }
      return Pick.of(values, which, nearest, places, path);
    }

    @Override
    public int cost() {
      return 100;
    }
  }

  /** The foot of the perpendicular from a point to a path. */
  record Foot(int from, int onto) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, onto);
    }

    @Override
    public Point value(Values values) {
      Point start = values.point(from);
      Path path = values.path(onto);
      PathPlace nearest = path.nearest(start);
      double gap = nearest.point().distanceTo(start);
      Vector across = start.minus(nearest.point());
      if (gap > Tolerance.DRAWN_LENGTH
          && Math.abs(across.dot(nearest.tangent())) > Tolerance.DRAWN_LENGTH) {
        throw new Failure(
            Cause.of("foot-off-path")
                .with("point", values.program().text(from))
                .with("path", values.program().text(onto)));
      }
      return nearest.point();
    }

    @Override
    public int cost() {
      return 80;
    }
  }

  /** A point, carried by a motion. */
  record Moved(int point, int motion) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(point, motion);
    }

    @Override
    public Point value(Values values) {
      return values.motion(motion).apply(values.point(point));
    }
  }

  /** Chooses among several places. */
  final class Pick {
    private Pick() {}

    /**
     * The place meant.
     *
     * @param places one at least
     * @param path the slot of the path that they are on
     */
    static Point of(
        Values values, PointRule.Which which, int nearest, List<Point> places, int path) {
      if (places.size() == 1) {
        return places.get(0);
      }
      return switch (which) {
        case FIRST -> places.get(0);
        case LAST -> places.get(places.size() - 1);
        case NEAREST -> nearest(values.point(nearest), places);
        case ONLY -> {
          Cause several = Cause.of("several-places").with("count", Argument.of(places.size()));
          throw new Failure(
              several
                  .with("first", values.program().text(path))
                  .with("x", Argument.mm(places.get(0).x()))
                  .with("y", Argument.mm(places.get(0).y()))
                  .at(places.get(0)));
        }
      };
    }

    private static Point nearest(Point to, List<Point> places) {
      Point best = places.get(0);
      for (Point place : places) {
        if (place.distanceTo(to) < best.distanceTo(to)) {
          best = place;
        }
      }
      return best;
    }
  }
}
