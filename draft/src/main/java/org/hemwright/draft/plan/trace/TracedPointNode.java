package org.hemwright.draft.plan.trace;

import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PointNode;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.GradedOutline;

/**
 * A point of a drawing, carried to each size.
 *
 * @param shape the slot of the traced shape, or {@link Node#NONE} where the piece's outline is not
 *     traced
 * @param traced where it was drawn
 */
public record TracedPointNode(int shape, Point traced) implements PointNode {
  @Override
  public int[] inputs() {
    return Node.slots(shape);
  }

  @Override
  public int cost() {
    return 100;
  }

  @Override
  public Point value(Values values) {
    return shape == Node.NONE ? traced : values.thing(shape, GradedOutline.class).carried(traced);
  }
}
