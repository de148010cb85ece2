package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/** Looks over a dial: it stands between its ends, and all three are of one quantity. */
public record DialNode(int value, int from, int to) implements NumberNode {
  @Override
  public int[] inputs() {
    return Node.slots(value, from, to);
  }

  @Override
  public Kind typed(Typing typing) {
    typing.alike(value, from, "ends-of-a-range");
    return typing.alike(value, to, "ends-of-a-range");
  }

  @Override
  public double value(Values values) {
    double now = values.number(value);
    double least = values.number(from);
    double most = values.number(to);
    if (!(least <= now && now <= most)) {
      QuantityKind kind = values.program().kind(value).quantity().orElse(QuantityKind.NUMBER);
      throw new Failure(
          Cause.of("dial-outside")
              .with("name", values.program().text(value))
              .with("value", Argument.of(new Quantity(kind, now)))
              .with("from", Argument.of(new Quantity(kind, least)))
              .with("to", Argument.of(new Quantity(kind, most))));
    }
    return now;
  }
}
