package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.PointRule;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;

/** A node that finds a point with a pair of compasses. */
public interface CompassNode extends PointNode {
  /** Where a path lies a distance away from a point. */
  record OnPathAway(int path, int radius, int centre, PointRule.Which which, int nearest)
      implements CompassNode {
    /** The steps of the secant rule that take a place on a drawn circle to the true one. */
    private static final int STEPS = 12;

    @Override
    public int[] inputs() {
      return Node.slots(path, radius, centre, nearest);
    }

    @Override
    public void check(Typing typing) {
      typing.length(radius);
    }

    @Override
    public Point value(Values values) {
      Path line = values.path(path);
      double far = values.number(radius);
      Point middle = values.point(centre);
      if (!(far > Tolerance.SAME_POINT)) {
        throw misses(values, far);
      }
      values.spend(200L * line.curves().size());
      Path circle = CircularArc.about(middle, middle.plus(new Vector(far, 0)), 2 * Math.PI);
      List<Point> places = new ArrayList<>();
      for (Meeting meeting : line.meetings(circle)) {
        Point place = exact(line, meeting.distanceOnThis(), middle, far);
        if (places.stream().noneMatch(place::isAt)) {
          places.add(place);
        }
      }
      if (places.isEmpty()) {
        throw misses(values, far);
      }
      return Pick.of(values, which, nearest, places, path);
    }

    private Failure misses(Values values, double far) {
      Program program = values.program();
      return new Failure(
          Cause.of("compass-misses")
              .with("path", program.text(path))
              .with("radius", Argument.mm(far))
              .with("centre", program.text(centre)));
    }

    private static Point exact(Path line, double near, Point middle, double far) {
      double place = near;
      Point point = line.at(place).point();
      for (int step = 0; step < STEPS; step++) {
        double over = point.distanceTo(middle) - far;
        Vector outward = point.minus(middle).unit();
        double slope = line.at(place).tangent().dot(outward);
        if (Math.abs(over) <= Tolerance.PLACE || Math.abs(slope) <= Tolerance.SAME_DIRECTION) {
          break;
        }
        place = Math.max(0, Math.min(line.length(), place - over / slope));
        point = line.at(place).point();
      }
      return point;
    }

    @Override
    public int cost() {
      return 400;
    }
  }

  /** A distance away from one point and another from a second. */
  record Two(int firstRadius, int first, int secondRadius, int second, boolean left)
      implements CompassNode {
    @Override
    public int[] inputs() {
      return Node.slots(firstRadius, first, secondRadius, second);
    }

    @Override
    public void check(Typing typing) {
      typing.length(firstRadius);
      typing.length(secondRadius);
    }

    @Override
    public Point value(Values values) {
      Point one = values.point(first);
      Point other = values.point(second);
      double near = values.number(firstRadius);
      double far = values.number(secondRadius);
      double apart = one.distanceTo(other);
      Program program = values.program();
      if (apart <= Tolerance.SAME_POINT) {
        throw new Failure(
            Cause.of("points-together")
                .with("first", program.text(first))
                .with("second", program.text(second)));
      }
      double along = (apart * apart + near * near - far * far) / (2 * apart);
      double square = near * near - along * along;
      boolean touching = Math.abs(square) <= Tolerance.SAME_POINT * Math.max(1, near);
      if (!(near > 0 && far > 0) || (square < 0 && !touching)) {
        throw new Failure(
            Cause.of("compasses-do-not-meet")
                .with("first", program.text(first))
                .with("firstRadius", Argument.mm(near))
                .with("second", program.text(second))
                .with("secondRadius", Argument.mm(far))
                .with("apart", Argument.mm(apart)));
      }
      Vector way = other.minus(one).unit();
      double aside = touching ? 0 : Math.sqrt(square);
      return one.plus(way.times(along)).plus((left ? way.left() : way.right()).times(aside));
    }
  }
}
