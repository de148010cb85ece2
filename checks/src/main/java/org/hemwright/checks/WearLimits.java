package org.hemwright.checks;

/**
 * When a garment goes on and stays on; lengths in millimetres, shares as 0.1 for 10 %.
 *
 * @param casingLeast a casing is at least so much deeper than its elastic
 * @param casingMost and at most so much, or the elastic turns over in it
 * @param elasticLeast the finished elastic's least share of the body that it holds
 * @param elasticStretch how far an elastic stretches, as a share of its length
 * @param passWoven by how much an opening that does not stretch is larger than what passes it
 */
public record WearLimits(
    double casingLeast,
    double casingMost,
    double elasticLeast,
    double elasticStretch,
    double passWoven) {
  /**
   * Handbook section 4: casing clearance 1/8 in (3 mm) to 10 mm, a woven waist 25 mm over the hip.
   * The others are common practice, no source.
   */
  public static final WearLimits HANDBOOK = new WearLimits(3, 10, 0.7, 1, 25);

  public WearLimits {
    CheckSettings.inOrder(casingLeast, casingMost);
    CheckSettings.inOrder(elasticLeast);
    CheckSettings.inOrder(elasticStretch);
    CheckSettings.inOrder(passWoven);
  }
}
