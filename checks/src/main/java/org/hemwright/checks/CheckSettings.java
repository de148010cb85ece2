package org.hemwright.checks;

/**
 * What the checks hold a pattern to; lengths in millimetres, angles in radians, shares as 0.1 for
 * 10 %.
 *
 * @param seamWarn two layers of a seam may differ by this much without a word
 * @param seamFail beyond this they will not sew together
 * @param allowanceWarn the allowances of a seam may differ by this much without a word
 * @param allowanceFail beyond this the layers are sewn out of line
 * @param notchApart notches that are to meet may lie this far apart
 * @param angleWarn an edge may bend by this much where a seam or a fold crosses it
 * @param angleFail beyond this it has a point that shows
 * @param casingLeast a casing is at least so much deeper than its elastic
 * @param casingMost and at most so much, or the elastic turns over in it
 * @param elasticLeast the finished elastic's least share of the body that it holds
 * @param elasticStretch how far an elastic stretches, as a share of its length
 * @param passWoven by how much an opening that does not stretch is larger than what passes it
 * @param waistOverHip a waist larger than this share of the hip is likely a slip of the pen
 * @param gradeBack an edge may be this much shorter than in the size before, while bodies grow
 * @param selvedge what each side of the cloth loses of its labelled width
 */
public record CheckSettings(
    double seamWarn,
    double seamFail,
    double allowanceWarn,
    double allowanceFail,
    double notchApart,
    double angleWarn,
    double angleFail,
    double casingLeast,
    double casingMost,
    double elasticLeast,
    double elasticStretch,
    double passWoven,
    double waistOverHip,
    double gradeBack,
    double selvedge) {
  /**
   * Handbook section 1, "Trueing and walking": seams warn over 1 mm, fail over 3 mm; "Junctions":
   * warn over 2°. Section 4: casing clearance 1/8 in (3 mm) to 10 mm, a woven waist 25 mm over the
   * hip. Section 5: 15 mm a side. The others are common practice, no source.
   */
  public static final CheckSettings HANDBOOK =
      new CheckSettings(
          1, 3, 0.5, 2, 2, Math.toRadians(2), Math.toRadians(4), 3, 10, 0.7, 1, 25, 1.1, 1, 15);

  public CheckSettings {
    ordered(seamWarn, seamFail);
    ordered(allowanceWarn, allowanceFail);
    ordered(angleWarn, angleFail);
    ordered(casingLeast, casingMost);
    for (double limit :
        new double[] {
          notchApart, elasticLeast, elasticStretch, passWoven, waistOverHip, gradeBack, selvedge
        }) {
      ordered(limit, Double.MAX_VALUE);
    }
  }

  /** The same with other limits for the lengths of seams (mm). */
  public CheckSettings withSeams(double warn, double fail) {
    return new CheckSettings(
        warn,
        fail,
        allowanceWarn,
        allowanceFail,
        notchApart,
        angleWarn,
        angleFail,
        casingLeast,
        casingMost,
        elasticLeast,
        elasticStretch,
        passWoven,
        waistOverHip,
        gradeBack,
        selvedge);
  }

  private static void ordered(double first, double second) {
    if (!(first >= 0) || !(second >= first)) {
      throw new IllegalArgumentException("a warning comes before a failure, from 0 up");
    }
  }
}
