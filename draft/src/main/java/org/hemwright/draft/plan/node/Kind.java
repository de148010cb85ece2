package org.hemwright.draft.plan.node;

import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.QuantityKind;

/** What a slot holds, as far as sums care. */
public enum Kind {
  LENGTH("length"),
  ANGLE("angle"),
  RATIO("ratio"),
  NUMBER("plain-number"),
  /** A 0 without a unit, which is as good as any. */
  ANY("plain-number"),
  /** Not known, because of a problem that has been told. */
  UNKNOWN("plain-number"),
  /** A point, a path or another thing that no sum takes. */
  DRAWN("plain-number");

  private final String key;

  Kind(String key) {
    this.key = key;
  }

  /** For people: "a length". */
  public Argument words() {
    return new Argument.Term(key);
  }

  /** Whether it is a ratio or a plain number, or may be. */
  public boolean isPlain() {
    return this == RATIO || this == NUMBER || this == ANY;
  }

  /** As the domain calls it; a bare 0 is a plain number, and what is drawn is none. */
  public Optional<QuantityKind> quantity() {
    return switch (this) {
      case LENGTH -> Optional.of(QuantityKind.LENGTH);
      case ANGLE -> Optional.of(QuantityKind.ANGLE);
      case RATIO -> Optional.of(QuantityKind.RATIO);
      case NUMBER, ANY -> Optional.of(QuantityKind.NUMBER);
      case UNKNOWN, DRAWN -> Optional.empty();
    };
  }

  /** Of a domain kind. */
  public static Kind of(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> LENGTH;
      case ANGLE -> ANGLE;
      case RATIO -> RATIO;
      case NUMBER -> NUMBER;
    };
  }
}
