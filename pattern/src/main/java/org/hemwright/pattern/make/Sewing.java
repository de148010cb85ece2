package org.hemwright.pattern.make;

import java.util.List;
import java.util.Optional;

/**
 * How a step is stitched.
 *
 * @param choices the stitches that do, the designer's first choice first
 * @param raw that it may also be left as it is cut, and when
 * @param needle where it is another than the usual one
 * @param rows how many rows, 1 or more
 * @param apart between rows (mm)
 * @param distance how far from what
 */
public record Sewing(
    List<Stitch> choices,
    Optional<Raw> raw,
    Optional<Needle> needle,
    int rows,
    Optional<Amount> apart,
    Optional<Distance> distance) {
  /** Nothing is stitched. */
  public static final Sewing NONE =
      new Sewing(
          List.of(), Optional.empty(), Optional.empty(), 1, Optional.empty(), Optional.empty());

  public Sewing {
    choices = List.copyOf(choices);
    if (rows < 1) {
      throw new IllegalArgumentException("stitching has a row or more, not " + rows);
    }
  }

  /**
   * Leaving it as it is cut is one of the choices.
   *
   * @param when in the designer's words: "on cloth that does not fray"
   */
  public record Raw(Optional<String> when) {}

  /**
   * How far the stitching lies from something.
   *
   * @param amount (mm)
   */
  public record Distance(Amount amount, From from) {
    /** From what. */
    public enum From {
      RAW_EDGE,
      FOLD,
      EDGE,
      SEAM
    }
  }

  /** The designer's first choice. */
  public Optional<Stitch> stitch() {
    return choices.stream().findFirst();
  }

  /** Whether every stitch that she offers stretches with the cloth. */
  public boolean stretches() {
    return choices.stream().allMatch(Stitch::stretches);
  }
}
