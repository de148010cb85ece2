package org.hemwright.draft.plan.piece;

import org.hemwright.draft.plan.node.Node;

/**
 * How an edge is drawn.
 *
 * @param name its name
 * @param slot the slot of its path; {@link Node#NONE} where it is straight from the edge before it
 *     to the one after it
 * @param straightBefore whether it starts with a straight stretch from the end of the edge before
 * @param straightAfter whether it ends with a straight stretch to the start of the edge after
 */
public record EdgeForm(String name, int slot, boolean straightBefore, boolean straightAfter) {
  /** Whether nothing of it is drawn but a straight stretch. */
  public boolean isStraight() {
    return slot == Node.NONE;
  }
}
