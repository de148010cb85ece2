package org.hemwright.draft.syntax;

import java.util.Arrays;
import java.util.List;

/** Which parts of a document take lines that start with a word. */
final class Places {
  private Places() {}

  /** The parts of the document that take such a line. */
  static List<Where> of(String firstWord) {
    return Arrays.stream(Where.values())
        .filter(Where::holdsLines)
        .filter(where -> !Forms.at(where, firstWord).isEmpty())
        .toList();
  }

  /** The parts, as a message names them. */
  static String named(List<Where> places) {
    return String.join(" or ", places.stream().map(Where::wanted).toList());
  }
}
