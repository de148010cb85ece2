package org.hemwright.draft.syntax;

/** A way to go. */
public sealed interface Direction {
  /** Where it stands. */
  Span span();

  /** {@code up}, {@code down}, {@code left}, {@code right}. */
  record Compass(Way way, Span span) implements Direction {}

  /** The four ways on the table. */
  enum Way {
    UP,
    DOWN,
    LEFT,
    RIGHT
  }

  /** {@code at 30 deg}: counter-clockwise from the right. */
  record AtAngle(Expression angle, Span span) implements Direction {}

  /** {@code toward b}: from where one stands. */
  record Toward(Reference point, Span span) implements Direction {}

  /** {@code away from b}: from where one stands. */
  record AwayFrom(Reference point, Span span) implements Direction {}

  /** {@code as from a to b}. */
  record AsFromTo(Reference from, Reference to, Span span) implements Direction {}

  /** {@code along PATH}: its heading at the place nearest to where one stands. */
  record Along(PathTerm path, Span span) implements Direction {}

  /**
   * {@code square to PATH} turns a quarter to the left of its heading there; {@code square right of
   * PATH} to the right.
   */
  record SquareTo(PathTerm path, boolean toTheRight, Span span) implements Direction {}

  /** {@code turned 10 deg from DIRECTION}: counter-clockwise. */
  record Turned(Expression angle, Direction from, Span span) implements Direction {}
}
