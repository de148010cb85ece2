package org.hemwright.draft.edit;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/** Where a held thing is in one size, and where the text says it. */
final class HeldPlace {
  private static final Pattern WORD = Pattern.compile("\\w+");

  private HeldPlace() {}

  /**
   * Where it is (mm); absent where it is not drawn in that size.
   *
   * @param size the place of the size among those of the values
   */
  static Optional<Point> at(Evaluation values, int size, Held held) {
    if (held instanceof Held.OfPoint point) {
      return thing(values, size, point.piece(), point.point())
          .flatMap(thing -> values.point(size, thing));
    } else if (held instanceof Held.OfLine line) {
      return path(values, size, line).map(path -> path.at(line.share() * path.length()).point());
    } else if (held instanceof Held.OfNotch notch) {
      return piece(values, size, notch.piece())
          .filter(piece -> notch.number() < piece.notches().size())
          .flatMap(piece -> onEdge(piece, piece.notches().get(notch.number())));
    }
    return Optional.empty();
  }

  private static Optional<Path> path(Evaluation values, int size, Held.OfLine line) {
    return piece(values, size, line.piece())
        .flatMap(piece -> piece.edge(line.line()))
        .map(edge -> edge.path())
        .or(
            () ->
                thing(values, size, line.piece(), line.line())
                    .flatMap(thing -> values.path(size, thing)));
  }

  private static Optional<Point> onEdge(Piece piece, Notch notch) {
    return piece
        .edge(notch.edge())
        .map(edge -> edge.path().at(Math.min(edge.path().length(), notch.distance())).point());
  }

  private static Optional<Piece> piece(Evaluation values, int size, String name) {
    return values.pieces(size).stream().filter(piece -> piece.name().equals(name)).findFirst();
  }

  private static Optional<PlannedThing> thing(
      Evaluation values, int size, String owner, String name) {
    int position = values.sizes().get(size).position();
    return values.plan().things().stream()
        .filter(
            thing ->
                thing.owner().equals(owner)
                    && thing.name().equals(name)
                    && thing.sizes().first().position() <= position
                    && position <= thing.sizes().last().position())
        .findFirst();
  }

  /** The statement that says it; absent where it follows from others without one of its own. */
  static Optional<Statement> statement(Evaluation values, int size, Held held) {
    Document document = values.plan().document();
    if (held instanceof Held.OfNotch notch) {
      Source source = Source.of(document);
      return piece(values, size, notch.piece())
          .filter(piece -> notch.number() < piece.notches().size())
          .map(piece -> piece.notches().get(notch.number()).origin())
          .flatMap(
              origin ->
                  found(
                      document.statements(),
                      new Span(
                          source.lineStart(origin.line()) + origin.column() - 1,
                          source.lineStart(origin.line()) + origin.column() - 1)));
    }
    String name = held instanceof Held.OfPoint point ? point.point() : ((Held.OfLine) held).line();
    return thing(values, size, held.piece(), name)
        .flatMap(thing -> found(document.statements(), thing.given()))
        .flatMap(
            said ->
                said instanceof Statement.Outline outline
                    ? drawn(values, size, held, outline, name)
                    : Optional.of(said));
  }

  /** The line that an edge of the outline takes. */
  private static Optional<Statement> drawn(
      Evaluation values, int size, Held held, Statement.Outline outline, String edge) {
    for (Statement.OutlineEdge each : outline.edges()) {
      if (each.name().text().equals(edge)) {
        String text = Source.of(values.plan().document()).text(each.span());
        for (String word : WORD.matcher(text).results().map(MatchResult::group).toList()) {
          if (!word.equals(edge)) {
            Optional<Statement> line =
                thing(values, size, held.piece(), word)
                    .filter(thing -> !thing.what().isPoint())
                    .flatMap(thing -> found(values.plan().document().statements(), thing.given()));
            if (line.isPresent()) {
              return line;
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The innermost statement that holds a span. */
  private static Optional<Statement> found(List<Statement> statements, Span span) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.Section section) {
        Optional<Statement> inside = found(section.body(), span);
        if (inside.isPresent()) {
          return inside;
        }
      } else if (statement.span().start() <= span.start() && span.end() <= statement.span().end()) {
        return Optional.of(statement);
      }
    }
    return Optional.empty();
  }
}
