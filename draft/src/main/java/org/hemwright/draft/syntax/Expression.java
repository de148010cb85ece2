package org.hemwright.draft.syntax;

/** A number, worked out in every size. */
public sealed interface Expression {
  /** Where it stands. */
  Span span();

  /**
   * A number as written, {@code 12.5 cm} or {@code 1 1/4 in}.
   *
   * @param value before the unit is applied
   */
  record Literal(double value, Unit unit, Span span) implements Expression {}

  /** A measurement, dial, let or solve; {@code pi} is one of them. */
  record Named(Reference reference) implements Expression {
    @Override
    public Span span() {
      return reference.span();
    }
  }

  /** {@code -a}. */
  record Negative(Expression of, Span span) implements Expression {}

  /** {@code a + b} and its like. */
  record Binary(Operator operator, Expression left, Expression right, Span span)
      implements Expression {}

  /** The four sums. */
  enum Operator {
    PLUS,
    MINUS,
    TIMES,
    OVER
  }

  /** {@code length of front.side}. */
  record LengthOf(PathTerm path, Span span) implements Expression {}

  /**
   * {@code distance from a to b}, {@code across from a to b} (x, signed), {@code rise from a to b}
   * (y, signed), {@code angle from a to b} (from the right, counter-clockwise).
   */
  record Between(Measure measure, Reference from, Reference to, Span span) implements Expression {}

  /** What is measured between two points. */
  enum Measure {
    DISTANCE,
    ACROSS,
    RISE,
    ANGLE
  }

  /**
   * {@code girth of panel at hip}: the whole distance across the piece at the height of a point or
   * level, square to the piece's up, over all cut copies.
   */
  record GirthOf(Name piece, Reference at, Span span) implements Expression {}

  /** {@code smaller of a and b}, {@code larger of a and b}. */
  record Either(boolean larger, Expression first, Expression second, Span span)
      implements Expression {}

  /** {@code sine of a}, {@code cosine of a}, {@code tangent of a}: an angle to a plain number. */
  record Trigonometric(Ratio ratio, Expression angle, Span span) implements Expression {}

  /** The three ratios of a right angle. */
  enum Ratio {
    SINE,
    COSINE,
    TANGENT
  }

  /** {@code hypotenuse of a and b}; {@code other side of c and a}: lengths of a right triangle. */
  record RightTriangle(boolean hypotenuse, Expression first, Expression second, Span span)
      implements Expression {}

  /** {@code round x to 1/8 in}, {@code round up x to 5 mm}, {@code round down x to 5 mm}. */
  record Rounded(Way way, Expression value, Expression step, Span span) implements Expression {}

  /** Which way to round. */
  enum Way {
    NEAREST,
    UP,
    DOWN
  }
}
