package org.hemwright.pattern.make;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stitch with its settings.
 *
 * @param kind which
 * @param length of one stitch (mm)
 * @param width from side to side (mm)
 */
public record Stitch(Kind kind, OptionalDouble length, OptionalDouble width) {
  public Stitch {
    length.ifPresent(Stitch::positive);
    width.ifPresent(Stitch::positive);
  }

  private static void positive(double mm) {
    if (!(mm > 0) || !Double.isFinite(mm)) {
      throw new IllegalArgumentException("a stitch is longer and wider than 0 mm, not " + mm);
    }
  }

  /** A stitch without settings of its own. */
  public static Stitch of(Kind kind) {
    return new Stitch(kind, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** A stitch of this length (mm). */
  public static Stitch of(Kind kind, double length) {
    return new Stitch(kind, OptionalDouble.of(length), OptionalDouble.empty());
  }

  /** A zigzag of this width and length (mm). */
  public static Stitch zigzag(double width, double length) {
    return new Stitch(Kind.ZIGZAG, OptionalDouble.of(length), OptionalDouble.of(width));
  }

  /**
   * The stitches that a home machine, an overlocker or a hand makes. Message files give the maker's
   * words for each under {@link #key}.
   */
  public enum Kind {
    STRAIGHT("straight", "301", 2.5, 0),
    /** Three stitches forward and back: it stretches; its number is not confirmed. */
    STRETCH("stretch", "", 3, 0),
    ZIGZAG("zigzag", "304", 2.5, 2.5),
    /** Two parallel rows above, a zigzag below; its number is not confirmed. */
    TWIN_NEEDLE("twin-needle", "", 3, 3),
    OVERLOCK_THREE("overlock-three", "504", 2.5, 5),
    OVERLOCK_FOUR("overlock-four", "514", 2.5, 6),
    COVER("cover", "406", 3, 5),
    CHAIN("chain", "401", 3, 0),
    BASTING("basting", "301", 4.5, 0),
    /** A home machine's blind hem is a lockstitch form, not 103 (handbook section 7). */
    BLIND_HEM("blind-hem", "", 2.5, 3),
    BUTTONHOLE("buttonhole", "", 0.4, 2.5),
    /** A square with its diagonals, which joins the ends of an elastic. */
    BOX("box", "301", 2.5, 0),
    BACKSTITCH("backstitch", "", 2.5, 0),
    SLIP_STITCH("slip-stitch", "", 5, 0),
    CATCH_STITCH("catch-stitch", "", 6, 4);

    private final String key;
    private final String iso;
    private final double usualLength;
    private final double usualWidth;

    Kind(String key, String iso, double usualLength, double usualWidth) {
      this.key = key;
      this.iso = iso;
      this.usualLength = usualLength;
      this.usualWidth = usualWidth;
    }

    /** The key of its name for the maker: {@code term.stitch-KEY}. */
    public String key() {
      return key;
    }

    /** Its class in ISO 4915, where handbook section 7 confirms one. */
    public Optional<String> iso4915() {
      return iso.isEmpty() ? Optional.empty() : Optional.of(iso);
    }

    /** Whether a row of it stretches with a knit without popping. */
    public boolean stretches() {
      return switch (this) {
        case STRETCH, ZIGZAG, TWIN_NEEDLE, OVERLOCK_THREE, OVERLOCK_FOUR, COVER, CHAIN -> true;
        case CATCH_STITCH -> true;
        case STRAIGHT, BASTING, BLIND_HEM, BUTTONHOLE, BOX, BACKSTITCH, SLIP_STITCH -> false;
      };
    }

    /** Whether it covers the cut edges of what it sews. */
    public boolean finishesEdges() {
      return this == OVERLOCK_THREE || this == OVERLOCK_FOUR;
    }

    /** Whether a hand makes it. */
    public boolean byHand() {
      return this == BACKSTITCH || this == SLIP_STITCH || this == CATCH_STITCH;
    }

    /** How much thread it takes. */
    public ThreadUse thread() {
      return ThreadUse.of(this);
    }
  }

  /** Whether it stretches with the cloth. */
  public boolean stretches() {
    return kind.stretches();
  }

  /** Its length (mm), the usual one where the step gives none (handbook section 7, "Settings"). */
  public double lengthOrUsual() {
    return length.orElse(kind.usualLength);
  }

  /** Its width (mm), the usual one where the step gives none; 0 for a straight one. */
  public double widthOrUsual() {
    return width.orElse(kind.usualWidth);
  }
}
