package org.hemwright.draft.syntax;

import java.util.Arrays;
import org.hemwright.pattern.quantity.QuantityKind;

/** A unit as the language writes it. */
public enum Unit {
  MM("mm", QuantityKind.LENGTH, 1),
  CM("cm", QuantityKind.LENGTH, 10),
  IN("in", QuantityKind.LENGTH, 25.4),
  DEG("deg", QuantityKind.ANGLE, Math.PI / 180),
  PERCENT("%", QuantityKind.RATIO, 0.01),
  /** No unit: a plain number, or 0 of any kind. */
  NONE("", QuantityKind.NUMBER, 1);

  private final String word;
  private final QuantityKind kind;
  private final double factor;

  Unit(String word, QuantityKind kind, double factor) {
    this.word = word;
    this.kind = kind;
    this.factor = factor;
  }

  /** Whether a token is a unit's word. */
  static boolean isUnit(Token token) {
    return Arrays.stream(values()).anyMatch(unit -> token.says(unit.word));
  }

  /** As written. */
  public String word() {
    return word;
  }

  /** What it measures. */
  public QuantityKind kind() {
    return kind;
  }

  /** One of it in millimetres, radians, or as a plain number. */
  public double factor() {
    return factor;
  }
}
