package org.hemwright.draft.plan.trace;

import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PathNode;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.traced.GradedOutline;

/**
 * A line of a drawing, carried to each size.
 *
 * @param shape the slot of the traced shape, or {@link Node#NONE} where the piece's outline is not
 *     traced
 * @param traced as it was drawn
 */
public record TracedPathNode(int shape, Path traced) implements PathNode {
  @Override
  public int[] inputs() {
    return Node.slots(shape);
  }

  @Override
  public Path value(Values values) {
    values.spend(100L * traced.curves().size());
    return shape == Node.NONE ? traced : values.thing(shape, GradedOutline.class).carried(traced);
  }
}
