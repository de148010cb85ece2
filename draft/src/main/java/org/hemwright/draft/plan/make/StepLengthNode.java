package org.hemwright.draft.plan.make;

import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NumberNode;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;

/** Looks over a number that a step names: it is a length of 0 or more. */
record StepLengthNode(int length) implements NumberNode {
  @Override
  public int[] inputs() {
    return Node.slots(length);
  }

  @Override
  public Kind typed(Typing typing) {
    typing.length(length);
    return Kind.LENGTH;
  }

  @Override
  public double value(Values values) {
    double mm = values.number(length);
    if (!(mm >= 0)) {
      throw new Failure(Cause.of("step-length-below-nothing").with("length", Argument.mm(mm)));
    }
    return mm;
  }
}
