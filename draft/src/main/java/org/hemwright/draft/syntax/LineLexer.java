package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Cuts a line into tokens.
 *
 * <p>A character that a word processor or another language would put there (a curly quote, a
 * decimal comma, a multiplication sign) is told with its mend and read as if it were mended.
 */
final class LineLexer {
  /** Beyond this a line is not read to its end. */
  static final int MOST_TOKENS = 2000;

  /** Beyond this a number can be no length on any table. */
  static final double LARGEST = 1e9;

  private static final Map<Integer, String> LOOK_ALIKES =
      Map.ofEntries(
          Map.entry((int) '\u2212', "-"),
          Map.entry((int) '\u2013', "-"),
          Map.entry((int) '\u2014', "-"),
          Map.entry((int) '\u00d7', "*"),
          Map.entry((int) '\u00b7', "*"),
          Map.entry((int) '\u00f7', "/"),
          Map.entry((int) '\u2044', "/"),
          Map.entry((int) '\u00b0', "deg"),
          Map.entry((int) '\u2033', "in"));

  private static final String QUOTES = "\"\u201c\u201d\u201e\u00ab\u00bb";
  private static final String SYMBOLS = "=+-*/(),.<>%";

  private final Source source;
  private final Slips slips;
  private final int end;
  private final List<Token> tokens = new ArrayList<>();
  private final List<Finding> found = new ArrayList<>();
  private Optional<Span> comment = Optional.empty();
  private int at;
  private int lastEnd;

  private LineLexer(Source source, int start, int end) {
    this.source = source;
    this.slips = new Slips(source);
    this.end = end;
    this.at = start;
    this.lastEnd = -1;
  }

  /** Cuts one line; lines count from 1. */
  static Line cut(Source source, int number) {
    int start = source.lineStart(number);
    int end = source.lineEnd(number);
    LineLexer lexer = new LineLexer(source, start, end);
    lexer.skipBlanks();
    int indent = lexer.at;
    lexer.run();
    return new Line(number, start, indent, end, lexer.tokens, lexer.comment, lexer.found);
  }

  private void run() {
    while (at < end) {
      int before = at;
      next();
      skipBlanks();
      if (tokens.size() > MOST_TOKENS) {
        add(
            slips
                .fail("line-too-long", new Span(before, before))
                .with("most", Argument.of(MOST_TOKENS))
                .build());
        at = end;
      }
    }
  }

  private void next() {
    int c = source.text().codePointAt(at);
    if (c == '#') {
      comment = Optional.of(new Span(at, end));
      at = end;
    } else if (QUOTES.indexOf(c) >= 0) {
      words();
    } else if (Character.isLetter(c)) {
      int start = at;
      while (at < end && isNameCharacter(source.text().codePointAt(at))) {
        at += Character.charCount(source.text().codePointAt(at));
      }
      add(Token.Kind.WORD, source.text().substring(start, at), 0, start);
    } else if (NumberText.startsAt(source.text(), at, end)) {
      number();
    } else if (SYMBOLS.indexOf(c) >= 0) {
      at++;
      add(Token.Kind.SYMBOL, Character.toString(c), 0, at - 1);
    } else {
      oddCharacter(c);
    }
  }

  private void oddCharacter(int c) {
    Span span = new Span(at, Math.min(end, at + Character.charCount(c)));
    at = span.end();
    String meant = LOOK_ALIKES.get(c);
    if (meant == null) {
      add(
          slips
              .fail("odd-character", span)
              .with("character", Slips.shown(c))
              .mendedBy(source.replace(span, ""))
              .build());
    } else {
      boolean word = Character.isLetter(meant.charAt(0));
      add(
          slips
              .fail("look-alike", span)
              .with("character", Slips.shown(c))
              .with("meant", meant)
              .mendedBy(source.replace(span, word ? " " + meant : meant))
              .build());
      add(word ? Token.Kind.WORD : Token.Kind.SYMBOL, meant, 0, span.start());
    }
  }

  private void words() {
    int start = at;
    String text = source.text();
    boolean plain = text.charAt(at) == '"';
    StringBuilder words = new StringBuilder();
    boolean closed = false;
    at++;
    while (at < end && !closed) {
      char c = text.charAt(at++);
      if (plain && c == '"' && at < end && text.charAt(at) == '"') {
        words.append('"');
        at++;
      } else if (plain ? c == '"' : QUOTES.indexOf(c) >= 0) {
        closed = true;
      } else {
        words.append(c);
      }
    }
    if (!closed) {
      String kept = words.toString().stripTrailing();
      add(
          slips
              .fail("quote-unclosed", new Span(start, start + 1))
              .with("words", Slips.shown(kept))
              .mendedBy(source.replace(new Span(start, end), '"' + kept + '"'))
              .build());
    } else if (!plain) {
      Span span = new Span(start, at);
      add(
          slips
              .fail("curly-quotes", span)
              .with("words", Slips.shown(words.toString()))
              .mendedBy(source.replace(span, '"' + words.toString() + '"'))
              .build());
    }
    add(Token.Kind.TEXT, words.toString(), 0, start);
  }

  private void number() {
    int start = at;
    boolean divides = start > 0 && source.text().charAt(start - 1) == '/';
    NumberText read = NumberText.read(source.text(), start, end, divides);
    at = read.end();
    Span span = new Span(start, at);
    boolean follows = lastEnd == start;
    double value = read.value();
    if (!(Math.abs(value) < LARGEST)) {
      add(
          slips
              .fail(read.slip().orElse("number-too-long"), span)
              .with("number", Slips.shown(source.text(span)))
              .build());
      value = LARGEST;
    } else if (read.slip().isPresent() && !follows) {
      add(
          slips
              .fail(read.slip().get(), span)
              .with("number", Slips.shown(source.text(span)))
              .with("meant", Slips.shown(read.meant()))
              .mendedBy(source.replace(span, read.meant()))
              .build());
    }
    add(Token.Kind.NUMBER, source.text(span), value, start);
  }

  private void add(Finding slip) {
    if (found.size() <= DocumentReader.MOST_FINDINGS) {
      found.add(slip);
    }
  }

  private void add(Token.Kind kind, String text, double value, int start) {
    tokens.add(new Token(kind, text, value, lastEnd == start, new Span(start, at)));
    lastEnd = at;
  }

  private void skipBlanks() {
    while (at < end && isBlank(source.text().charAt(at))) {
      at++;
    }
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || Character.isSpaceChar(c);
  }

  private static boolean isNameCharacter(int c) {
    return Character.isLetterOrDigit(c) || c == '_';
  }
}
