package org.hemwright.checks;

/**
 * When pieces sew together; lengths in millimetres, angles in radians.
 *
 * @param seamWarn two layers of a seam may differ by this much without a word
 * @param seamFail beyond this they will not sew together
 * @param allowanceWarn the allowances of a seam may differ by this much without a word
 * @param allowanceFail beyond this the layers are sewn out of line
 * @param notchApart notches that are to meet may lie this far apart
 * @param angleWarn an edge may bend by this much where a seam or a fold crosses it
 * @param angleFail beyond this it has a point that shows
 * @param capEaseKnit the most ease of a sleeve cap in a knit
 * @param capEaseWoven and in a woven cloth
 * @param endsWarn the cut edges of a seam may reach beyond its end unequally by this much
 * @param endsFail beyond this the maker takes one corner for the other
 * @param hemOff the end of a hem may lie this far off the side that it is turned onto
 * @param dartCap the cap of a dart, folded, may lie this far off the edge beneath it
 * @param notchFrom a seam this long or longer has a notch on its way
 * @param allowanceLeast a narrower allowance gives the needle nothing to hold
 */
public record SewingLimits(
    double seamWarn,
    double seamFail,
    double allowanceWarn,
    double allowanceFail,
    double notchApart,
    double angleWarn,
    double angleFail,
    double capEaseKnit,
    double capEaseWoven,
    double endsWarn,
    double endsFail,
    double hemOff,
    double dartCap,
    double notchFrom,
    double allowanceLeast) {
  /**
   * Handbook section 1, "Trueing and walking": seams warn over 1 mm, fail over 3 mm; "Junctions":
   * warn over 2°; "Sleeve cap ease": 1.5 in as a standard text has it, 1 cm in knits. Section 3:
   * allowances from 0.5 cm are in use. The others are common practice, no source.
   */
  public static final SewingLimits HANDBOOK =
      new SewingLimits(
          1, 3, 0.5, 2, 2, Math.toRadians(2), Math.toRadians(4), 10, 38.1, 3, 6, 1, 0.5, 450, 5);

  public SewingLimits {
    CheckSettings.inOrder(seamWarn, seamFail);
    CheckSettings.inOrder(allowanceWarn, allowanceFail);
    CheckSettings.inOrder(angleWarn, angleFail);
    CheckSettings.inOrder(notchApart);
    CheckSettings.inOrder(capEaseKnit, capEaseWoven);
    CheckSettings.inOrder(endsWarn, endsFail);
    CheckSettings.inOrder(hemOff);
    CheckSettings.inOrder(dartCap);
    CheckSettings.inOrder(notchFrom);
    CheckSettings.inOrder(allowanceLeast);
  }

  /** The same with other limits for the lengths of seams (mm). */
  SewingLimits withSeams(double warn, double fail) {
    return new SewingLimits(
        warn,
        fail,
        allowanceWarn,
        allowanceFail,
        notchApart,
        angleWarn,
        angleFail,
        capEaseKnit,
        capEaseWoven,
        endsWarn,
        endsFail,
        hemOff,
        dartCap,
        notchFrom,
        allowanceLeast);
  }
}
