package org.hemwright.checks;

/**
 * When pieces can be cut and made; lengths in millimetres, angles in radians, shares as 0.1 for 10
 * %.
 *
 * @param selvedge what each side of the cloth loses of its labelled width
 * @param lengthenFrom a piece longer than this shows where to lengthen or shorten it
 * @param grainApart the grain of two pieces joined along it may differ by this much, seen from the
 *     seam
 * @param arrowOff a stretch arrow may lie this far off the way in which its cloth stretches
 * @param hemEase the edge of a hem may be this share longer or shorter than the line it is sewn to
 * @param bandDepth a piece no deeper than this beside a seam is a band, and its grain may run along
 *     the end of what it is sewn to
 * @param liningAbove a lining ends at least so far above the hem of the piece that it lies in
 */
public record MakingLimits(
    double selvedge,
    double lengthenFrom,
    double grainApart,
    double arrowOff,
    double hemEase,
    double bandDepth,
    double liningAbove) {
  /**
   * Handbook section 5: 15 mm a side. A hem of 38 mm on a flared skirt, as section 3 has it, is
   * eased by a tenth. The others are common practice, no source.
   */
  public static final MakingLimits HANDBOOK =
      new MakingLimits(15, 250, Math.toRadians(15), Math.toRadians(5), 0.1, 200, 10);

  public MakingLimits {
    CheckSettings.inOrder(selvedge);
    CheckSettings.inOrder(lengthenFrom);
    CheckSettings.inOrder(grainApart);
    CheckSettings.inOrder(arrowOff);
    CheckSettings.inOrder(hemEase);
    CheckSettings.inOrder(bandDepth);
    CheckSettings.inOrder(liningAbove);
  }
}
