package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.node.Work;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.Quantity;

/**
 * The values of a plan in some sizes, each size worked out on its own and all at once. It never
 * changes: {@link #withLiteral} gives another, in which only what depends on that literal is worked
 * out again.
 */
public final class Evaluation {
  private final Plan plan;
  private final double[] literals;
  private final List<Values> values;
  private final List<Finding> dialFindings;

  private Evaluation(
      Plan plan, double[] literals, List<Values> values, List<Finding> dialFindings) {
    this.plan = plan;
    this.literals = literals;
    this.values = values;
    this.dialFindings = List.copyOf(dialFindings);
  }

  static Evaluation of(Plan plan, List<Size> sizes, DialSettings dials) {
    Program program = plan.program();
    double[] literals = program.literalValues();
    List<Finding> findings = new ArrayList<>();
    dials.values().forEach((name, value) -> turn(plan, literals, name, value, findings));
    long share = Work.MOST / Math.max(1, sizes.size());
    List<Values> values =
        sizes.parallelStream()
            .map(size -> Values.of(program, size, literals, new Work(share)))
            .toList();
    return new Evaluation(plan, literals, values, findings);
  }

  private static void turn(
      Plan plan, double[] literals, String name, Quantity value, List<Finding> findings) {
    Optional<DialPlan> dial =
        plan.parts().dials().stream().filter(each -> each.name().equals(name)).findFirst();
    if (dial.isEmpty()) {
      List<String> known = plan.parts().dials().stream().map(DialPlan::name).toList();
      Finding.Builder finding =
          Finding.fail("dial-unknown", name)
              .with("name", name)
              .at(new Origin(plan.document().file(), 1, 1));
      findings.add((known.isEmpty() ? finding : finding.with("known", Argument.of(known))).build());
      return;
    }
    Kind own = plan.program().kind(dial.get().slot());
    Kind given = Kind.of(value.kind());
    if (own != given && !(own.isPlain() && given.isPlain())) {
      findings.add(
          Finding.fail("dial-of-other-quantity", name)
              .with("name", name)
              .with("own", own.words())
              .with("given", given.words())
              .at(dial.get().origin())
              .build());
      return;
    }
    literals[dial.get().literal()] = value.amount();
  }

  /**
   * The same sizes with another value of one literal.
   *
   * @param index see {@link Plan#literals}
   * @param value in millimetres, radians or plain
   * @throws IllegalArgumentException for a bare 0, which has no unit to be anything else in
   */
  public Evaluation withLiteral(int index, double value) {
    Expression.Literal literal = plan.literals().get(index);
    if (literal.unit() == Unit.NONE && literal.value() == 0 && value != 0) {
      throw new IllegalArgumentException("a 0 without a unit cannot become " + value);
    }
    Program program = plan.program();
    double[] changed = literals.clone();
    changed[index] = value;
    int[] affected = program.affected(slot -> program.isLiteral(slot, index));
    long share = Work.MOST / Math.max(1, values.size());
    List<Values> again =
        values.parallelStream()
            .map(size -> size.again(affected, changed, new Work(share)))
            .toList();
    return new Evaluation(plan, changed, again, dialFindings);
  }

  /**
   * All that could be worked out, and why the rest could not: one finding for one cause, sizes
   * grouped, in the order of the text.
   */
  public Drawn drawn() {
    List<Finding> found = new ArrayList<>(dialFindings);
    found.addAll(new FailureReport(plan).findings(values));
    RunMaker maker = new RunMaker(plan);
    SizeRun run = maker.run(values);
    found.addAll(maker.findings());
    List<String> sizes = plan.chart().sizes().stream().map(Size::name).toList();
    return new Drawn(run, new FindingOrder(sizes).of(found));
  }

  /** The work it took, where adding two numbers is 1. */
  public long work() {
    return values.stream().mapToLong(Values::workDone).sum();
  }
}
