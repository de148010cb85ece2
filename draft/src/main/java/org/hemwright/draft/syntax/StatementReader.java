package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement.Unread;
import org.hemwright.pattern.finding.Finding;

/**
 * Reads one statement as one of the forms it may be.
 *
 * <p>Where a comma or an open bracket at the end of its line made it swallow the next statement, it
 * is cut there. Where it cannot be read, the likeliest mend is told and the statement is read as if
 * it were mended; else it stays unread.
 */
final class StatementReader {
  private final Source source;
  private final Slips slips;
  private final List<Line> lines;
  private final FoundSoFar found;

  /**
   * Reads the statements of a document.
   *
   * @param lines all lines of the document
   * @param found takes what is found
   */
  StatementReader(Source source, List<Line> lines, FoundSoFar found) {
    this.source = source;
    this.slips = new Slips(source);
    this.lines = lines;
    this.found = found;
  }

  /** A statement, and the lines that it took. */
  record Result(Statement statement, Written written) {}

  /**
   * Reads a statement.
   *
   * @param here where it stands: what follows its lines may be such a statement too
   */
  Result read(Written written, List<Form> forms, Where here) {
    Optional<Result> whole = tried(written, forms);
    if (whole.isPresent()) {
      return whole.get();
    }
    for (int count = 1; count < written.lines().size(); count++) {
      boolean another = !starts(written, count, here).isEmpty();
      Optional<Result> cut = another ? tried(written.upTo(count), forms) : Optional.empty();
      if (cut.isPresent()) {
        return cut.get();
      }
    }
    for (int count = 1; count < written.lines().size(); count++) {
      if (startsAnother(written, count, here)) {
        return unreadable(written.upTo(count).withComma(), forms);
      }
    }
    return unreadable(written, forms);
  }

  private Result unreadable(Written written, List<Form> forms) {
    written.unclosed().ifPresent(bracket -> found.add(unclosed(bracket)));
    boolean told =
        written.unclosed().isPresent()
            || written.lines().stream()
                .flatMap(line -> line.slips().stream())
                .anyMatch(
                    slip ->
                        slip.code().equals("quote-unclosed")
                            || slip.code().equals("line-too-long"));
    if (told || found.isEnough()) {
      return new Result(unread(written, forms), written);
    }
    Complaint complaint = Complaint.about(source, written.tokens(), forms);
    found.add(complaint.finding());
    return new Result(
        complaint.mended().map(Statement.class::cast).orElseGet(() -> unread(written, forms)),
        written);
  }

  /** The forms that a later line of a statement would start if it stood alone. */
  private static List<Form> starts(Written written, int count, Where here) {
    Token first = written.lines().get(count).tokens().get(0);
    if (!first.isWord()) {
      return List.of();
    }
    List<Form> forms = Forms.at(here, first.text());
    return forms.isEmpty() ? Forms.at(Where.LEFT_EDGE, first.text()) : forms;
  }

  /** Whether a later line of a statement is a statement of its own. */
  private boolean startsAnother(Written written, int count, Where here) {
    List<Form> forms = starts(written, count, here);
    Written rest = Written.at(lines, written.lines().get(count).number() - 1);
    return !forms.isEmpty()
        && rest.comma().isEmpty()
        && new Reading(source, rest.tokens()).whole(forms).isPresent();
  }

  /** Reads a statement if it can be read, but for a comma or bracket too many. */
  private Optional<Result> tried(Written written, List<Form> forms) {
    List<Token> tokens = new ArrayList<>(written.tokens());
    if (written.unclosed().isPresent()) {
      int end = tokens.get(tokens.size() - 1).span().end();
      tokens.add(new Token(Token.Kind.SYMBOL, ")", 0, true, new Span(end, end)));
    }
    Reading reading = new Reading(source, tokens);
    Optional<Object> node = reading.whole(forms);
    if (node.isPresent()) {
      found.addAll(reading.soft());
      written.comma().ifPresent(comma -> found.add(commaAtEnd(comma)));
      written.unclosed().ifPresent(bracket -> found.add(unclosed(bracket)));
    }
    return node.map(statement -> new Result((Statement) statement, written));
  }

  private Finding unclosed(Token bracket) {
    return slips.fail("bracket-unclosed", bracket.span()).build();
  }

  private Finding commaAtEnd(Token comma) {
    return slips
        .fail("comma-at-end", comma.span())
        .mendedBy(source.replace(comma.span(), ""))
        .build();
  }

  /** A statement that could not be read, with the name it would have given. */
  static Unread unread(Written written, List<Form> forms) {
    List<Token> tokens = written.tokens();
    Line last = written.last();
    int start = written.first().indent();
    int end = last.tokens().get(last.tokens().size() - 1).span().end();
    String word = !tokens.isEmpty() && tokens.get(0).isWord() ? tokens.get(0).text() : "";
    boolean named =
        !forms.isEmpty()
            && forms.get(0).shape().parts().size() > 1
            && forms.get(0).shape().parts().get(1) instanceof Shape.Gap gap
            && gap.label().equals("name")
            && tokens.size() > 1
            && tokens.get(1).isWord();
    Optional<Name> name =
        named
            ? Optional.of(new Name(tokens.get(1).text(), tokens.get(1).span()))
            : Optional.empty();
    String form = forms.isEmpty() ? word : forms.get(0).firstWords().get(0);
    return new Unread(form, name, List.of(), new Span(start, end));
  }
}
