package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;

/** Looks over an elastic: it has a width and a length, and an overlap of 0 or more. */
public record ElasticNode(int width, int length, int overlap, int round, int over, int stretch)
    implements NumberNode {
  @Override
  public int[] inputs() {
    return Node.slots(width, length, overlap, round, over, stretch);
  }

  @Override
  public Kind typed(Typing typing) {
    typing.length(width);
    typing.length(length);
    typing.length(overlap);
    for (int slot : Node.slots(round, over)) {
      typing.length(slot);
    }
    if (stretch != NONE) {
      typing.plain(stretch);
    }
    return Kind.LENGTH;
  }

  @Override
  public double value(Values values) {
    double wide = values.number(width);
    double loop = values.number(length);
    double over = values.number(overlap);
    if (stretch != NONE && !(values.number(stretch) > 0)) {
      throw new Failure(
          Cause.of("elastic-without-stretch")
              .with("stretch", Argument.of(Quantity.ratio(values.number(stretch)))));
    }
    if (!(wide > Tolerance.SAME_POINT && loop > Tolerance.SAME_POINT && over >= 0)) {
      throw new Failure(
          Cause.of("elastic-without-length")
              .with("width", Argument.mm(wide))
              .with("length", Argument.mm(loop))
              .with("overlap", Argument.mm(over)));
    }
    return loop;
  }
}
