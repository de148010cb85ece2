package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What may come next at a place of the text, by the table of forms: the words that would let a line
 * go on there, and what its slots take.
 *
 * @param from where the word that is being written starts; what is chosen goes in its place
 * @param words fixed words, in the order of the table
 * @param terms the keys of the phrases of what else may stand there: {@code point}, {@code number},
 *     {@code path}, {@code size} …, see {@link Slot#term}
 * @param examples for a word that starts a line, the example of its form; else empty
 */
public record Completion(int from, List<String> words, List<String> terms, List<String> examples) {
  public Completion {
    words = List.copyOf(words);
    terms = List.copyOf(terms);
    examples = List.copyOf(examples);
  }

  /**
   * What may come at an offset of the text, which is read up to there only.
   *
   * @param offset from 0 to the text's length (UTF-16 units)
   */
  public static Completion at(String text, int offset) {
    int from = offset;
    while (from > 0 && isNameCharacter(text.charAt(from - 1))) {
      from--;
    }
    Source source = new Source("", text.substring(0, from));
    int last = source.lines();
    int first = last;
    while (first > 1 && goesOn(LineLexer.cut(source, first - 1))) {
      first--;
    }
    Where where = where(source, first);
    List<Token> tokens = new ArrayList<>();
    for (int line = first; line <= last; line++) {
      Line cut = LineLexer.cut(source, line);
      if (cut.comment().isPresent() && line == last) {
        return new Completion(from, List.of(), List.of(), List.of());
      }
      tokens.addAll(cut.tokens());
    }
    if (tokens.isEmpty()) {
      List<String> words = Forms.firstWords(where);
      return new Completion(
          from,
          words,
          List.of(),
          words.stream().map(word -> Forms.at(where, word).get(0).example()).toList());
    }
    if (glued(text, from)) {
      return new Completion(from, List.of(), List.of("member"), List.of());
    }
    Token start = tokens.get(0);
    Reading reading = new Reading(source, tokens);
    Optional<Object> whole = reading.whole(Forms.at(where, start.text()));
    Furthest furthest = reading.furthest();
    boolean reached = furthest.index() >= tokens.size();
    if (!reached && whole.isEmpty()) {
      return new Completion(from, List.of(), List.of(), List.of());
    }
    return new Completion(
        from,
        reached ? furthest.words().stream().filter(Completion::isWord).toList() : List.of(),
        reached
            ? furthest.terms().stream().filter(t -> !t.equals(Reading.END)).toList()
            : List.of(),
        List.of());
  }

  private static boolean glued(String text, int from) {
    return from > 1 && text.charAt(from - 1) == '.' && isNameCharacter(text.charAt(from - 2));
  }

  private static boolean isWord(String word) {
    return Character.isLetter(word.charAt(0));
  }

  private static boolean isNameCharacter(char c) {
    return Character.isLetterOrDigit(c) || c == '_';
  }

  private static boolean goesOn(Line line) {
    List<Token> tokens = line.tokens();
    return !tokens.isEmpty() && tokens.get(tokens.size() - 1).says(",");
  }

  /** Where a line stands: at the left edge, or in the section above it. */
  private static Where where(Source source, int line) {
    Line cut = LineLexer.cut(source, line);
    boolean indented =
        cut.indent() > cut.start() || (cut.tokens().isEmpty() && isBlankStart(source, line));
    if (!indented) {
      return Where.LEFT_EDGE;
    }
    for (int above = line - 1; above >= 1; above--) {
      Line each = LineLexer.cut(source, above);
      if (!each.tokens().isEmpty() && each.indent() == each.start()) {
        return Forms.at(Where.LEFT_EDGE, each.tokens().get(0).text()).stream()
            .flatMap(form -> form.opens().stream())
            .findFirst()
            .orElse(Where.LEFT_EDGE);
      }
    }
    return Where.LEFT_EDGE;
  }

  private static boolean isBlankStart(Source source, int line) {
    int start = source.lineStart(line);
    return start < source.text().length() && source.text().charAt(start) == ' ';
  }
}
