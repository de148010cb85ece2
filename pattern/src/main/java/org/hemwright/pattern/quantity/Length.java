package org.hemwright.pattern.quantity;

import java.util.Optional;

/**
 * A length where a person types or reads it; between those two it is a plain number of millimetres.
 *
 * @param mm millimetres, finite; less than 0 where one length falls short of another
 */
public record Length(double mm) implements Comparable<Length> {
  public Length {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("a length is a finite number, not " + mm);
    }
  }

  /** Reads {@code 12.5 cm}, {@code 3/4 in}, {@code 1 1/4 in}, {@code 4 mm}; only 0 lacks a unit. */
  public static Reading<Length> read(String text) {
    return NumberReader.read(text, word -> LengthUnit.of(word).map(LengthUnit::mm), Length::new);
  }

  /** Reads the same where a number without a unit is in {@code assumed}, as below a heading. */
  public static Reading<Length> read(String text, LengthUnit assumed) {
    return NumberReader.read(
        text,
        word ->
            word.isEmpty() ? Optional.of(assumed.mm()) : LengthUnit.of(word).map(LengthUnit::mm),
        Length::new);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(mm, other.mm);
  }
}
