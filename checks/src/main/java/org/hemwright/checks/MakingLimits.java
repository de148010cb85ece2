package org.hemwright.checks;

/**
 * When pieces can be cut and made; lengths in millimetres.
 *
 * @param selvedge what each side of the cloth loses of its labelled width
 */
public record MakingLimits(double selvedge) {
  /** Handbook section 5: 15 mm a side. */
  public static final MakingLimits HANDBOOK = new MakingLimits(15);

  public MakingLimits {
    CheckSettings.inOrder(selvedge);
  }
}
