package org.hemwright.pattern.piece;

/**
 * How notches are drawn.
 *
 * @param depth how far a notch reaches in from the cut line (mm), more than 0; never drawn deeper
 *     than half of the allowance
 * @param spacing how far the two marks of a double notch stand apart along the stitch line (mm),
 *     more than 0
 */
public record NotchSize(double depth, double spacing) {
  /**
   * 4 mm deep (handbook section 1, Notches: typically 3 to 4 mm), 6 mm apart (common practice, no
   * source).
   */
  public static final NotchSize USUAL = new NotchSize(4, 6);

  public NotchSize {
    if (!(depth > 0) || !(spacing > 0)) {
      throw new IllegalArgumentException(
          "a notch has a depth and its marks a spacing, not " + depth + " and " + spacing + " mm");
    }
  }
}
