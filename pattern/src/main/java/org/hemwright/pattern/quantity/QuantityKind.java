package org.hemwright.pattern.quantity;

/** What a number measures; like adds to like only. */
public enum QuantityKind {
  /** Millimetres. */
  LENGTH,
  /** Radians. */
  ANGLE,
  /** A share or percentage: 0.35 for 35 %. */
  RATIO,
  /** A plain count or factor. */
  NUMBER
}
