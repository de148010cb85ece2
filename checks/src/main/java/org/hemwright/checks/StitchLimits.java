package org.hemwright.checks;

/**
 * What a home machine sews; lengths in millimetres.
 *
 * @param shortest its shortest stitch
 * @param longest its longest
 * @param widest its widest zigzag
 */
public record StitchLimits(double shortest, double longest, double widest) {
  /** Common practice, no source: a buttonhole's 0.2 mm to 6 mm for basting, 9 mm wide. */
  public static final StitchLimits USUAL = new StitchLimits(0.2, 6, 9);

  public StitchLimits {
    CheckSettings.inOrder(shortest, longest);
    CheckSettings.inOrder(widest);
  }
}
