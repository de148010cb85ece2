package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.pattern.body.SizeChart;

/** All nodes of a plan, in the order in which they are worked out; the same for every size. */
public final class Program {
  final Node[] nodes;
  final int[][] inputs;
  final int[] order;
  final Kind[] kinds;
  final int[] firstSize;
  final int[] lastSize;
  private final NodeList list;
  private final SizeChart chart;
  private final int[][] readers;
  private final Map<Integer, List<Integer>> literalSlots = new HashMap<>();

  /**
   * The finished nodes.
   *
   * @param order every slot, each after its inputs
   * @param kinds what each holds
   */
  public Program(NodeList list, int[] order, Kind[] kinds, SizeChart chart) {
    int count = list.size();
    this.list = list;
    this.order = order.clone();
    this.kinds = kinds.clone();
    this.chart = chart;
    this.nodes = new Node[count];
    this.inputs = new int[count][];
    this.firstSize = new int[count];
    this.lastSize = new int[count];
    int[] counts = new int[count];
    for (int slot = 0; slot < count; slot++) {
      nodes[slot] = list.node(slot);
      inputs[slot] = nodes[slot].inputs();
      if (nodes[slot] instanceof NumberNode.Literal literal) {
        literalSlots.computeIfAbsent(literal.index(), index -> new ArrayList<>()).add(slot);
      }
      firstSize[slot] = list.setting(slot).sizes().first().position();
      lastSize[slot] = list.setting(slot).sizes().last().position();
      for (int input : inputs[slot]) {
        counts[input]++;
      }
    }
    this.readers = new int[count][];
    for (int slot = 0; slot < count; slot++) {
      readers[slot] = new int[counts[slot]];
    }
    for (int slot = 0; slot < count; slot++) {
      for (int input : inputs[slot]) {
        readers[input][--counts[input]] = slot;
      }
    }
  }

  /** How many slots there are. */
  public int size() {
    return nodes.length;
  }

  /** The chart whose sizes it is worked out in. */
  public SizeChart chart() {
    return chart;
  }

  /** What a slot holds. */
  public Kind kind(int slot) {
    return kinds[slot];
  }

  /** Where its text stands. */
  public Span span(int slot) {
    return list.span(slot);
  }

  /** Its name, or its text. */
  public String text(int slot) {
    return list.text(slot);
  }

  /** What a finding at it is about. */
  public String subject(int slot) {
    return list.subject(slot);
  }

  /** The piece or part it belongs to, or empty. */
  public String owner(int slot) {
    return list.setting(slot).owner();
  }

  /** Whether a failure counts only where something that is used takes it. */
  public boolean isBranch(int slot) {
    return list.setting(slot).branch();
  }

  /** Whether it is worked out in the size at a position of the chart. */
  public boolean isIn(int slot, int position) {
    return firstSize[slot] <= position && position <= lastSize[slot];
  }

  /** Every literal of the text, in the order in which the plan met them. */
  public List<Expression.Literal> literals() {
    return list.literals();
  }

  /** The literals' values in millimetres, radians or plain. */
  public double[] literalValues() {
    List<Expression.Literal> literals = literals();
    double[] values = new double[literals.size()];
    for (int i = 0; i < values.length; i++) {
      Unit unit = literals.get(i).unit();
      values[i] = literals.get(i).value() * unit.factor();
    }
    return values;
  }

  /**
   * The slots that are, or read from, those that answer to a question, in order.
   *
   * @param changed asked of every slot
   */
  public int[] affected(IntPredicate changed) {
    boolean[] dirty = new boolean[nodes.length];
    int count = 0;
    int[] found = new int[nodes.length];
    for (int slot : order) {
      boolean now = dirty[slot] || changed.test(slot);
      if (now) {
        found[count++] = slot;
        for (int reader : readers[slot]) {
          dirty[reader] = true;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  /**
   * The slots that are, or read from, some literals, in order.
   *
   * @param changed by index
   */
  public int[] affected(Set<Integer> changed) {
    BitSet first = new BitSet();
    changed.forEach(index -> literalSlots.getOrDefault(index, List.of()).forEach(first::set));
    return affected(first::get);
  }

  /**
   * Of some slots, those that others need, in the order given.
   *
   * @param slots in the order in which they are worked out
   * @param wanted what is to be known
   */
  public int[] needed(int[] slots, Set<Integer> wanted) {
    BitSet needed = new BitSet();
    wanted.forEach(needed::set);
    for (int i = order.length - 1; i >= 0; i--) {
      if (needed.get(order[i])) {
        for (int input : inputs[order[i]]) {
          needed.set(input);
        }
      }
    }
    return Arrays.stream(slots).filter(needed::get).toArray();
  }

  /** All slots, in order. */
  public int[] all() {
    return order.clone();
  }
}
