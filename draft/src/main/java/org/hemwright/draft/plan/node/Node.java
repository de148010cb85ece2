package org.hemwright.draft.plan.node;

/** Works out one value of a plan, in any size, from the values of other slots. */
public interface Node {
  /** Stands for a slot where there is none. */
  int NONE = -1;

  /** The slots it reads; they are worked out before it. */
  int[] inputs();

  /** Says whether the quantities of its inputs fit, and what quantity it gives. */
  Kind typed(Typing typing);

  /**
   * Works the value out and puts it in its slot. All inputs have values, unless it {@link #picks}.
   *
   * @throws org.hemwright.draft.plan.problem.Failure or {@link
   *     org.hemwright.geometry.GeometryProblem} when there is none
   */
  void work(Values values, int slot);

  /** Whether it may do without some of its inputs, and asks each it needs for its value. */
  default boolean picks() {
    return false;
  }

  /** How much work it is, where adding two numbers is 1. */
  default int cost() {
    return 1;
  }

  /** Slots as an array, without those that are {@link #NONE}. */
  static int[] slots(int... slots) {
    int count = 0;
    for (int slot : slots) {
      count += slot == NONE ? 0 : 1;
    }
    if (count == slots.length) {
      return slots;
    }
    int[] there = new int[count];
    int next = 0;
    for (int slot : slots) {
      if (slot != NONE) {
        there[next++] = slot;
      }
    }
    return there;
  }
}
