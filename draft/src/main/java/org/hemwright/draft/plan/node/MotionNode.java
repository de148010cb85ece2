package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/** A node that gives a motion: how a copy of a drawn thing is moved, turned or mirrored. */
public interface MotionNode extends DrawnNode<Motion> {
  /** Mirrored across a straight path. */
  record Mirrored(int axis) implements MotionNode {
    @Override
    public int[] inputs() {
      return Node.slots(axis);
    }

    @Override
    public Motion value(Values values) {
      Path path = values.path(axis);
      if (!isStraight(path)) {
        throw new Failure(Cause.of("axis-bent").with("path", values.program().text(axis)));
      }
      return Motion.mirror(path.start(), path.end());
    }

    /** Whether a path keeps to the straight way between its ends. */
    public static boolean isStraight(Path path) {
      Point start = path.start();
      if (start.isAt(path.end())) {
        return false;
      }
      Vector along = path.end().minus(start).unit();
      for (Curve curve : path.curves()) {
        if (aside(along, start, curve.end())
            || (curve instanceof Cubic cubic
                && (aside(along, start, cubic.control1())
                    || aside(along, start, cubic.control2())))) {
          return false;
        }
      }
      return true;
    }

    private static boolean aside(Vector along, Point start, Point point) {
      return Math.abs(along.cross(point.minus(start))) > Tolerance.DRAWN_LENGTH;
    }
  }

  /** Moved a distance in a direction. */
  record Moved(int direction, int distance) implements MotionNode {
    @Override
    public int[] inputs() {
      return Node.slots(direction, distance);
    }

    @Override
    public void check(Typing typing) {
      typing.length(distance);
    }

    @Override
    public Motion value(Values values) {
      return Motion.move(values.direction(direction).times(values.number(distance)));
    }
  }

  /** Moved by the step between two points. */
  record MovedFromTo(int from, int to) implements MotionNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, to);
    }

    @Override
    public Motion value(Values values) {
      return Motion.move(values.point(to).minus(values.point(from)));
    }
  }

  /** Turned about a point, counter-clockwise. */
  record Turned(int angle, int about) implements MotionNode {
    @Override
    public int[] inputs() {
      return Node.slots(angle, about);
    }

    @Override
    public void check(Typing typing) {
      typing.angle(angle);
    }

    @Override
    public Motion value(Values values) {
      return Motion.turn(values.point(about), values.number(angle));
    }
  }

  /** One motion and then another. */
  record Then(int first, int next) implements MotionNode {
    @Override
    public int[] inputs() {
      return Node.slots(first, next);
    }

    @Override
    public Motion value(Values values) {
      return values.motion(first).then(values.motion(next));
    }
  }
}
