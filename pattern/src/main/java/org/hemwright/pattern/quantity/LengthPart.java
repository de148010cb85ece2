package org.hemwright.pattern.quantity;

/** A stretch of a length's text, so that fractions can be set as fractions. */
public sealed interface LengthPart {
  /** Words, signs and digits set as they stand. */
  record Words(String text) implements LengthPart {}

  /**
   * A fraction in lowest terms, less than 1.
   *
   * @param numerator 1 or more
   * @param denominator more than the numerator
   */
  record Fraction(int numerator, int denominator) implements LengthPart {}
}
