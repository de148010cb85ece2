package org.hemwright.draft.plan.piece;

import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Grain;

/** A node that gives a piece's grain arrow. */
public interface GrainNode extends DrawnNode<Grain> {
  /** From one point to another, exactly there. */
  record FromTo(int from, int to, Origin origin) implements GrainNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, to);
    }

    @Override
    public Grain value(Values values) {
      Point foot = values.point(from);
      Point head = values.point(to);
      if (foot.isAt(head)) {
        throw new Failure(
            Cause.of("points-together")
                .with("first", values.program().text(from))
                .with("second", values.program().text(to)));
      }
      return new Grain(foot, head, origin);
    }
  }

  /** In a direction, in the middle of the piece. */
  record Way(int direction, int outline, Origin origin) implements GrainNode {
    @Override
    public int[] inputs() {
      return Node.slots(direction, outline);
    }

    @Override
    public Grain value(Values values) {
      Outline piece = values.thing(outline, DrawnOutline.class).stitchLine();
      return Arrow.in(piece, values.direction(direction), origin);
    }

    @Override
    public int cost() {
      return 40;
    }
  }

  /**
   * Parallel to the straight way between a path's ends, in the middle of the piece; it points up
   * the piece, or right where it lies level.
   */
  record Along(int path, int outline, Origin origin) implements GrainNode {
    @Override
    public int[] inputs() {
      return Node.slots(path, outline);
    }

    @Override
    public Grain value(Values values) {
      Path line = values.path(path);
      if (line.start().isAt(line.end())) {
        throw new Failure(Cause.of("grain-round").with("path", values.program().text(path)));
      }
      Vector way = line.end().minus(line.start()).unit();
      boolean level = Math.abs(way.dy()) <= Tolerance.SAME_DIRECTION;
      boolean back = level ? way.dx() < 0 : way.dy() < 0;
      Outline piece = values.thing(outline, DrawnOutline.class).stitchLine();
      return Arrow.in(piece, back ? way.negated() : way, origin);
    }

    @Override
    public int cost() {
      return 40;
    }
  }

  /** Finds room for an arrow inside a piece. */
  final class Arrow {
    /** An arrow takes this share of the room that there is. */
    private static final double SHARE = 0.7;

    /** Where across the piece room is looked for, from the middle outward. */
    private static final double[] TRIES = {0, -0.15, 0.15, -0.3, 0.3, -0.42, 0.42};

    private Arrow() {}

    /** The arrow in a direction on the first line that has room for half the piece's length. */
    static Grain in(Outline piece, Vector way, Origin origin) {
      Box box = piece.bounds();
      Point middle = box.centre();
      double wide = Math.abs(way.dy()) * box.width() + Math.abs(way.dx()) * box.height();
      double high = Math.abs(way.dx()) * box.width() + Math.abs(way.dy()) * box.height();
      Point best = middle;
      Across.Stretch longest = new Across.Stretch(0, 0);
      for (double share : TRIES) {
        Point on = middle.plus(way.left().times(share * wide));
        for (Across.Stretch stretch : Across.of(piece, on, way)) {
          if (stretch.length() > longest.length()) {
            longest = stretch;
            best = on;
          }
        }
        if (longest.length() >= high / 2) {
          break;
        }
      }
      double spare = longest.length() * (1 - SHARE) / 2;
      Point foot = best.plus(way.times(longest.from() + spare));
      Point head = best.plus(way.times(longest.to() - spare));
      if (foot.isAt(head)) {
        throw new Failure(Cause.of("grain-without-room"));
      }
      return new Grain(foot, head, origin);
    }
  }
}
