package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.draft.syntax.LiteralEdit;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.TextEdit;

/**
 * A number that she types in the place of one of the document's, in any unit and fraction.
 *
 * <p>It is read by the language's own rules; a slip that has a mend (a decimal comma, a sign for a
 * half) is read as mended. Typed in the unit that stands there, or in none, it is written as she
 * types it; in another unit there are two ways: in the unit that stands there, rounded to its step,
 * or as typed. Where it is a step of a number that is stepped by size, each reach is a way.
 */
public final class TypedNumber {
  private static final String BEFORE = "language 1\nlet typed = ";

  /** How it is written. */
  public enum Kind {
    /** In the unit that stands there. */
    AS_THERE,
    /** In the unit that she typed. */
    AS_TYPED,
    /** In the size that is looked at alone. */
    THIS_SIZE,
    /** From that size up. */
    FROM_HERE,
    /** In all sizes, each by the same amount. */
    ALL_SIZES
  }

  /**
   * One way to write it.
   *
   * @param text the whole document
   * @param line the line that changes, from 1
   */
  public record Way(Kind kind, String text, int line) {}

  /**
   * What she typed, read.
   *
   * @param ways the usual one first; empty where it is no number for that place
   * @param slips what stands in the way of reading it
   */
  public record Read(List<Way> ways, List<Finding> slips) {
    public Read {
      ways = List.copyOf(ways);
      slips = List.copyOf(slips);
    }
  }

  private final Plan plan;
  private final Source source;
  private final Literal there;
  private final String number;
  private final Unit unit;
  private final boolean negative;
  private final double value;

  private TypedNumber(
      Plan plan, Literal there, String number, Unit unit, boolean negative, double value) {
    this.plan = plan;
    this.source = Source.of(plan.document());
    this.there = there;
    this.number = number;
    this.unit = unit;
    this.negative = negative;
    this.value = value;
  }

  /**
   * Reads what was typed.
   *
   * @param there the number in whose place it is typed, of the plan's document
   * @param typed as it was typed
   * @param size the size that is looked at
   */
  public static Read of(Plan plan, Literal there, String typed, Size size) {
    String bare = typed.strip();
    if (bare.isEmpty() || bare.length() > 40 || bare.indexOf('\n') >= 0) {
      return new Read(List.of(), List.of());
    }
    boolean below = bare.startsWith("-") || bare.startsWith("\u2212");
    String text = BEFORE + (below ? bare.substring(1).strip() : bare) + "\n";
    Document read = DocumentReader.read("typed", text);
    for (int i = 0; i < 3 && !read.findings().isEmpty(); i++) {
      Optional<TextEdit> mend = read.findings().get(0).edit();
      if (mend.isEmpty()) {
        break;
      }
      text = mend.get().applyTo(text);
      read = DocumentReader.read("typed", text);
    }
    Optional<Literal> literal = literal(read);
    if (literal.isEmpty()) {
      return new Read(List.of(), read.findings());
    }
    Literal found = literal.get();
    boolean share = there.unit() == Unit.PERCENT && bare.indexOf('/') > 0;
    Unit meant = found.unit() == Unit.NONE && !share ? there.unit() : found.unit();
    boolean zero = there.unit() == Unit.NONE && there.value() == 0;
    if (meant.kind() != there.unit().kind() && !zero && !bothPlain(meant, there.unit())) {
      return new Read(List.of(), List.of());
    }
    String written = text.substring(found.span().start(), found.span().end());
    String digits =
        found.unit() == Unit.NONE
            ? written
            : written.substring(0, written.lastIndexOf(found.unit().word())).strip();
    double value = found.value() * meant.factor() * (below ? -1 : 1);
    return new Read(
        new TypedNumber(plan, there, digits, meant, below, value).ways(size), List.of());
  }

  private static boolean bothPlain(Unit one, Unit other) {
    return (one == Unit.PERCENT || one == Unit.NONE)
        && (other == Unit.PERCENT || other == Unit.NONE);
  }

