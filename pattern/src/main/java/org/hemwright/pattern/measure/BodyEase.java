package org.hemwright.pattern.measure;

/**
 * How a finished girth goes round a body girth (handbook sections 1 and 4).
 *
 * @param body the body's girth (mm), more than 0
 * @param finished the garment's (mm), more than 0
 */
public record BodyEase(double body, double finished) {
  public BodyEase {
    if (!(body > 0) || !(finished > 0)) {
      throw new IllegalArgumentException("ease lies between two girths of more than 0 mm");
    }
  }

  /** Finished less body (mm); less than 0 where the cloth must stretch. */
  public double amount() {
    return finished - body;
  }

  /** How far the cloth must stretch to be worn, 0.35 for 35 %; 0 where it need not. */
  public double stretchToWear() {
    return Math.max(0, body / finished - 1);
  }
}
