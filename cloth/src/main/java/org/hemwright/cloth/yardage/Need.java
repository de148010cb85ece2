package org.hemwright.cloth.yardage;

import org.hemwright.cloth.rule.ClothLaying;

/**
 * How much cloth a laying takes.
 *
 * @param laying where every piece lies
 * @param length the length it is to be given on the table (mm); at least the laying's own
 * @param bought the length before it shrinks (mm)
 */
public record Need(ClothLaying laying, double length, double bought) {
  public Need {
    if (!(length >= laying.length()) || !(bought >= length)) {
      throw new IllegalArgumentException(
          "a laying of " + laying.length() + " mm is not cut from " + length + ", " + bought);
    }
  }

  /** A laying of cloth that shrinks by a share (handbook section 5, Shrinkage). */
  static Need of(ClothLaying laying, double length, double shrink) {
    double enough = Math.max(length, laying.length());
    return new Need(laying, enough, enough / (1 - shrink));
  }

  /** What to ask for in the shop. */
  public BuyingLength buy() {
    return BuyingLength.of(bought);
  }

  /** The share of the cloth between its selvedge margins that is cut into pieces, 0 to 1. */
  public double density() {
    return laying.density() * laying.length() / length;
  }

  /** What is left of the needed length, selvedges included (mm²). */
  public double areaLeft() {
    return length * laying.sheet().width() - laying.cutArea();
  }
}
