package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * Looks over a seam's ease: a length or a share, the least not above the most. A layer that is
 * stretched keeps some length: more than minus 100 %.
 *
 * @param least the slot of the least, or of the stretch
 * @param most the slot of the most, or {@link Node#NONE}
 * @param stretched whether it is a stretch
 */
public record EaseNode(int least, int most, boolean stretched) implements NumberNode {
  @Override
  public int[] inputs() {
    return Node.slots(least, most);
  }

  @Override
  public Kind typed(Typing typing) {
    typing.lengthOrShare(least);
    if (most != NONE) {
      typing.lengthOrShare(most);
      return typing.alike(least, most, "ends-of-a-range");
    }
    return typing.kind(least);
  }

  @Override
  public double value(Values values) {
    double from = values.number(least);
    double to = most == NONE ? from : values.number(most);
    boolean share = values.program().kind(least) != Kind.LENGTH;
    if (stretched && share && from <= -1) {
      throw new Failure(Cause.of("stretched-away").with("by", Argument.of(Quantity.ratio(from))));
    }
    if (from > to) {
      QuantityKind kind = values.program().kind(least).quantity().orElse(QuantityKind.NUMBER);
      throw new Failure(
          Cause.of("ease-downward")
              .with("least", Argument.of(new Quantity(kind, from)))
              .with("most", Argument.of(new Quantity(kind, to))));
    }
    return from;
  }
}
