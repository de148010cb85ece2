package org.hemwright.draft.edit;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Span;

/**
 * One way in which a drag can be written.
 *
 * @param kind which of her numbers change
 * @param name the dial or {@code let} that changes; empty for the statement's own
 * @param reach over which sizes, where the number is stepped by size
 * @param text the document in which the numbers stand that change: hers, or hers with legs or steps
 *     added that as yet change nothing
 * @param variables the numbers: each a group of literals that change by the same amount
 * @param line the line of the statement that changes, from 1
 */
public record Grip(
    Kind kind,
    String name,
    Optional<Reach> reach,
    String text,
    List<List<Span>> variables,
    int line) {
  public Grip {
    variables = variables.stream().map(List::copyOf).toList();
    if (variables.isEmpty()) {
      throw new IllegalArgumentException("a drag changes a number at least");
    }
  }

  /** Which numbers change. */
  public enum Kind {
    /** Those of the statement itself. */
    OWN,
    /** A dial's. */
    DIAL,
    /** Those of a {@code let}. */
    LET,
    /** Of legs that are added to the statement. */
    LEG
  }

  /** Over which sizes a stepped number changes. */
  public enum Reach {
    /** In all sizes alike. */
    ALL,
    /** From this size up. */
    FROM_HERE,
    /** In this size alone. */
    THIS
  }
}
