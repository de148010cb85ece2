package org.hemwright.draft.plan.piece;

import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.SewnPath;
import org.hemwright.draft.plan.node.Values;

/**
 * An edge of a shaped outline, in the direction in which the designer draws it. It is a path, along
 * which lengths are told as sewn.
 *
 * @param outline the slot of the outline
 * @param index the edge's place in her list
 */
public record SewnEdgeNode(int outline, int index) implements DrawnNode<SewnPath> {
  @Override
  public int[] inputs() {
    return Node.slots(outline);
  }

  @Override
  public SewnPath value(Values values) {
    return values.thing(outline, DrawnOutline.class).edge(index).sewn();
  }
}