  private static Optional<Literal> literal(Document read) {
    if (read.findings().isEmpty()) {
      for (Statement each : read.statements()) {
        if (each instanceof Statement.Let let
            && let.rule() instanceof NumberRule.Plain plain
            && plain.value() instanceof Expression.Literal literal) {
          return Optional.of(literal);
        }
      }
    }
    return Optional.empty();
  }

  private List<Way> ways(Size size) {
    List<Way> ways = new ArrayList<>();
    Set<String> texts = new LinkedHashSet<>();
    int line = source.line(there.span().start());
    if (unit == there.unit()) {
      add(ways, texts, new Way(Kind.AS_TYPED, withTyped(), line));
    } else {
      Unit into = there.unit() == Unit.NONE && there.value() == 0 ? unit : there.unit();
      if (into == there.unit()) {
        add(
            ways,
            texts,
            new Way(
                Kind.AS_THERE, PlainSign.edit(source, there, value).applyTo(source.text()), line));
      }
      add(ways, texts, new Way(Kind.AS_TYPED, withTyped(), line));
    }
    stepped(size).forEach(way -> add(ways, texts, way));
    return ways;
  }

  private static void add(List<Way> ways, Set<String> texts, Way way) {
    if (texts.add(way.text())) {
      ways.add(way);
    }
  }

  /** The number and unit as typed; where it is below 0, its sign as a person would write it. */
  private String withTyped() {
    String word = unit == Unit.NONE ? "" : unit == Unit.PERCENT ? "%" : " " + unit.word();
    int from = there.span().start();
    String before = "";
    if (negative) {
      TextEdit signed = PlainSign.edit(source, there, value);
      String put = signed.replacement();
      int digits = 0;
      while (digits < put.length() && !Character.isDigit(put.charAt(digits))) {
        digits++;
      }
      before = put.substring(0, digits);
      from = signed.offset();
    }
    return source
        .replace(new Span(from, there.span().end()), before + number + word)
        .applyTo(source.text());
  }

  /** The ways of a number that is stepped by size, where this step is the one of that size. */
  private List<Way> stepped(Size size) {
    for (Statement.Let let : lets(plan.document().statements())) {
      if (let.rule() instanceof NumberRule.Stepped rule
          && inForce(rule, size).span().equals(there.span())) {
        List<Way> ways = new ArrayList<>();
        for (Grip grip : new SteppedGrips(plan, let, rule, size).find()) {
          way(grip).ifPresent(ways::add);
        }
        return ways;
      }
    }
    return List.of();
  }

  private Expression inForce(NumberRule.Stepped rule, Size size) {
    Expression now = rule.first();
    for (NumberRule.Step step : rule.steps()) {
      Optional<Size> from = plan.chart().size(step.from().name());
      if (from.isPresent() && from.get().position() <= size.position()) {
        now = step.value();
      }
    }
    return now;
  }

  private Optional<Way> way(Grip grip) {
    Plan used = Plan.of(DocumentReader.read(source.file(), grip.text()), plan.chart()).plan();
    Source text = Source.of(used.document());
    List<Literal> literals = new ArrayList<>();
    for (Span span : grip.variables().get(0)) {
      OptionalInt index = used.literalAt(span);
      if (index.isEmpty()) {
        return Optional.empty();
      }
      literals.add(used.literals().get(index.getAsInt()));
    }
    double from = there.value() * there.unit().factor();
    String changed = grip.text();
    for (int i = literals.size() - 1; i >= 0; i--) {
      Literal each = literals.get(i);
      double now = each.value() * each.unit().factor() + value - from;
      changed = LiteralEdit.of(text, each, now).applyTo(changed);
    }
    Kind kind =
        switch (grip.reach().orElseThrow()) {
          case THIS -> Kind.THIS_SIZE;
          case FROM_HERE -> Kind.FROM_HERE;
          case ALL -> Kind.ALL_SIZES;
        };
    return Optional.of(new Way(kind, changed, grip.line()));
  }

  private static List<Statement.Let> lets(List<Statement> statements) {
    List<Statement.Let> lets = new ArrayList<>();
    for (Statement each : statements) {
      if (each instanceof Statement.Let let) {
        lets.add(let);
      } else if (each instanceof Statement.Section section) {
        lets.addAll(lets(section.body()));
      }
    }
    return lets;
  }
}
