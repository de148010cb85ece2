package org.hemwright.checks;

/**
 * What the checks hold a pattern to.
 *
 * @param sewing whether the pieces sew together
 * @param wear whether the garment goes on and stays on
 * @param grade whether the sizes follow each other
 * @param making whether the pieces can be cut and made
 * @param stitches what a home machine sews
 */
public record CheckSettings(
    SewingLimits sewing,
    WearLimits wear,
    GradeLimits grade,
    MakingLimits making,
    StitchLimits stitches) {
  /** The trade handbook's limits; each record of limits says where its own come from. */
  public static final CheckSettings HANDBOOK =
      new CheckSettings(
          SewingLimits.HANDBOOK,
          WearLimits.HANDBOOK,
          GradeLimits.HANDBOOK,
          MakingLimits.HANDBOOK,
          StitchLimits.USUAL);

  /** The same with other limits for the lengths of seams (mm). */
  public CheckSettings withSeams(double warn, double fail) {
    return new CheckSettings(sewing.withSeams(warn, fail), wear, grade, making, stitches);
  }

  /** Refuses limits that are out of order: each is 0 or more, and none is below the one before. */
  static void inOrder(double... limits) {
    double before = 0;
    for (double limit : limits) {
      if (!(limit >= before)) {
        throw new IllegalArgumentException("a warning comes before a failure, from 0 up");
      }
      before = limit;
    }
  }
}
