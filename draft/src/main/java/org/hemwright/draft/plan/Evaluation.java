package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.node.Kind;
import org.hemwright.draft.plan.node.Program;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.node.Work;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Piece;
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
    return withLiterals(Map.of(index, value));
  }

  /**
   * The same sizes with other values of some literals.
   *
   * @param others by index, see {@link Plan#literals}; in millimetres, radians or plain
   * @throws IllegalArgumentException for a bare 0, which has no unit to be anything else in
   */
  public Evaluation withLiterals(Map<Integer, Double> others) {
    return again(others, plan.program().affected(others.keySet()));
  }

  /** The same sizes with other values of some literals, some slots worked out again. */
  Evaluation again(Map<Integer, Double> others, int[] slots) {
    Program program = plan.program();
    double[] changed = literals.clone();
    others.forEach(
        (index, value) -> {
          Expression.Literal literal = program.literals().get(index);
          if (literal.unit() == Unit.NONE && literal.value() == 0 && value != 0) {
            throw new IllegalArgumentException("a 0 without a unit cannot become " + value);
          }
          changed[index] = value;
        });
    long share = Work.MOST / Math.max(1, values.size());
    List<Values> again =
        values.parallelStream().map(size -> size.again(slots, changed, new Work(share))).toList();
    return new Evaluation(plan, changed, again, dialFindings);
  }

  /** The plan whose values these are. */
  public Plan plan() {
    return plan;
  }

  /** A literal's value (mm, radians or plain), see {@link Plan#literals}. */
  public double literal(int index) {
    return literals[index];
  }

  /** The sizes, in the order in which they were asked for. */
  public List<Size> sizes() {
    return values.stream().map(Values::size).toList();
  }

  /**
   * Where a point or level is in one size (mm, in the plane of its piece); absent where it could
   * not be found or is not drawn.
   *
   * @param size the place of the size among {@link #sizes}
   */
  public Optional<Point> point(int size, PlannedThing thing) {
    Values of = values.get(size);
    return thing.what().isPoint() && of.has(thing.slot())
        ? Optional.of(of.point(thing.slot()))
        : Optional.empty();
  }

  /**
   * A path or edge in one size (mm); absent where it could not be drawn.
   *
   * @param size the place of the size among {@link #sizes}
   */
  public Optional<Path> path(int size, PlannedThing thing) {
    Values of = values.get(size);
    return !thing.what().isPoint() && of.has(thing.slot())
        ? Optional.of(of.path(thing.slot()))
        : Optional.empty();
  }

  /**
   * The pieces of one size, in the order of the document, without what only a whole run has.
   *
   * @param size the place of the size among {@link #sizes}
   */
  public List<Piece> pieces(int size) {
    Values of = values.get(size);
    return plan.parts().pieces().stream()
        .filter(piece -> of.has(piece.slot()))
        .map(piece -> of.thing(piece.slot(), Piece.class))
        .toList();
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
