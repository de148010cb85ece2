package org.hemwright.draft.plan.trace;

import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.traced.GradedOutline;
import org.hemwright.pattern.traced.OutlineGrading;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * A traced outline beside itself in one size.
 *
 * @param grading how it changes from size to size
 */
public record TracedShapeNode(OutlineGrading grading) implements DrawnNode<GradedOutline> {
  @Override
  public int[] inputs() {
    return Node.slots();
  }

  @Override
  public int cost() {
    return 400;
  }

  @Override
  public GradedOutline value(Values values) {
    try {
      return grading.in(values.size().position());
    } catch (TracingProblem problem) {
      Cause cause = Cause.of(problem.code());
      for (var argument : problem.arguments().entrySet()) {
        cause = cause.with(argument.getKey(), argument.getValue());
      }
      throw new Failure(cause);
    }
  }
}
