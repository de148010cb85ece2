package org.hemwright.draft.syntax;

/** A place along a path. */
public sealed interface Along {
  /** Where it stands. */
  Span span();

  /** {@code at side_hip}: a point that lies on the path. */
  record AtPoint(Reference point, Span span) implements Along {}

  /** {@code at 12 cm from start}, {@code at 40% from end}: a length or a share of the path. */
  record Measured(Expression amount, boolean fromEnd, Span span) implements Along {}

  /** {@code traced "notches"}: where short lines or dots of the traced drawing lie on it. */
  record Traced(String mark, Span span) implements Along {}

  /** {@code at halves}, {@code at quarters}, {@code at thirds}, …: evenly, without the ends. */
  record Even(int parts, Span span) implements Along {}
}
