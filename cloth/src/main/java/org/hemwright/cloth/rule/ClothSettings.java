package org.hemwright.cloth.rule;

/**
 * What is lost of the cloth besides the pieces.
 *
 * @param selvedge what each side of the cloth loses of its labelled width (mm), 0 or more
 * @param gap the least distance between two pieces (mm), 0 or more; at 0 they may touch
 */
public record ClothSettings(double selvedge, double gap) {
  /** Handbook section 5: 15 mm a side. Pieces may touch: common practice, no source. */
  public static final ClothSettings HANDBOOK = new ClothSettings(15, 0);

  public ClothSettings {
    if (!(selvedge >= 0) || !(gap >= 0)) {
      throw new IllegalArgumentException(
          "selvedge and gap are lengths from 0 up, not " + selvedge + " and " + gap);
    }
  }

  /** The same with another gap. */
  public ClothSettings withGap(double other) {
    return new ClothSettings(selvedge, other);
  }

  /** The width between the selvedge margins (mm) of cloth sold as so wide. */
  public double usable(double width) {
    return width - 2 * selvedge;
  }
}
