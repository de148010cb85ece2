package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Trial;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.LiteralEdit;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.TextEdit;

/**
 * A thing held in one size, and the numbers that carry it.
 *
 * <p>The numbers are found by damped least squares: of all changes that bring the thing to the
 * pointer the smallest is taken, measured in millimetres that each number would move it by alone,
 * so that two numbers that do the same share the way. Then each is rounded to the step of its unit.
 */
public final class Drag {
  /** By how much a number is tried for its effect (mm, rad or share). */
  private static final double TRIAL = 1e-4;

  /** The search ends when the thing is this near (mm). */
  private static final double NEAR = 1e-4;

  /** Or after so many steps. */
  private static final int MOST_STEPS = 12;

  /** Keeps a step short where two numbers work against each other. */
  private static final double DAMPING = 1e-7;

  private final Plan plan;
  private final Source source;
  private final Grip grip;
  private final Held held;
  private final Evaluation one;
  private final Trial trial;
  private final List<Variable> variables;

  /** Literals that change by the same amount. */
  private record Variable(List<Integer> literals, boolean isLength) {}

  private Drag(Plan plan, Grip grip, Held held, Evaluation one, List<Variable> variables) {
    this.plan = plan;
    this.source = Source.of(plan.document());
    this.grip = grip;
    this.held = held;
    this.one = one;
    this.variables = variables;
    Set<Integer> literals = new LinkedHashSet<>();
    variables.forEach(each -> literals.addAll(each.literals()));
    String point = held instanceof Held.OfPoint named ? named.point() : "";
    this.trial = Trial.of(one, literals, held.piece(), point);
  }

  /**
   * Takes hold.
   *
   * @param plan of the document as it stands
   * @param grip how the drag is to be written, of the same document
   * @param held what is held
   * @param size the size that is looked at
   * @return absent where the thing cannot be drawn there
   */
  public static Optional<Drag> begin(Plan plan, Grip grip, Held held, Size size) {
    boolean same = grip.text().equals(plan.document().text());
    Plan used =
        same
            ? plan
            : Plan.of(DocumentReader.read(plan.document().file(), grip.text()), plan.chart())
                .plan();
    Evaluation one = used.evaluate(List.of(size), DialSettings.NONE);
    List<Variable> variables = new ArrayList<>();
    for (var group : grip.variables()) {
      List<Integer> literals = new ArrayList<>();
      for (var span : group) {
        OptionalInt index = used.literalAt(span);
        if (index.isEmpty()) {
          return Optional.empty();
        }
        literals.add(index.getAsInt());
      }
      Unit unit = used.literals().get(literals.get(0)).unit();
      variables.add(new Variable(literals, unit == Unit.MM || unit == Unit.CM || unit == Unit.IN));
    }
    if (grip.kind() == Grip.Kind.LEG) {
      Map<Integer, Double> nowhere = new LinkedHashMap<>();
      variables.forEach(each -> each.literals().forEach(literal -> nowhere.put(literal, 0.0)));
      one = one.withLiterals(nowhere);
    }
    return HeldPlace.at(one, 0, held).isEmpty()
        ? Optional.empty()
        : Optional.of(new Drag(used, grip, held, one, variables));
  }

  /** The plan in which the numbers stand. */
  public Plan plan() {
    return plan;
  }

  /** How it is written. */
  public Grip grip() {
    return grip;
  }

  /** Where the thing is before it is moved (mm). */
  public Point start() {
    return HeldPlace.at(one, 0, held).orElseThrow();
  }

  /** Whether its numbers move the thing at all. */
  boolean moves() {
    double[] still = new double[variables.size()];
    Optional<Point> now = at(still);
    for (int i = 0; now.isPresent() && i < still.length; i++) {
      if (effect(still, now.get(), i).length() > NEAR) {
        return true;
      }
    }
    return false;
  }

  /** Brings the thing as near to a place (mm) as her numbers come. */
  public Dragged to(Point goal) {
    double[] change = solved(goal);
    Map<Integer, Double> values = new LinkedHashMap<>();
    for (int i = 0; i < change.length; i++) {
      Variable variable = variables.get(i);
      int first = variable.literals().get(0);
      double rounded = rounded(first, one.literal(first) + change[i]) - one.literal(first);
      for (int literal : variable.literals()) {
        values.put(literal, rounded(literal, one.literal(literal) + rounded));
      }
    }
    Point place = HeldPlace.at(trial.with(values), 0, held).orElse(start());
    return new Dragged(values, text(values), place);
  }

