package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Failure;

/** Stands where the text could not be planned; what is wrong has been told. */
public record Broken() implements Node {
  @Override
  public int[] inputs() {
    return Node.slots();
  }

  @Override
  public Kind typed(Typing typing) {
    return Kind.UNKNOWN;
  }

  @Override
  public void work(Values values, int slot) {
    throw Failure.told();
  }
}
