package org.hemwright.draft.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Deque;
import java.util.List;

/**
 * Groups slots that need each other, each group after those that it needs: R. Tarjan, "Depth-first
 * search and linear graph algorithms", 1972, without recursion, so that a chain of many thousand
 * points is no deeper than one of two.
 */
final class Rings {
  private final int[][] inputs;
  private final BitSet slots;
  private final BitSet known;
  private final int[] index;
  private final int[] low;
  private final BitSet onStack = new BitSet();
  private final Deque<Integer> stack = new ArrayDeque<>();
  private final List<List<Integer>> found = new ArrayList<>();
  private int next = 1;

  /**
   * A graph.
   *
   * @param inputs what each slot needs
   * @param slots those to be grouped
   * @param known those that need not be waited for
   */
  Rings(int[][] inputs, BitSet slots, BitSet known) {
    this.inputs = inputs;
    this.slots = slots;
    this.known = known;
    this.index = new int[inputs.length];
    this.low = new int[inputs.length];
  }

  /** The groups, each after those that it needs; in a group, the slots in order. */
  List<List<Integer>> found() {
    for (int slot = slots.nextSetBit(0); slot >= 0; slot = slots.nextSetBit(slot + 1)) {
      if (index[slot] == 0) {
        visit(slot);
      }
    }
    return found;
  }

  private void visit(int root) {
    Deque<int[]> way = new ArrayDeque<>();
    way.push(new int[] {root, 0});
    enter(root);
    while (!way.isEmpty()) {
      int[] here = way.peek();
      int slot = here[0];
      if (here[1] < inputs[slot].length) {
        int input = inputs[slot][here[1]++];
        if (!slots.get(input) || known.get(input)) {
          continue;
        }
        if (index[input] == 0) {
          enter(input);
          way.push(new int[] {input, 0});
        } else if (onStack.get(input)) {
          low[slot] = Math.min(low[slot], index[input]);
        }
      } else {
        way.pop();
        if (!way.isEmpty()) {
          int above = way.peek()[0];
          low[above] = Math.min(low[above], low[slot]);
        }
        if (low[slot] == index[slot]) {
          leave(slot);
        }
      }
    }
  }

  private void enter(int slot) {
    index[slot] = next;
    low[slot] = next++;
    stack.push(slot);
    onStack.set(slot);
  }

  private void leave(int slot) {
    List<Integer> ring = new ArrayList<>();
    int member;
    do {
      member = stack.pop();
      onStack.clear(member);
      ring.add(member);
    } while (member != slot);
    Collections.sort(ring);
    found.add(ring);
  }
}
