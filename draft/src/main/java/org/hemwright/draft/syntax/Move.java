package org.hemwright.draft.syntax;

/** What is done to a copy of a drawn thing before it is used. */
public sealed interface Move {
  /** Where it stands. */
  Span span();

  /** {@code mirrored across a to b}, {@code mirrored across centre}: the path must be straight. */
  record Mirrored(PathTerm axis, Span span) implements Move {}

  /** {@code moved right 3 cm}. */
  record Moved(Direction direction, Expression distance, Span span) implements Move {}

  /** {@code moved from a to b}: by the step between two points. */
  record MovedFromTo(Reference from, Reference to, Span span) implements Move {}

  /** {@code turned 10 deg about p}: counter-clockwise. */
  record Turned(Expression angle, Reference about, Span span) implements Move {}
}
