package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;

/**
 * One line of the text, cut into tokens.
 *
 * @param number from 1
 * @param start offset of its first character
 * @param indent offset of its first character that is not blank, or its end
 * @param end offset after its last character, before the line end
 * @param tokens without the comment
 * @param comment from the {@code #} to the end
 * @param slips what was wrong with single characters
 */
record Line(
    int number,
    int start,
    int indent,
    int end,
    List<Token> tokens,
    Optional<Span> comment,
    List<Finding> slips) {
  Line {
    tokens = List.copyOf(tokens);
    slips = List.copyOf(slips);
  }

  boolean isBlank() {
    return tokens.isEmpty() && comment.isEmpty();
  }

  boolean atLeftEdge() {
    return indent == start;
  }

  /** Whether a word stands at the left edge: it starts anew whatever came before. */
  boolean startsAnew() {
    return atLeftEdge() && !tokens.isEmpty() && tokens.get(0).isWord();
  }
}
