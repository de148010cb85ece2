package org.hemwright.cloth.yardage;

import org.hemwright.cloth.rule.ClothLaying;

/** Someone who looks on while a cloth is laid, and may have enough of it. */
public interface LayingFollower {
  /** Looks away. */
  LayingFollower NOBODY = laying -> {};

  /**
   * A shorter laying was found. It is as the search has it: the exact rules have not been asked.
   *
   * @param laying complete
   */
  void shorter(ClothLaying laying);

  /** Whether the shortest laying so far will do; asked more often than once in a second. */
  default boolean hasEnough() {
    return false;
  }
}
