package org.hemwright.pattern.make;

/**
 * Who wears the garment, as far as safety asks.
 *
 * @param child whether its sizes are children's sizes
 * @param sleepwear whether it is slept in
 */
public record Wearer(boolean child, boolean sleepwear) {
  /** A grown-up, by day. */
  public static final Wearer ADULT = new Wearer(false, false);
}
