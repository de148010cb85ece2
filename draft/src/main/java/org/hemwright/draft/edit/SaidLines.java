package org.hemwright.draft.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;

/**
 * The lines of the document that make a thing what it is: its own statement, then the dials and
 * {@code let}s that this names; for an edge also the allowances of its piece.
 */
public final class SaidLines {
  private final Plan plan;
  private final Document document;
  private final Source source;

  private SaidLines(Plan plan) {
    this.plan = plan;
    this.document = plan.document();
    this.source = Source.of(document);
  }

  /** The lines of a drawn thing in one size. */
  public static List<SaidLine> of(Plan plan, Held held, Size size) {
    SaidLines all = new SaidLines(plan);
    Set<Statement> statements = new LinkedHashSet<>();
    HeldPlace.statement(plan.evaluate(List.of(size), DialSettings.NONE), 0, held)
        .ifPresent(
            statement -> {
              statements.add(statement);
              statements.addAll(NamedNumbers.in(all.document, statement));
            });
    if (held instanceof Held.OfLine) {
      all.inPiece(held.piece(), size).stream()
          .filter(Statement.Allowances.class::isInstance)
          .forEach(statements::add);
    }
    return all.lines(statements);
  }

  /** The lines of a piece as a whole: its own numbers, a rectangle's sides, its allowances. */
  public static List<SaidLine> ofPiece(Plan plan, String piece, Size size) {
    SaidLines all = new SaidLines(plan);
    Set<Statement> statements = new LinkedHashSet<>();
    for (Statement line : all.inPiece(piece, size)) {
      if (line instanceof Statement.Let || line instanceof Statement.Allowances) {
        statements.add(line);
      } else if (line instanceof Statement.Rectangle) {
        statements.add(line);
        statements.addAll(NamedNumbers.in(all.document, line));
      }
    }
    return all.lines(statements);
  }

  /** The section of a piece as it is drawn in a size. */
  public static Optional<Statement.PieceSection> section(Plan plan, String piece, Size size) {
    return new SaidLines(plan).sectionOf(piece, size);
  }

  /** The lines of a dial or {@code let}: its own, and those that it names. */
  public static List<SaidLine> ofNumber(Plan plan, String owner, String name) {
    SaidLines all = new SaidLines(plan);
    Set<Statement> statements = new LinkedHashSet<>();
    List<Statement> body = new ArrayList<>();
    for (Statement each : all.document.statements()) {
      if (owner.isEmpty()) {
        body.add(each);
      } else if (each instanceof Statement.Section section && name(section).equals(owner)) {
        body.addAll(section.body());
      }
    }
    for (Statement each : body) {
      if (each instanceof Statement.Definition definition
          && definition.name().text().equals(name)
          && (each instanceof Statement.Let || each instanceof Statement.Dial)) {
        statements.add(each);
        statements.addAll(NamedNumbers.in(all.document, each));
      }
    }
    return all.lines(statements);
  }

  /** The lines of a seam: its own, and those within it. */
  public static List<SaidLine> ofSeam(Plan plan, String name) {
    SaidLines all = new SaidLines(plan);
    Set<Statement> statements = new LinkedHashSet<>();
    for (Statement each : all.document.statements()) {
      if (each instanceof Statement.SeamSection seam && seam.name().text().equals(name)) {
        statements.add(seam);
        statements.addAll(seam.body());
      }
    }
    return all.lines(statements);
  }

  private static String name(Statement.Section section) {
    if (section instanceof Statement.PieceSection piece) {
      return piece.name().text();
    }
    return section instanceof Statement.PartSection part ? part.name().text() : "";
  }

  private Optional<Statement.PieceSection> sectionOf(String name, Size size) {
    for (Statement each : document.statements()) {
      if (each instanceof Statement.PieceSection piece
          && piece.name().text().equals(name)
          && holds(piece, size)) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }

  private List<Statement> inPiece(String name, Size size) {
    return sectionOf(name, size).map(Statement.PieceSection::body).orElse(List.of());
  }

  private boolean holds(Statement.PieceSection piece, Size size) {
    if (piece.body().isEmpty()) {
      return true;
    }
    int from = piece.body().get(0).span().start();
    int to = piece.body().get(piece.body().size() - 1).span().end();
    Optional<SizeRange> range =
        plan.things().stream()
            .filter(thing -> from <= thing.given().start() && thing.given().end() <= to)
            .map(PlannedThing::sizes)
            .findFirst();
    return range.isEmpty()
        || (range.get().first().position() <= size.position()
            && size.position() <= range.get().last().position());
  }

  private List<SaidLine> lines(Set<Statement> statements) {
    List<SaidLine> lines = new ArrayList<>();
    for (Statement statement : statements) {
      Map<Span, Expression.Literal> numbers = new LinkedHashMap<>();
      plan.literals().stream()
          .filter(each -> statement.span().start() <= each.span().start())
          .filter(each -> each.span().end() <= statement.span().end())
          .sorted(Comparator.comparingInt(each -> each.span().start()))
          .forEach(each -> numbers.put(each.span(), each));
      lines.add(
          new SaidLine(
              statement, source.line(statement.span().start()), List.copyOf(numbers.values())));
    }
    return lines;
  }
}
