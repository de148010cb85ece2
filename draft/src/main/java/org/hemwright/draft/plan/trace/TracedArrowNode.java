package org.hemwright.draft.plan.trace;

import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.GrainNode;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.traced.GradedOutline;

/**
 * A grain arrow of a drawing: its middle is carried to each size, its length and its way are as
 * drawn, since grain does not turn from size to size.
 *
 * @param shape the slot of the traced shape, or {@link Node#NONE}
 */
public record TracedArrowNode(int shape, Point foot, Point head, Origin origin)
    implements GrainNode {
  @Override
  public int[] inputs() {
    return Node.slots(shape);
  }

  @Override
  public int cost() {
    return 100;
  }

  @Override
  public Grain value(Values values) {
    Point middle = foot.toward(head, 0.5);
    Point carried =
        shape == Node.NONE ? middle : values.thing(shape, GradedOutline.class).carried(middle);
    Vector step = carried.minus(middle);
    return new Grain(foot.plus(step), head.plus(step), origin);
  }
}
