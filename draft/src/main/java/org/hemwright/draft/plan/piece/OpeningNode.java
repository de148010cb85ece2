package org.hemwright.draft.plan.piece;

import java.util.Optional;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.BodyOpening;

/**
 * An edge that goes over the body.
 *
 * @param over the slot of what it must pass, or {@link Node#NONE}
 * @param overName its name, or empty
 * @param kind what closes a slit beside it, if anything does
 * @param slit the slot of how far the slit reaches, or NONE
 */
public record OpeningNode(
    String edge,
    int over,
    String overName,
    Optional<BodyOpening.Kind> kind,
    int slit,
    Origin origin)
    implements DrawnNode<BodyOpening> {
  @Override
  public int[] inputs() {
    return Node.slots(over, slit);
  }

  @Override
  public void check(Typing typing) {
    for (int slot : inputs()) {
      typing.length(slot);
    }
  }

  @Override
  public BodyOpening value(Values values) {
    Optional<BodyOpening.Closure> closure = Optional.empty();
    if (kind.isPresent()) {
      double length = values.number(slit);
      if (!(length > 0)) {
        throw new Failure(
            Cause.of("closure-without-length")
                .with("edge", edge)
                .with("length", Argument.mm(length)));
      }
      closure = Optional.of(new BodyOpening.Closure(kind.get(), length));
    }
    return new BodyOpening(
        edge, over == Node.NONE ? Optional.empty() : Optional.of(overName), closure, origin);
  }
}
