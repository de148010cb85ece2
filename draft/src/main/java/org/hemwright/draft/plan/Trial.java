package org.hemwright.draft.plan;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.hemwright.draft.plan.node.Program;

/**
 * Other values of some literals, tried again and again for the sake of one thing: only what that
 * thing needs is worked out, so that a trial costs little however much else hangs on the literals.
 */
public final class Trial {
  private final Evaluation values;
  private final Set<Integer> literals;
  private final int[] slots;

  private Trial(Evaluation values, Set<Integer> literals, int[] slots) {
    this.values = values;
    this.literals = literals;
    this.slots = slots;
  }

  /**
   * Trials of values.
   *
   * @param values what everything is worth before
   * @param literals that are to be changed, by index
   * @param piece whose thing is looked at
   * @param point the point of the piece that is looked at; where it has none of that name, the
   *     piece itself is, with its edges, notches and lines
   */
  public static Trial of(Evaluation values, Set<Integer> literals, String piece, String point) {
    Plan plan = values.plan();
    Set<Integer> wanted = new HashSet<>();
    plan.things().stream()
        .filter(thing -> thing.owner().equals(piece) && thing.what().isPoint())
        .filter(thing -> thing.name().equals(point))
        .forEach(thing -> wanted.add(thing.slot()));
    if (wanted.isEmpty()) {
      plan.parts().pieces().stream()
          .filter(each -> each.card().name().equals(piece))
          .forEach(each -> wanted.add(each.slot()));
      plan.things().stream()
          .filter(thing -> thing.owner().equals(piece))
          .forEach(thing -> wanted.add(thing.slot()));
    }
    Program program = plan.program();
    int[] slots = program.needed(program.affected(literals), wanted);
    return new Trial(values, Set.copyOf(literals), slots);
  }

  /**
   * The values with other literals; right for the thing that is looked at, and for nothing else.
   *
   * @param others by index, among those of this trial; in millimetres, radians or plain
   * @throws IllegalArgumentException for a literal that this trial is not of, and for a bare 0,
   *     which has no unit to be anything else in
   */
  public Evaluation with(Map<Integer, Double> others) {
    if (!literals.containsAll(others.keySet())) {
      throw new IllegalArgumentException("the trial is of other literals: " + literals);
    }
    return values.again(others, slots);
  }
}
