package org.hemwright.draft.plan.piece;

import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.PathNode;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.geometry.Path;

/**
 * An edge of an outline, in the direction in which the designer draws it.
 *
 * @param outline the slot of the outline
 * @param index the edge's place in her list
 */
public record EdgeNode(int outline, int index) implements PathNode {
  @Override
  public int[] inputs() {
    return Node.slots(outline);
  }

  @Override
  public Path value(Values values) {
    return values.thing(outline, DrawnOutline.class).edge(index).hers();
  }
}
