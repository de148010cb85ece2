package org.hemwright.pattern.make;

import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.pattern.quantity.Quantity;

/** A length that a step speaks of: the same in every size, or a number of the document. */
public sealed interface Amount {
  /**
   * In one size (mm); absent where its number could not be worked out.
   *
   * @param numbers of that size, by their names
   */
  OptionalDouble in(Map<String, Quantity> numbers);

  /**
   * The same in every size.
   *
   * @param mm 0 or more
   */
  record Fixed(double mm) implements Amount {
    public Fixed {
      if (!(mm >= 0) || !Double.isFinite(mm)) {
        throw new IllegalArgumentException("a length is 0 mm or more, not " + mm);
      }
    }

    @Override
    public OptionalDouble in(Map<String, Quantity> numbers) {
      return OptionalDouble.of(mm);
    }
  }

  /**
   * A measurement, dial, let or solve.
   *
   * @param number its name, {@code elastic_width}
   */
  record Named(String number) implements Amount {
    @Override
    public OptionalDouble in(Map<String, Quantity> numbers) {
      Quantity value = numbers.get(number);
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.amount());
    }
  }

  /** The same in every size (mm). */
  static Amount mm(double mm) {
    return new Fixed(mm);
  }
}
