package org.hemwright.pattern.quantity;

import java.util.Arrays;
import java.util.Optional;

/** The units in which lengths are typed and read. */
public enum LengthUnit {
  MILLIMETRES(1, "mm"),
  CENTIMETRES(10, "cm"),
  INCHES(25.4, "in");

  private final double mm;
  private final String word;

  LengthUnit(double mm, String word) {
    this.mm = mm;
    this.word = word;
  }

  /** One of it in millimetres; the inch is 25.4 mm by definition (international inch, 1959). */
  public double mm() {
    return mm;
  }

  /** As it is written after a number. */
  public String word() {
    return word;
  }

  /** The unit of that word, in lower or upper case. */
  public static Optional<LengthUnit> of(String word) {
    return Arrays.stream(values()).filter(unit -> unit.word.equalsIgnoreCase(word)).findFirst();
  }
}
