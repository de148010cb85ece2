package org.hemwright.pattern.make;

import java.util.Optional;

/**
 * A machine needle.
 *
 * @param point its kind
 * @param from its size in hundredths of a millimetre: 75
 * @param to the largest size that does as well; at or above from
 * @param twin whether two needles stand on one shank
 * @param apart how far apart their points stand (mm), where the designer says
 */
public record Needle(Point point, int from, int to, boolean twin, Optional<Double> apart) {
  public Needle {
    if (from < 50 || to > 130 || to < from) {
      throw new IllegalArgumentException("needles run from 50 to 130, not " + from + " to " + to);
    }
  }

  /** What a needle's point is made for. */
  public enum Point {
    UNIVERSAL("universal"),
    BALLPOINT("ballpoint"),
    STRETCH("stretch"),
    DENIM("denim"),
    MICROTEX("microtex"),
    LEATHER("leather");

    private final String word;

    Point(String word) {
      this.word = word;
    }

    /** As the document writes it. */
    public String word() {
      return word;
    }
  }

  /**
   * A size as needles are labelled, 75/11: hundredths of a millimetre and the older number
   * (handbook section 7 gives 70/10 and 90/14; the rest from memory).
   */
  public static String label(int size) {
    int[] metric = {60, 65, 70, 75, 80, 90, 100, 110, 120};
    int[] older = {8, 9, 10, 11, 12, 14, 16, 18, 19};
    for (int i = 0; i < metric.length; i++) {
      if (metric[i] == size) {
        return size + "/" + older[i];
      }
    }
    return Integer.toString(size);
  }
}
