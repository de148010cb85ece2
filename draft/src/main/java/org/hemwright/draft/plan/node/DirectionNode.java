package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/** A node that gives a direction, a step of length 1. */
public interface DirectionNode extends DrawnNode<Vector> {
  /** A way on the table that never changes. */
  record Fixed(Vector way) implements DirectionNode {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public Vector value(Values values) {
      return way;
    }

    @Override
    public int cost() {
      return 1;
    }
  }

  /** At an angle from the right, counter-clockwise. */
  record AtAngle(int angle) implements DirectionNode {
    @Override
    public int[] inputs() {
      return Node.slots(angle);
    }

    @Override
    public void check(Typing typing) {
      typing.angle(angle);
    }

    @Override
    public Vector value(Values values) {
      return Vector.atAngle(values.number(angle));
    }
  }

  /** From one point to another, or back. */
  record FromTo(int from, int to, boolean back) implements DirectionNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, to);
    }

    @Override
    public Vector value(Values values) {
      Point start = values.point(from);
      Point end = values.point(to);
      if (start.isAt(end)) {
        throw new Failure(
            Cause.of("points-together")
                .with("first", values.program().text(from))
                .with("second", values.program().text(to)));
      }
      Vector way = end.minus(start).unit();
      return back ? way.negated() : way;
    }
  }

  /**
   * The heading of a path at the place nearest to a point, or at its start where there is no point.
   *
   * @param quarterTurns how many quarters it is turned by, counter-clockwise
   */
  record AlongPath(int stand, int path, int quarterTurns) implements DirectionNode {
    @Override
    public int[] inputs() {
      return Node.slots(stand, path);
    }

    @Override
    public Vector value(Values values) {
      Path along = values.path(path);
      Vector heading =
          stand == NONE ? along.startDirection() : along.nearest(values.point(stand)).tangent();
      return switch (quarterTurns) {
        case 1 -> heading.left();
        case -1 -> heading.right();
        default -> heading;
      };
    }

    @Override
    public int cost() {
      return 60;
    }
  }

  /** Another direction, turned counter-clockwise. */
  record Turned(int angle, int from) implements DirectionNode {
    @Override
    public int[] inputs() {
      return Node.slots(angle, from);
    }

    @Override
    public void check(Typing typing) {
      typing.angle(angle);
    }

    @Override
    public Vector value(Values values) {
      return values.direction(from).turned(values.number(angle));
    }
  }
}
