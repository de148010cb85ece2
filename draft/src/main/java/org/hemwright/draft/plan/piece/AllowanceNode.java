package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.Allowance;

/**
 * What is added outside an edge.
 *
 * @param folds the slots of the depths: one, or two for a hem turned twice; none for nothing
 * @param turnedBack whether it is folded back along the edge
 */
public record AllowanceNode(List<Integer> folds, boolean turnedBack)
    implements DrawnNode<Allowance> {
  public AllowanceNode {
    folds = List.copyOf(folds);
  }

  @Override
  public int[] inputs() {
    return folds.stream().mapToInt(fold -> fold).toArray();
  }

  @Override
  public void check(Typing typing) {
    folds.forEach(typing::length);
  }

  @Override
  public Allowance value(Values values) {
    List<Double> depths = new ArrayList<>();
    for (int fold : folds) {
      double depth = values.number(fold);
      if (depth < 0 || (turnedBack && depth == 0)) {
        throw new Failure(
            Cause.of(turnedBack ? "hem-not-deep" : "allowance-inward")
                .with("allowance", values.program().text(fold))
                .with("value", Argument.mm(depth)));
      }
      depths.add(depth);
    }
    if (depths.isEmpty()) {
      return Allowance.NONE;
    }
    return turnedBack ? new Allowance.TurnedBack(depths) : new Allowance.Plain(depths.get(0));
  }
}
