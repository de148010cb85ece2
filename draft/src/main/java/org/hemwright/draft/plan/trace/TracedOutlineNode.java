package org.hemwright.draft.plan.trace;

import java.util.List;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline;
import org.hemwright.draft.plan.piece.OutlineNode;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.traced.GradedOutline;

/**
 * The outline of a traced piece.
 *
 * @param shape the slot of its shape
 */
public record TracedOutlineNode(int shape) implements DrawnNode<DrawnOutline> {
  @Override
  public int[] inputs() {
    return Node.slots(shape);
  }

  @Override
  public int cost() {
    return 40;
  }

  @Override
  public DrawnOutline value(Values values) {
    List<Path> edges = values.thing(shape, GradedOutline.class).edges();
    return OutlineNode.ofEdges(edges);
  }
}
