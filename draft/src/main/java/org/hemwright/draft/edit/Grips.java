package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.draft.syntax.PointRule;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.body.Size;

/**
 * The ways in which a drag of one thing can be written, the best first: the statement's own
 * numbers; the dials and {@code let}s that it names; legs added to it.
 *
 * <p>A number counts only where it moves the thing in the size that is looked at. A plain number
 * that multiplies or divides is part of her reasoning and is left alone.
 */
public final class Grips {
  /** By how much a number is tried (mm, rad or share). */
  private static final double TRIAL = 1e-3;

  /** A number that moves the thing by less than this share of its own change does not move it. */
  private static final double STILL = 1e-6;

  private final Evaluation one;
  private final Plan plan;
  private final Document document;
  private final Source source;
  private final Held held;
  private final Size size;
  private final List<Grip> grips = new ArrayList<>();

  private Grips(Plan plan, Held held, Size size) {
    this.plan = plan;
    this.one = plan.evaluate(List.of(size), org.hemwright.draft.plan.DialSettings.NONE);
    this.document = plan.document();
    this.source = Source.of(document);
    this.held = held;
    this.size = size;
  }

  /**
   * Finds them.
   *
   * @param plan of the document as it stands
   * @param held what is taken hold of
   * @param size the size that is looked at
   * @return empty where no number of hers moves it
   */
  public static List<Grip> of(Plan plan, Held held, Size size) {
    Grips all = new Grips(plan, held, size);
    all.find();
    return List.copyOf(all.grips);
  }

  /** Where a thing is in one size of some values (mm); absent where it is not drawn there. */
  public static Optional<Point> place(Evaluation values, int size, Held held) {
    return HeldPlace.at(values, size, held);
  }

  private void find() {
    Optional<Statement> said = HeldPlace.statement(one, 0, held);
    if (said.isEmpty() || HeldPlace.at(one, 0, held).isEmpty()) {
      return;
    }
    Statement statement = said.get();
    int line = source.line(statement.span().start());
    List<List<Span>> own = moving(literals(statement.span()));
    if (!own.isEmpty()) {
      grips.add(new Grip(Grip.Kind.OWN, "", Optional.empty(), document.text(), own, line));
    }
    for (Statement number : NamedNumbers.in(document, statement)) {
      number(number);
    }
    leg(statement, line);
  }

  /** The numbers among a statement's words, each once, those that are only reasoning left out. */
  private List<List<Span>> literals(Span within) {
    Set<Span> spans = new LinkedHashSet<>();
    for (Expression.Literal literal : plan.literals()) {
      Span span = literal.span();
      if (within.start() <= span.start() && span.end() <= within.end() && !isFactor(literal)) {
        spans.add(span);
      }
    }
    return spans.stream().map(List::of).toList();
  }

  private boolean isFactor(Expression.Literal literal) {
    if (literal.unit() != Unit.NONE) {
      return false;
    }
    if (literal.value() == 0) {
      return true;
    }
    String text = document.text();
    int before = literal.span().start() - 1;
    while (before >= 0 && text.charAt(before) == ' ') {
      before--;
    }
    int after = literal.span().end();
    while (after < text.length() && text.charAt(after) == ' ') {
      after++;
    }
    return (before >= 0 && "*/".indexOf(text.charAt(before)) >= 0)
        || (after < text.length() && "*/".indexOf(text.charAt(after)) >= 0);
  }

  /** Those that move the thing. */
  private List<List<Span>> moving(List<List<Span>> variables) {
    return variables.stream().filter(this::moves).toList();
  }

  private boolean moves(List<Span> variable) {
    Map<Integer, Double> tried = new LinkedHashMap<>();
    for (Span span : variable) {
      OptionalInt index = plan.literalAt(span);
      if (index.isPresent()) {
        tried.put(index.getAsInt(), one.literal(index.getAsInt()) + TRIAL);
      }
    }
    if (tried.isEmpty()) {
      return false;
    }
    Optional<Point> before = HeldPlace.at(one, 0, held);
    Optional<Point> after = HeldPlace.at(one.withLiterals(tried), 0, held);
    return before.isPresent()
        && after.isPresent()
        && before.get().distanceTo(after.get()) > STILL * TRIAL;
  }

  private void number(Statement statement) {
    int line = source.line(statement.span().start());
    if (statement instanceof Statement.Dial dial) {
      List<List<Span>> value = moving(List.of(List.of(dial.value().span())));
      if (!value.isEmpty()) {
        grips.add(
            new Grip(
                Grip.Kind.DIAL,
                dial.name().text(),
                Optional.empty(),
                document.text(),
                value,
                line));
      }
    } else if (statement instanceof Statement.Let let) {
      if (let.rule() instanceof NumberRule.Stepped stepped) {
        new SteppedGrips(plan, let, stepped, size)
            .find().stream()
                .filter(grip -> let.name().text().equals(grip.name()))
                .forEach(this::addIfItMoves);
      } else {
        List<List<Span>> values = moving(literals(statement.span()));
        if (!values.isEmpty()) {
          grips.add(
              new Grip(
                  Grip.Kind.LET,
                  let.name().text(),
                  Optional.empty(),
                  document.text(),
                  values,
                  line));
        }
      }
    }
  }

  private void addIfItMoves(Grip grip) {
    Drag.begin(plan, grip, held, size).filter(Drag::moves).ifPresent(drag -> grips.add(grip));
  }

  /** Legs that lead nowhere as yet, after those that she wrote. */
  private void leg(Statement statement, int line) {
    if (!(statement instanceof Statement.Point point)
        || !(point.rule() instanceof PointRule.From from)) {
      return;
    }
    String unit = legUnit();
    String right = " then right 1 " + unit;
    String up = " then up 1 " + unit;
    int at = from.span().end();
    String text = document.text().substring(0, at) + right + up + document.text().substring(at);
    int first = at + right.length() - unit.length() - 2;
    int second = at + right.length() + up.length() - unit.length() - 2;
    int length = unit.length() + 2;
    Document longer = DocumentReader.read(document.file(), text);
    if (longer.findings().size() == document.findings().size()) {
      grips.add(
          new Grip(
              Grip.Kind.LEG,
              "",
              Optional.empty(),
              text,
              List.of(
                  List.of(new Span(first, first + length)),
                  List.of(new Span(second, second + length))),
              line));
    }
  }

  /** The unit of small lengths in this document. */
  private String legUnit() {
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Units units) {
        return units.inches() ? "in" : "mm";
      }
    }
    return "mm";
  }
}
