package org.hemwright.cloth.laying;

import org.jspecify.annotations.Nullable;

/**
 * Moves overlapping copies of a {@link Crowd} apart, sweep after sweep, while overlaps that stay
 * count more and more (guided local search: Voudouris and Tsang 1999; for laying: Umetani et al.
 * 2009, Gardeyn et al. 2025). It gives an attempt up when its patience is at an end.
 */
final class Separation {

  /** A gain smaller than this share is none. */
  private static final double GAIN = 0.02;

  /** How an attempt stands after a sweep. */
  enum State {
    /** Nothing overlaps any more. */
    DONE,
    /** Something still overlaps. */
    GOING_ON,
    /** Something overlaps, and there is little hope. */
    GIVEN_UP
  }

  private final Crowd crowd;
  private final PlaceSearch search;
  private final Chance chance;
  private final SearchRules rules;
  private final int[] order;

  private int patience;
  private int strikesAllowed;
  private int sweeps;
  private int sinceGain;
  private int strikes;
  private double lastStrike;
  private @Nullable Places lowest;

  Separation(Crowd crowd, PlaceSearch search, Chance chance, SearchRules rules) {
    this.crowd = crowd;
    this.search = search;
    this.chance = chance;
    this.rules = rules;
    order = new int[crowd.size];
  }

  /** Starts a new attempt on the crowd as it lies. */
  void begin(int newPatience, int newStrikes) {
    patience = newPatience;
    strikesAllowed = newStrikes;
    crowd.forgetWeights();
    sweeps = 0;
    sinceGain = 0;
    strikes = 0;
    lastStrike = Double.POSITIVE_INFINITY;
    lowest = null;
  }

  /** How many sweeps this attempt has taken. */
  int sweeps() {
    return sweeps;
  }

  /** How the crowd lay when least overlapped in this attempt; a sweep must have been made. */
  Places lowest() {
    return java.util.Objects.requireNonNull(lowest);
  }

  /** Moves every copy that overlaps once, in random order. */
  State sweep() {
    sweeps++;
    int n = 0;
    for (int copy = 0; copy < crowd.size; copy++) {
      if (crowd.weightedOverlapOf(copy) > 0) {
        order[n++] = copy;
      }
    }
    chance.shuffle(order, n);
    for (int i = 0; i < n; i++) {
      if (crowd.weightedOverlapOf(order[i]) > 0) {
        search.improve(order[i]);
      }
    }
    double overlap = crowd.totalOverlap();
    if (overlap == 0) {
      return State.DONE;
    }
    crowd.reweigh(rules);
    return judge(overlap);
  }

  private State judge(double overlap) {
    double low = lowest == null ? Double.POSITIVE_INFINITY : lowest.overlap;
    sinceGain = overlap < low * (1 - GAIN) ? 0 : sinceGain + 1;
    if (overlap < low) {
      low = overlap;
      lowest = Places.of(crowd, overlap);
    }
    if (sinceGain < patience) {
      return State.GOING_ON;
    }
    strikes = low < lastStrike * (1 - GAIN) ? 0 : strikes + 1;
    lastStrike = low;
    sinceGain = 0;
    if (strikes >= strikesAllowed) {
      return State.GIVEN_UP;
    }
    lowest().restore(crowd);
    return State.GOING_ON;
  }
}
