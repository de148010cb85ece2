package org.hemwright.workbench.traced;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;

/**
 * Where the lines of a piece stand in a document.
 *
 * @param instead the piece whose place it takes; without one it stands after all other pieces
 */
record PiecePlace(Document document, Optional<Statement.PieceSection> instead) {
  /**
   * The document with the piece in it.
   *
   * @param firstLine the number of the piece's first line
   */
  record Placed(String text, int firstLine) {}

  /** The place of the piece that is to be taken, or one of its own. */
  static PiecePlace of(Document document, Optional<String> instead) {
    return new PiecePlace(document, section(document, instead));
  }

  private static Optional<Statement.PieceSection> section(
      Document document, Optional<String> name) {
    return document.statements().stream()
        .filter(Statement.PieceSection.class::isInstance)
        .map(Statement.PieceSection.class::cast)
        .filter(piece -> name.equals(Optional.of(piece.name().text())))
        .findFirst();
  }

  /** The document with these lines. */
  Placed with(List<TrialLine> lines) {
    Source source = Source.of(document);
    String text = document.text();
    String written = String.join("\n", lines.stream().map(TrialLine::text).toList());
    if (instead.isPresent()) {
      int first = source.line(instead.get().span().start());
      int end = source.lineEnd(source.line(StrictMath.max(0, end(instead.get()) - 1)));
      return new Placed(
          text.substring(0, source.lineStart(first)) + written + text.substring(end), first);
    }
    int after = -1;
    for (Statement each : document.statements()) {
      boolean before =
          each instanceof Statement.PieceSection
              || each instanceof Statement.PartSection
              || each instanceof Statement.FabricSection
              || each instanceof Statement.Heading;
      after = before ? StrictMath.max(after, end(each)) : after;
    }
    int at = after < 0 ? text.length() : source.lineEnd(source.line(StrictMath.max(0, after - 1)));
    String before = text.substring(0, at) + "\n\n";
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    return new Placed(before + written + text.substring(at), line);
  }

  private static int end(Statement statement) {
    if (statement instanceof Statement.Section section && !section.body().isEmpty()) {
      return section.body().get(section.body().size() - 1).span().end();
    }
    return statement.span().end();
  }
}
