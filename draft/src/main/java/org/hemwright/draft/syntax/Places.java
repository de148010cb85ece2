package org.hemwright.draft.syntax;

import java.util.Arrays;
import java.util.List;
import org.hemwright.pattern.finding.Argument;

/** Which parts of a document take lines that start with a word. */
final class Places {
  private static final int MOST_WORDS = 8;

  private Places() {}

  /** The parts of the document that take such a line. */
  static List<Where> of(String firstWord) {
    return Arrays.stream(Where.values())
        .filter(Where::holdsLines)
        .filter(where -> !Forms.at(where, firstWord).isEmpty())
        .toList();
  }

  /** The parts, as a message names them. */
  static Argument named(List<Where> places) {
    return new Argument.AnyOf(
        places.stream().<Argument>map(where -> new Argument.Term(where.term())).toList());
  }

  /** The words with which lines start at a place, a few of them where there are many. */
  static Argument firstWords(Where where) {
    return new Argument.AnyOf(
        Forms.firstWords(where).stream()
            .limit(MOST_WORDS)
            .<Argument>map(word -> Argument.of(Slips.quoted(word)))
            .toList());
  }
}
