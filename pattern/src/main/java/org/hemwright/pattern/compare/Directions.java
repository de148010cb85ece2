package org.hemwright.pattern.compare;

import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;

/** Directions as an angle, counter-clockwise from rightward. */
final class Directions {
  private Directions() {}

  static Argument of(Vector direction) {
    return Argument.of(Quantity.angle(direction.angle()));
  }
}
