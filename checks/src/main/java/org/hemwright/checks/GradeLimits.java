package org.hemwright.checks;

/**
 * When sizes follow each other; lengths in millimetres, shares as 0.1 for 10 %.
 *
 * @param back an edge may be this much shorter than in the size before, while bodies grow
 * @param stray a point or a length may stick out by this much from the line of its neighbours
 * @param waistOverHip a waist larger than this share of the hip is likely a slip of the pen
 * @param chartOff a cell of the chart may lie so many times as far off the line of those beside it
 *     as cells of its column usually do
 * @param chartBodies so many deviations from the middle, of two measurements together, a surveyed
 *     body is likely a slip of the pen: about one in a thousand lies farther (chi-squared of two)
 */
public record GradeLimits(
    double back, double stray, double waistOverHip, double chartOff, double chartBodies) {
  /** Common practice, no source. */
  public static final GradeLimits HANDBOOK = new GradeLimits(1, 1.5, 1.1, 3, 3.717);

  public GradeLimits {
    CheckSettings.inOrder(back);
    CheckSettings.inOrder(stray);
    CheckSettings.inOrder(waistOverHip);
    CheckSettings.inOrder(chartOff);
    CheckSettings.inOrder(chartBodies);
  }
}
