package org.hemwright.checks;

/**
 * When a garment goes on and stays on; lengths in millimetres, shares as 0.1 for 10 %.
 *
 * @param casingLeast a casing is at least so much deeper than its elastic
 * @param casingMost and at most so much, or the elastic turns over in it
 * @param casingOff a band that is a casing may be this share longer or shorter than its edge
 * @param elasticLeast the finished elastic's least share of the body that it holds
 * @param elasticStretch how far an elastic stretches, as a share of its length
 * @param overlapMost the ends of an elastic overlap by at most this much
 * @param passWoven by how much an opening that does not stretch is larger than what passes it
 * @param bandLeast the least share of its opening that a band which holds by itself may be
 * @param bandMost the most
 * @param bandStretch how much of its cloth's stretch a band may use up on its opening
 * @param comfort how much of its cloth's stretch a garment may use up on the body
 * @param easeWoven the least ease of a woven garment
 * @param girthMost a girth of more than so many times the body's is likely a slip of the pen
 * @param stiffSeam how far a seam gives that is sewn with a stitch which does not stretch
 * @param riseLeast how much longer than the body's the rise is at least
 * @param riseFail beyond this much too short the garment cannot be worn
 * @param rounding shares this close to a limit are on it
 */
public record WearLimits(
    double casingLeast,
    double casingMost,
    double casingOff,
    double elasticLeast,
    double elasticStretch,
    double overlapMost,
    double passWoven,
    double bandLeast,
    double bandMost,
    double bandStretch,
    double comfort,
    double easeWoven,
    double girthMost,
    double stiffSeam,
    double riseLeast,
    double riseFail,
    double rounding) {
  /**
   * Handbook section 4: casing clearance 1/8 in (3 mm) to 10 mm, a woven waist 25 mm over the hip,
   * a casing about as long as its edge, bands 0.80 to 0.90 of their opening and at most 60 % of
   * their stretch, half of the cloth's stretch for comfort; section 1: 1/2 in of ease in wovens.
   * The others are common practice, no source.
   */
  public static final WearLimits HANDBOOK =
      new WearLimits(3, 10, 0.05, 0.7, 1, 40, 25, 0.8, 0.9, 0.6, 0.5, 12.7, 2, 0.15, 0, 20, 0.001);

  public WearLimits {
    CheckSettings.inOrder(casingLeast, casingMost);
    CheckSettings.inOrder(casingOff);
    CheckSettings.inOrder(elasticLeast);
    CheckSettings.inOrder(elasticStretch);
    CheckSettings.inOrder(overlapMost);
    CheckSettings.inOrder(passWoven);
    CheckSettings.inOrder(bandLeast, bandMost);
    CheckSettings.inOrder(bandStretch);
    CheckSettings.inOrder(comfort);
    CheckSettings.inOrder(easeWoven);
    CheckSettings.inOrder(girthMost);
    CheckSettings.inOrder(stiffSeam);
    CheckSettings.inOrder(riseLeast, riseFail);
    CheckSettings.inOrder(rounding);
  }
}
