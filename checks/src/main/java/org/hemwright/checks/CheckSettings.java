package org.hemwright.checks;

/**
 * What the checks hold a pattern to; lengths in millimetres.
 *
 * @param seamWarn two layers of a seam may differ by this much without a word
 * @param seamFail beyond this they will not sew together
 */
public record CheckSettings(double seamWarn, double seamFail) {
  /** Handbook section 1, "Trueing and walking": warn over 1 mm, fail over 3 mm. */
  public static final CheckSettings HANDBOOK = new CheckSettings(1, 3);

  public CheckSettings {
    if (!(seamWarn >= 0) || !(seamFail >= seamWarn)) {
      throw new IllegalArgumentException("a warning comes before a failure, from 0 mm up");
    }
  }
}
