package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;

/** Something that holds in some sizes. */
public sealed interface Condition {
  /** Where it stands. */
  Span span();

  /**
   * {@code hip > 110 cm}; the words are {@code <}, {@code >}, {@code at least}, {@code at most}.
   */
  record Compared(Expression left, Comparison comparison, Expression right, Span span)
      implements Condition {}

  /** How two numbers are compared. */
  enum Comparison {
    LESS,
    MORE,
    AT_LEAST,
    AT_MOST
  }

  /** {@code size from 22}, {@code size up to 14}, {@code size from 14 to 22}. */
  record SizeWithin(Optional<NumberRule.SizeWord> from, Optional<NumberRule.SizeWord> to, Span span)
      implements Condition {}

  /** {@code A and B}. */
  record All(List<Condition> parts, Span span) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }
  }
}
