package org.hemwright.draft.plan.node;

import java.util.List;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Condition.Comparison;
import org.hemwright.pattern.body.SizeRange;

/**
 * A node that takes one of its inputs, by size or by a condition. What it does not take need have
 * no value.
 */
public interface ChoiceNode extends Node {
  @Override
  default boolean picks() {
    return true;
  }

  /** Values stepped by size: the last whose step has begun. */
  record Stepped(List<Integer> amounts, List<Integer> from) implements NumberNode, ChoiceNode {
    public Stepped {
      amounts = List.copyOf(amounts);
      from = List.copyOf(from);
    }

    @Override
    public int[] inputs() {
      return ints(amounts);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.allAlike(amounts, "stepped");
    }

    @Override
    public double value(Values values) {
      int taken = amounts.get(0);
      for (int i = 1; i < amounts.size(); i++) {
        if (values.size().position() >= from.get(i)) {
          taken = amounts.get(i);
        }
      }
      values.need(taken);
      return values.number(taken);
    }
  }

  /** The first amount whose condition holds, else the last, which has none. */
  record Chosen(List<Integer> amounts, List<Integer> conditions) implements NumberNode, ChoiceNode {
    public Chosen {
      amounts = List.copyOf(amounts);
      conditions = List.copyOf(conditions);
    }

    @Override
    public int[] inputs() {
      return IntStream.concat(
              amounts.stream().mapToInt(i -> i), conditions.stream().mapToInt(i -> i))
          .toArray();
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.allAlike(amounts, "chosen-between");
    }

    @Override
    public double value(Values values) {
      int taken = amounts.get(amounts.size() - 1);
      for (int i = 0; i < conditions.size(); i++) {
        int condition = conditions.get(i);
        values.need(condition);
        if (values.number(condition) != 0) {
          taken = amounts.get(i);
          break;
        }
      }
      values.need(taken);
      return values.number(taken);
    }
  }

  /** The thing or number of that piece, among several of one name, which this size has. */
  record BySize(List<Integer> slots, List<SizeRange> ranges) implements ChoiceNode {
    public BySize {
      slots = List.copyOf(slots);
      ranges = List.copyOf(ranges);
    }

    @Override
    public int[] inputs() {
      return ints(slots);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.kind(slots.get(0)) == Kind.DRAWN
          ? Kind.DRAWN
          : typing.allAlike(slots, "under-one-name");
    }

    @Override
    public void work(Values values, int slot) {
      for (int i = 0; i < slots.size(); i++) {
        if (ranges.get(i).contains(values.size())) {
          int taken = slots.get(i);
          values.need(taken);
          values.copy(taken, slot);
          return;
        }
      }
      throw Failure.told();
    }
  }

  /** Whether one number is less or more than another: 1 or 0. */
  record Compared(int left, Comparison comparison, int right) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(left, right);
    }

    @Override
    public Kind typed(Typing typing) {
      typing.alike(left, right, "compared");
      return Kind.NUMBER;
    }

    @Override
    public double value(Values values) {
      double one = values.number(left);
      double other = values.number(right);
      boolean holds =
          switch (comparison) {
            case LESS -> one < other;
            case MORE -> one > other;
            case AT_LEAST -> one >= other;
            case AT_MOST -> one <= other;
          };
      return holds ? 1 : 0;
    }
  }

  /** Whether this is a size from one position of the chart to another: 1 or 0. */
  record Within(int first, int last) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public Kind typed(Typing typing) {
      return Kind.NUMBER;
    }

    @Override
    public double value(Values values) {
      int position = values.size().position();
      return first <= position && position <= last ? 1 : 0;
    }
  }

  /** Whether all conditions hold: 1 or 0. */
  record All(List<Integer> conditions) implements NumberNode {
    public All {
      conditions = List.copyOf(conditions);
    }

    @Override
    public int[] inputs() {
      return ints(conditions);
    }

    @Override
    public Kind typed(Typing typing) {
      return Kind.NUMBER;
    }

    @Override
    public double value(Values values) {
      for (int condition : conditions) {
        if (values.number(condition) == 0) {
          return 0;
        }
      }
      return 1;
    }
  }

  private static int[] ints(List<Integer> slots) {
    return slots.stream().mapToInt(slot -> slot).toArray();
  }
}
