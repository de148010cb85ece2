package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;

/** The lines of a piece, by kind. */
final class PieceLines {
  private final PieceDeclaration piece;
  private final Problems problems;

  PieceLines(PieceDeclaration piece, Problems problems) {
    this.piece = piece;
    this.problems = problems;
  }

  /** All lines of a kind. */
  <S extends Statement> List<S> all(Class<S> kind) {
    List<S> lines = new ArrayList<>();
    for (Statement line : piece.section().body()) {
      if (kind.isInstance(line)) {
        lines.add(kind.cast(line));
      }
    }
    return lines;
  }

  /** The one line of a kind; a second one has been told and left out when the text was read. */
  <S extends Statement> Optional<S> one(Class<S> kind) {
    return all(kind).stream().findFirst();
  }

  /** The lines that give it an outline, in the order of the document. */
  List<Statement> outlines() {
    List<Statement> outlines = new ArrayList<>();
    for (Statement line : piece.section().body()) {
      if (line instanceof Statement.Outline
          || line instanceof Statement.Rectangle
          || line instanceof Statement.OutlineTraced
          || line instanceof Statement.OutlineAs
          || line instanceof Statement.Facing) {
        outlines.add(line);
      }
    }
    return outlines;
  }

  /** Whether some line starts with a word but could not be read. */
  boolean unread(String word) {
    return all(Statement.Unread.class).stream().anyMatch(line -> line.word().equals(word));
  }

  /** Whether some line could not be read at all. */
  boolean anyUnread() {
    return !all(Statement.Unread.class).isEmpty();
  }

  /** The place of an edge in the designer's list; where there is none, it is told. */
  Optional<Integer> edge(Name name) {
    int index = piece.indexOf(name.text());
    if (index >= 0) {
      problems.used(piece.edges().get(index).name().span());
      return Optional.of(index);
    }
    boolean known = !unread("outline") && !unread("rectangle");
    if (known && !piece.scope().excuses(name.text()) && !piece.edges().isEmpty()) {
      Unknown.tellNamed(
          problems,
          name,
          "edge-of-piece",
          piece.scope().name(),
          piece.edges().stream().map(PieceDeclaration.DeclaredEdge::name).toList());
    }
    return Optional.empty();
  }
}
