package org.hemwright.pattern;

import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * A design number that the designer may turn.
 *
 * @param name {@code hip_ease}
 * @param kind what it measures
 * @param value as the document has it (mm, radians or plain)
 * @param from the least it may be
 * @param to the most
 * @param text what it does, for people
 * @param origin where the document states it
 */
public record Dial(
    String name,
    QuantityKind kind,
    double value,
    double from,
    double to,
    String text,
    Origin origin) {
  public Dial {
    if (!(from <= value && value <= to)) {
      throw new IllegalArgumentException(
          name + " lies between its ends: " + from + " <= " + value + " <= " + to);
    }
  }
}