  private double rounded(int literal, double value) {
    return LiteralEdit.rounded(source, plan.literals().get(literal), value);
  }

  private double[] solved(Point goal) {
    double[] change = new double[variables.size()];
    double best = Double.POSITIVE_INFINITY;
    double[] kept = change;
    for (int step = 0; step < MOST_STEPS; step++) {
      Optional<Point> now = at(change);
      if (now.isEmpty()) {
        return kept;
      }
      Vector rest = goal.minus(now.get());
      if (!(rest.length() < best - NEAR / 10)) {
        return kept;
      }
      best = rest.length();
      kept = change;
      if (best < NEAR) {
        return kept;
      }
      change = stepped(change, now.get(), rest);
    }
    return kept;
  }

  private Optional<Point> at(double[] change) {
    Map<Integer, Double> values = new LinkedHashMap<>();
    for (int i = 0; i < change.length; i++) {
      for (int literal : variables.get(i).literals()) {
        values.put(literal, one.literal(literal) + change[i]);
      }
    }
    return HeldPlace.at(trial.with(values), 0, held);
  }

  /** How far a number carries the thing for each unit of its own (mm). */
  private Vector effect(double[] change, Point now, int variable) {
    double[] more = change.clone();
    more[variable] += TRIAL;
    return at(more).map(after -> after.minus(now).times(1 / TRIAL)).orElse(new Vector(0, 0));
  }

  /** The smallest change that brings the thing on its way, in the first order. */
  private double[] stepped(double[] change, Point now, Vector rest) {
    int count = change.length;
    double[] weights = new double[count];
    Vector[] effects = new Vector[count];
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < count; i++) {
      Vector effect = effect(change, now, i);
      double reach = effect.length();
      weights[i] = variables.get(i).isLength() || reach == 0 ? 1 : 1 / reach;
      effects[i] = effect.times(weights[i]);
      xx += effects[i].dx() * effects[i].dx();
      xy += effects[i].dx() * effects[i].dy();
      yy += effects[i].dy() * effects[i].dy();
    }
    double damping = DAMPING * (xx + yy) + Double.MIN_NORMAL;
    xx += damping;
    yy += damping;
    double determinant = xx * yy - xy * xy;
    double along = (yy * rest.dx() - xy * rest.dy()) / determinant;
    double up = (xx * rest.dy() - xy * rest.dx()) / determinant;
    double[] next = change.clone();
    for (int i = 0; i < count; i++) {
      next[i] += weights[i] * (effects[i].dx() * along + effects[i].dy() * up);
    }
    return next;
  }

  private String text(Map<Integer, Double> values) {
    if (grip.kind() == Grip.Kind.LEG) {
      return withLegs(values);
    }
    List<TextEdit> edits = new ArrayList<>();
    values.forEach(
        (literal, value) -> edits.add(PlainSign.edit(source, plan.literals().get(literal), value)));
    edits.sort(Comparator.comparingInt(TextEdit::offset).reversed());
    String text = grip.text();
    for (TextEdit edit : edits) {
      text = edit.applyTo(text);
    }
    return text;
  }

  /** Legs in words that say which way; one that leads nowhere is not written. */
  private String withLegs(Map<Integer, Double> values) {
    String text = grip.text();
    for (int i = variables.size() - 1; i >= 0; i--) {
      int index = variables.get(i).literals().get(0);
      Expression.Literal literal = plan.literals().get(index);
      double value = values.getOrDefault(index, 0.0);
      String way = i == 0 ? (value < 0 ? "left" : "right") : (value < 0 ? "down" : "up");
      int from = text.lastIndexOf(" then ", literal.span().start());
      String number = LiteralEdit.of(source, literal, Math.abs(value)).replacement();
      String leg = value == 0 ? "" : " then " + way + " " + number + " " + literal.unit().word();
      text = text.substring(0, from) + leg + text.substring(literal.span().end());
    }
    return text;
  }
}
