package org.hemwright.cloth.laying;

/**
 * A stream of random numbers, the same on every machine (SplitMix64: Steele, Lea and Flood 2014).
 */
final class Chance {

  private static final long GAMMA = 0x9E3779B97F4A7C15L;

  private long state;

  Chance(long seed) {
    state = mix(seed + GAMMA);
  }

  /** Spreads a number over all 64 bits. */
  static long mix(long z) {
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  private long next() {
    state += GAMMA;
    return mix(state);
  }

  /** From 0 to below 1. */
  double share() {
    return (next() >>> 11) * 0x1p-53;
  }

  /** From 0 to below a bound, which is at least 1. */
  int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }

  /** From low to high, evenly. */
  double between(double low, double high) {
    return low + share() * (high - low);
  }

  /** Puts the first n numbers of a list into random order. */
  void shuffle(int[] list, int n) {
    for (int i = n - 1; i > 0; i--) {
      int k = below(i + 1);
      int swap = list[i];
      list[i] = list[k];
      list[k] = swap;
    }
  }
}
