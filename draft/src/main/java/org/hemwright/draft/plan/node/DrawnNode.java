package org.hemwright.draft.plan.node;

/**
 * A node that gives something other than a number.
 *
 * @param <T> what it gives
 */
public interface DrawnNode<T> extends Node {
  /** The value in one size. */
  T value(Values values);

  /** Says whether the quantities of its inputs fit. */
  default void check(Typing typing) {}

  @Override
  default Kind typed(Typing typing) {
    check(typing);
    return Kind.DRAWN;
  }

  @Override
  default void work(Values values, int slot) {
    values.put(slot, value(values));
  }

  @Override
  default int cost() {
    return 4;
  }
}
