package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One statement as written: a line, and the lines that go on after its final comma or inside its
 * brackets.
 *
 * @param lines at least one, in order; between them may stand lines of comment only
 * @param tokens of all of them
 * @param unclosed the bracket that is never closed
 * @param comma the final comma after which nothing goes on; it is not among the tokens
 */
record Written(
    List<Line> lines, List<Token> tokens, Optional<Token> unclosed, Optional<Token> comma) {
  /** Over how many lines a statement may go. */
  private static final int MOST_LINES = 200;

  Written {
    lines = List.copyOf(lines);
    tokens = List.copyOf(tokens);
  }

  Line first() {
    return lines.get(0);
  }

  Line last() {
    return lines.get(lines.size() - 1);
  }

  /** The statement that starts with the line at an index; that line holds a token. */
  static Written at(List<Line> all, int index) {
    List<Line> lines = new ArrayList<>(List.of(all.get(index)));
    int open = 0;
    int openedIn = 0;
    int next = index + 1;
    while (true) {
      Line line = lines.get(lines.size() - 1);
      for (Token token : line.tokens()) {
        if (token.says("(")) {
          openedIn = open == 0 ? lines.size() : openedIn;
          open++;
        } else if (token.says(")")) {
          open = Math.max(0, open - 1);
        }
      }
      if (open == 0 && !endsWithComma(line)) {
        return new Written(lines, tokens(lines), Optional.empty(), Optional.empty());
      }
      while (next < all.size() && isCommentOnly(all.get(next))) {
        next++;
      }
      boolean goesOn =
          next < all.size()
              && !all.get(next).tokens().isEmpty()
              && !all.get(next).startsAnew()
              && lines.size() < MOST_LINES;
      if (!goesOn) {
        break;
      }
      lines.add(all.get(next++));
    }
    return cut(open > 0 ? lines.subList(0, openedIn) : lines);
  }

  /** The first {@code count} lines alone, which end with a comma or inside a bracket. */
  Written upTo(int count) {
    return cut(lines.subList(0, count));
  }

  /** The same with its final comma among the tokens. */
  Written withComma() {
    List<Token> all = new ArrayList<>(tokens);
    comma.ifPresent(all::add);
    return new Written(lines, all, unclosed, Optional.empty());
  }

  private static Written cut(List<Line> lines) {
    List<Token> tokens = tokens(lines);
    Optional<Token> comma = Optional.empty();
    if (tokens.get(tokens.size() - 1).says(",")) {
      comma = Optional.of(tokens.remove(tokens.size() - 1));
    }
    return new Written(lines, tokens, opener(tokens), comma);
  }

  /** The outermost bracket that is left open. */
  private static Optional<Token> opener(List<Token> tokens) {
    int open = 0;
    Optional<Token> opener = Optional.empty();
    for (Token token : tokens) {
      if (token.says("(") && open++ == 0) {
        opener = Optional.of(token);
      } else if (token.says(")") && open > 0 && --open == 0) {
        opener = Optional.empty();
      }
    }
    return opener;
  }

  private static List<Token> tokens(List<Line> lines) {
    List<Token> tokens = new ArrayList<>();
    lines.forEach(line -> tokens.addAll(line.tokens()));
    return tokens;
  }

  private static boolean endsWithComma(Line line) {
    return line.tokens().get(line.tokens().size() - 1).says(",");
  }

  private static boolean isCommentOnly(Line line) {
    return line.tokens().isEmpty() && line.comment().isPresent();
  }
}
