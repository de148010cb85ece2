package org.hemwright.draft.plan.node;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * A number chosen so that two others agree.
 *
 * @param left the slot of one side
 * @param right the slot of the other
 * @param low the slot of the least it may be
 * @param high the slot of the most
 * @param cone the slots that depend on the number and that the sides depend on, in order; known
 *     once all nodes are
 * @param outside the slots that the cone reads besides, and the ends of the range
 */
public record SolveNode(
    int left, int right, int low, int high, List<Integer> cone, Set<Integer> outside)
    implements NumberNode, ChoiceNode {
  public SolveNode {
    cone = List.copyOf(cone);
    outside = Set.copyOf(outside);
  }

  /** A number whose cone is not known yet: it reads its sides and its range. */
  public static SolveNode of(int left, int right, int low, int high) {
    return new SolveNode(left, right, low, high, List.of(), Set.of(left, right, low, high));
  }

  @Override
  public int[] inputs() {
    return outside.stream().mapToInt(slot -> slot).sorted().toArray();
  }

  @Override
  public Kind typed(Typing typing) {
    return typing.alike(low, high, "ends-of-a-range");
  }

  /** Says whether the two sides can be equal at all. */
  void checkSides(Typing typing) {
    typing.alike(left, right, "set-equal");
  }

  @Override
  public void work(Values values, int slot) {
    values.need(low);
    values.need(high);
    Trial trial = new Trial(this, values, slot, cone.stream().mapToInt(i -> i).toArray());
    if (!trial.matters()) {
      values.need(left);
      values.need(right);
      throw new Failure(Cause.of("solve-idle").with("name", values.program().text(slot)));
    }
    values.put(slot, new Balance(trial, values.program().kind(slot)).place());
  }

  @Override
  public double value(Values values) {
    throw new IllegalStateException("a solved number is worked out with its slot");
  }

  /** Tries places: what the left side exceeds the right by. */
  static final class Trial {
    private final SolveNode node;
    private final Values values;
    private final int slot;
    private final int[] order;

    Trial(SolveNode node, Values values, int slot, int[] order) {
      this.node = node;
      this.values = values;
      this.slot = slot;
      this.order = order;
    }

    /** Whether the sides depend on the number in this size. */
    boolean matters() {
      BitSet reached = new BitSet();
      reached.set(slot);
      Program program = values.program();
      for (int each : order) {
        if (!program.isIn(each, values.size().position())) {
          continue;
        }
        for (int input : program.inputs[each]) {
          if (reached.get(input) && program.isIn(input, values.size().position())) {
            reached.set(each);
          }
        }
      }
      return reached.get(node.left) || reached.get(node.right);
    }

    double low() {
      return values.number(node.low);
    }

    double high() {
      return values.number(node.high);
    }

    /** The left side less the right with the number at a place. */
    double difference(double place) {
      values.tryNumber(slot, place);
      values.run(order);
      check(node.left, place);
      check(node.right, place);
      return values.number(node.left) - values.number(node.right);
    }

    private void check(int side, double place) {
      Failure failure = values.failure(side);
      if (failure == null) {
        return;
      }
      boolean fromOutside =
          failure.causes().isEmpty()
              || failure.causes().get(0).code().equals("work-exceeded")
              || node.outside.stream().anyMatch(slot -> values.failure(slot) == failure);
      if (fromOutside) {
        throw failure;
      }
      Failure wrapped =
          new Failure(
              cause("solve-undrawn").with("place", at(place)).with("thing", thing(failure)));
      throw wrapped;
    }

    private String thing(Failure failure) {
      Program program = values.program();
      for (int each : order) {
        if (values.failure(each) == failure) {
          return program.text(each);
        }
      }
      return program.text(slot);
    }

    /** A reason that names the number and both sides. */
    Cause cause(String code) {
      Program program = values.program();
      return Cause.of(code)
          .with("name", program.text(slot))
          .with("left", program.text(node.left))
          .with("right", program.text(node.right))
          .with("low", at(low()))
          .with("high", at(high()));
    }

    /** A value of the number, for people. */
    Argument at(double place) {
      return Argument.of(quantity(slot, place));
    }

    /** The values of several places. */
    Argument at(List<Double> places) {
      return new Argument.Values(places.stream().map(place -> quantity(slot, place)).toList());
    }

    /** A value of the sides, for people. */
    Argument side(double value) {
      return Argument.of(quantity(node.left, value));
    }

    Kind sideKind() {
      return values.program().kind(node.left);
    }

    double left() {
      return values.number(node.left);
    }

    double right() {
      return values.number(node.right);
    }

    private Quantity quantity(int of, double value) {
      QuantityKind kind = values.program().kind(of).quantity().orElse(QuantityKind.NUMBER);
      return new Quantity(kind, value);
    }
  }
}
