package org.hemwright.pattern.traced;

/** Where on a traced edge a rule stands. */
public sealed interface RulePlace {
  /** The corner at its start or its end. */
  record End(boolean atEnd) implements RulePlace {}

  /** A length from its start or its end (mm). */
  record Distance(double mm, boolean fromEnd) implements RulePlace {}

  /** A share of its length from its start or its end, 0 to 1. */
  record Share(double share, boolean fromEnd) implements RulePlace {}

  /** Beside a dot of the drawing. */
  record Dot(String name) implements RulePlace {}
}
