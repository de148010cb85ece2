package org.hemwright.pattern.quantity;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How finely each kind of length is shown, and which metric and inch lengths the trade sells and
 * sews as one. Only what is printed is nominal: a drawn length stays what the designer wrote.
 *
 * @param steps for each kind
 * @param partners the nominal pairs, which allowances and notions are shown by
 */
public record LengthRounding(Map<LengthKind, Step> steps, List<Partners> partners) {
  /** A length this close to one of a pair is that one (mm): what a printed digit can tell. */
  private static final double SAME = 0.05;

  /**
   * The handbook's ways. Body and finished sizes to 1/8 in (design, "Numbers") and 1 mm. Pairs of 6
   * mm, 1, 1.3 and 1.5 cm: handbook, introduction; 3 cm with 1 1/4 in: design, "Numbers"; the
   * others: common practice, from memory.
   */
  public static final LengthRounding HANDBOOK =
      new LengthRounding(
          Map.of(
              LengthKind.BODY, new Step(1, 8, 10),
              LengthKind.FINISHED, new Step(1, 8, 10),
              LengthKind.ALLOWANCE, new Step(1, 16, 10),
              LengthKind.NOTION, new Step(1, 16, 10),
              LengthKind.DIFFERENCE, new Step(0.1, 32, 100)),
          List.of(
              new Partners(3, 2),
              new Partners(5, 3),
              new Partners(6, 4),
              new Partners(10, 6),
              new Partners(13, 8),
              new Partners(15, 10),
              new Partners(20, 12),
              new Partners(22, 14),
              new Partners(25, 16),
              new Partners(30, 20),
              new Partners(38, 24),
              new Partners(40, 24),
              new Partners(50, 32),
              new Partners(75, 48),
              new Partners(100, 64)));

  public LengthRounding {
    for (LengthKind kind : LengthKind.values()) {
      if (!steps.containsKey(kind)) {
        throw new IllegalArgumentException("no step is given for " + kind);
      }
    }
    steps = Collections.unmodifiableMap(new EnumMap<>(steps));
    partners = List.copyOf(partners);
  }

  /**
   * How finely one kind is shown.
   *
   * @param mm the metric step (mm): a power of ten, or a half or fifth of one
   * @param inchParts into how many parts an inch is divided: a power of two
   * @param millimetresBelow shorter lengths are shown in millimetres, others in centimetres (mm)
   */
  public record Step(double mm, int inchParts, double millimetresBelow) {
    public Step {
      if (!(mm > 0) || inchParts < 1 || Integer.bitCount(inchParts) != 1) {
        throw new IllegalArgumentException("steps are more than 0 mm, and halves of inches");
      }
    }
  }

  /**
   * Two lengths that the trade takes for one.
   *
   * @param mm the metric one (mm)
   * @param sixteenths the other, in sixteenths of an inch
   */
  public record Partners(double mm, int sixteenths) {
    /** The exact length of the inch partner (mm). */
    public double inchesInMm() {
      return sixteenths * LengthUnit.INCHES.mm() / 16;
    }
  }

  /** How finely a kind is shown. */
  public Step step(LengthKind kind) {
    Step step = steps.get(kind);
    return step == null ? new Step(1, 8, 10) : step;
  }

  /** The pair that a length belongs to, if its kind is shown by pairs. */
  Optional<Partners> partners(double mm, LengthKind kind) {
    if (kind != LengthKind.ALLOWANCE && kind != LengthKind.NOTION) {
      return Optional.empty();
    }
    return partners.stream()
        .filter(pair -> Math.abs(pair.mm() - mm) <= SAME)
        .findFirst()
        .or(
            () ->
                partners.stream()
                    .filter(pair -> Math.abs(pair.inchesInMm() - mm) <= SAME)
                    .findFirst());
  }
}
