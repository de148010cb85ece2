package org.hemwright.checks;

/**
 * When sizes follow each other; lengths in millimetres, shares as 0.1 for 10 %.
 *
 * @param back an edge may be this much shorter than in the size before, while bodies grow
 * @param stray a point or a length may stick out by this much from the line of its neighbours
 * @param waistOverHip a waist larger than this share of the hip is likely a slip of the pen
 */
public record GradeLimits(double back, double stray, double waistOverHip) {
  /** Common practice, no source. */
  public static final GradeLimits HANDBOOK = new GradeLimits(1, 1.5, 1.1);

  public GradeLimits {
    CheckSettings.inOrder(back);
    CheckSettings.inOrder(stray);
    CheckSettings.inOrder(waistOverHip);
  }
}
