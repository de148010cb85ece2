package org.hemwright.draft.plan.piece;

import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PathNode;
import org.hemwright.draft.plan.node.PointNode;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/** What is drafted on a piece, carried to where the piece lies after it is shaped. */
public final class Carried {
  private Carried() {}

  /** A point. */
  public record OfPoint(int outline, int point) implements PointNode {
    @Override
    public int[] inputs() {
      return Node.slots(outline, point);
    }

    @Override
    public Point value(Values values) {
      Point drafted = values.point(point);
      return values.thing(outline, DrawnOutline.class).motionAt(drafted).apply(drafted);
    }
  }

  /** A line, as a whole, with the part on which its middle lies. */
  public record OfPath(int outline, int path) implements PathNode {
    @Override
    public int[] inputs() {
      return Node.slots(outline, path);
    }

    @Override
    public Path value(Values values) {
      Path drafted = values.path(path);
      Point middle = drafted.at(drafted.length() / 2).point();
      return drafted.moved(values.thing(outline, DrawnOutline.class).motionAt(middle));
    }
  }
}
