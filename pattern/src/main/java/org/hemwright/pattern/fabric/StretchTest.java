package org.hemwright.pattern.fabric;

import java.util.OptionalDouble;

/**
 * A piece of cloth pulled along a ruler (handbook section 4, "Stretch %" and "Recovery %"): how far
 * it gives, and how far it comes back.
 *
 * @param rest its length before (mm), more than 0
 * @param stretched pulled to firm resistance (mm), at least {@code rest}
 * @param released after it was let go (mm); nothing where that was not measured
 */
public record StretchTest(double rest, double stretched, OptionalDouble released) {
  public StretchTest {
    if (!(rest > 0) || !(stretched >= rest)) {
      throw new IllegalArgumentException("cloth is pulled longer than it was");
    }
    if (released.isPresent()
        && !(released.getAsDouble() >= rest && released.getAsDouble() <= stretched)) {
      throw new IllegalArgumentException("released, it lies between the two");
    }
  }

  /** How far it stretches as a share: 0.35 for 35 %. */
  public double stretch() {
    return stretched / rest - 1;
  }

  /** The share of that which it gives back; nothing where it was not let go or not pulled. */
  public OptionalDouble recovery() {
    return released.isPresent() && stretched > rest
        ? OptionalDouble.of((stretched - released.getAsDouble()) / (stretched - rest))
        : OptionalDouble.empty();
  }

  /** How much longer it stays, as a share of what it was. */
  public OptionalDouble growth() {
    return released.isPresent()
        ? OptionalDouble.of(released.getAsDouble() / rest - 1)
        : OptionalDouble.empty();
  }
}
