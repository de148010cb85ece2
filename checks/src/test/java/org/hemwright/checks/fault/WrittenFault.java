package org.hemwright.checks.fault;

import java.util.List;
import java.util.Set;

/**
 * One line of a document changed, and what must be told of it.
 *
 * @param where for people
 * @param text the whole document with the change
 * @param line which line was changed, from 1
 * @param checks the checks that are meant for it; {@link #READING} where the document itself is
 *     refused
 * @param about pieces, seams, views or elastics that the finding may be about
 * @param sizes in which it must be told, and in no other; whatever sizes when empty
 */
record WrittenFault(
    String where,
    String text,
    int line,
    Set<String> checks,
    Set<String> about,
    List<String> sizes) {
  /** A finding of reading and drafting, before any check. */
  static final String READING = "reading";

  WrittenFault {
    checks = Set.copyOf(checks);
    about = Set.copyOf(about);
    sizes = List.copyOf(sizes);
  }
}
