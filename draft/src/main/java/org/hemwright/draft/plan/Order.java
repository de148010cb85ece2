package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.SolveNode;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Puts the nodes in an order in which each comes after its inputs.
 *
 * <p>Nodes that need each other in a ring are a cycle, and told, unless a number that is solved for
 * stands in the ring: the ring is then that number's cone, tried again and again until its sides
 * agree. A ring inside a cone is a solve within the solve; the one that the document states first
 * is the outer one.
 */
final class Order {
  /** A solve may run inside another, and no deeper. */
  private static final int DEEPEST = 2;

  private final NodeList nodes;
  private final Problems problems;
  private final int[][] inputs;

  private Order(NodeList nodes, Problems problems) {
    this.nodes = nodes;
    this.problems = problems;
    this.inputs = new int[nodes.size()][];
    for (int slot = 0; slot < inputs.length; slot++) {
      inputs[slot] = nodes.node(slot).inputs();
    }
  }

  /** The slots in order; what cannot be ordered is told and gives way to {@link Broken}. */
  static int[] of(NodeList nodes, Problems problems) {
    Order order = new Order(nodes, problems);
    BitSet all = new BitSet();
    all.set(0, nodes.size());
    return order.ordered(all, new BitSet(), 0).stream().mapToInt(slot -> slot).toArray();
  }

  /**
   * Some slots in order.
   *
   * @param known slots that count as worked out already
   * @param depth how many solves these slots lie inside
   */
  private List<Integer> ordered(BitSet slots, BitSet known, int depth) {
    List<Integer> order = new ArrayList<>();
    for (List<Integer> ring : new Rings(inputs, slots, known).found()) {
      boolean alone = ring.size() == 1 && !needsItself(ring.get(0), known);
      if (alone) {
        tellIdle(ring.get(0));
        order.add(ring.get(0));
      } else {
        order.addAll(ring(ring, known, depth));
      }
    }
    return order;
  }

  private boolean needsItself(int slot, BitSet known) {
    for (int input : inputs[slot]) {
      if (input == slot && !known.get(slot)) {
        return true;
      }
    }
    return false;
  }

  private void tellIdle(int slot) {
    if (nodes.node(slot) instanceof SolveNode solve && solve.cone().isEmpty()) {
      if (!needsBroken(slot)) {
        problems.add(
            problems
                .at(nodes.span(slot), "solve-idle", nodes.text(slot))
                .with("name", nodes.text(slot, nodes.setting(slot).owner())));
      }
      breakOff(slot);
    }
  }

  /** Whether something that a slot needs could not be planned. */
  private boolean needsBroken(int slot) {
    BitSet seen = new BitSet();
    List<Integer> queue = new ArrayList<>();
    queue.add(slot);
    for (int next = 0; next < queue.size(); next++) {
      for (int input : inputs[queue.get(next)]) {
        if (nodes.node(input) instanceof Broken) {
          return true;
        }
        if (!seen.get(input)) {
          seen.set(input);
          queue.add(input);
        }
      }
    }
    return false;
  }

  private List<Integer> ring(List<Integer> ring, BitSet known, int depth) {
    int outer = -1;
    for (int slot : ring) {
      boolean earlier = outer < 0 || nodes.span(slot).start() < nodes.span(outer).start();
      if (nodes.node(slot) instanceof SolveNode && earlier) {
        outer = slot;
      }
    }
    if (outer < 0) {
      tellCycle(ring, known);
      return ring;
    }
    if (depth >= DEEPEST) {
      problems.add(
          problems
              .at(nodes.span(outer), "solve-too-deep", nodes.text(outer))
              .with("name", nodes.text(outer, nodes.setting(outer).owner())));
      ring.forEach(this::breakOff);
      return ring;
    }
    return cone(ring, outer, known, depth);
  }

  private List<Integer> cone(List<Integer> ring, int outer, BitSet known, int depth) {
    BitSet rest = new BitSet();
    ring.forEach(rest::set);
    rest.clear(outer);
    BitSet solved = (BitSet) known.clone();
    solved.set(outer);
    SolveNode solve = (SolveNode) nodes.node(outer);
    List<Integer> cone = ordered(rest, solved, depth + 1);
    Set<Integer> outside = new TreeSet<>(List.of(solve.low(), solve.high()));
    for (int side : List.of(solve.left(), solve.right())) {
      if (!rest.get(side)) {
        outside.add(side);
      }
    }
    for (int slot : cone) {
      for (int input : inputs[slot]) {
        if (!rest.get(input) && input != outer) {
          outside.add(input);
        }
      }
    }
    if (outside.removeIf(rest::get)) {
      tellCycle(ring, known);
      return ring;
    }
    nodes.fill(
        outer,
        new SolveNode(solve.left(), solve.right(), solve.low(), solve.high(), cone, outside));
    List<Integer> order = new ArrayList<>();
    order.add(outer);
    order.addAll(cone);
    return order;
  }

  private void breakOff(int slot) {
    nodes.fill(slot, new Broken());
    inputs[slot] = new int[0];
  }

  /** Tells a ring of names, each of which needs the next, starting with the first in the text. */
  private void tellCycle(List<Integer> ring, BitSet known) {
    BitSet members = new BitSet();
    ring.forEach(members::set);
    int first = Collections.min(ring, Comparator.comparingInt(this::place));
    List<Integer> round = round(first, members, known);
    List<String> names = new ArrayList<>();
    String owner = nodes.setting(first).owner();
    for (int slot : round) {
      if (nodes.isNamed(slot)) {
        names.add(nodes.text(slot, owner));
      }
    }
    Finding.Builder finding =
        problems
            .at(nodes.span(first), "cycle", nodes.subject(first))
            .with("name", nodes.text(first, owner));
    problems.add(names.size() > 1 ? finding.with("ring", Argument.of(names)) : finding);
    ring.forEach(this::breakOff);
  }

  private int place(int slot) {
    int start = nodes.span(slot).start();
    return nodes.isNamed(slot) ? start : start + Integer.MAX_VALUE / 2;
  }

  /** The shortest way from a slot through its inputs back to it, within a ring. */
  private List<Integer> round(int first, BitSet members, BitSet known) {
    int[] cameFrom = new int[inputs.length];
    Arrays.fill(cameFrom, -1);
    List<Integer> queue = new ArrayList<>();
    queue.add(first);
    for (int next = 0; next < queue.size(); next++) {
      int slot = queue.get(next);
      for (int input : inputs[slot]) {
        if (known.get(input) || !members.get(input)) {
          continue;
        }
        if (input == first) {
          List<Integer> way = new ArrayList<>();
          for (int step = slot; step != -1; step = step == first ? -1 : cameFrom[step]) {
            way.add(0, step);
          }
          return way;
        }
        if (cameFrom[input] == -1) {
          cameFrom[input] = slot;
          queue.add(input);
        }
      }
    }
    return List.of(first);
  }
}
