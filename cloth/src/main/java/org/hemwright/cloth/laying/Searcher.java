package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * One of the workers that search by overlap: it explores, then compresses, a leg at a time, and
 * keeps the shortest layout it has found. Between legs another's layout may be handed to it.
 */
final class Searcher {

  /** Dead ends that are remembered. */
  private static final int POOL = 100;

  /**
   * The density with which a search without a layout begins, and by how much the strip grows when
   * that was too dense.
   */
  private static final double FIRST_DENSITY = 0.55;

  private static final double LENGTHEN = 1.05;

  /**
   * An attempt that took fewer sweeps was easy, and the strip may shrink faster; one that took more
   * was hard.
   */
  private static final int EASY = 20;

  private static final int HARD = 60;
  private static final double FASTEST_SHRINK = 0.02;

  /**
   * Up to so many copies every layout is settled and tightened at once; that costs little and
   * shortens it exactly.
   */
  private static final int SETTLED_AT_ONCE = 24;

  /** Up to so many copies tightening leaves next to nothing to gain by small moves. */
  private static final int FEW = 5;

  /**
   * How much shorter the strip becomes at least for so few: any layout that is shorter at all then
   * lies otherwise, and is soon as short as that way of lying can be.
   */
  private static final double SLIGHT_SHRINK = 1e-6;

  private final LayTask task;
  private final SearchRules rules;
  private final Chance chance;
  private final Crowd crowd;
  private final Separation separation;
  private final Shrinkage shrinkage;
  private final Disruption disruption;
  private final Settling settling;
  private final Tightening tightening;
  private final List<Places> pool = new ArrayList<>();
  private Places best;
  private boolean found;
  private final double leastShrink;
  private double shrink;
  private boolean squeezing;

  /**
   * A searcher.
   *
   * @param fallback a layout, however long, to be beaten
   */
  Searcher(LayTask task, SearchRules rules, long seed, Places fallback) {
    this.task = task;
    this.rules = rules;
    chance = new Chance(seed);
    crowd = new Crowd(task);
    PlaceSearch search = new PlaceSearch(crowd, task.room, chance, rules);
    separation = new Separation(crowd, search, chance, rules);
    shrinkage = new Shrinkage(crowd, task.room, chance);
    disruption = new Disruption(crowd, task.room, chance, task.areaOfShape);
    settling = new Settling(task);
    tightening = new Tightening(task);
    best = fallback;
    leastShrink = crowd.size <= FEW && tightening.applies() ? SLIGHT_SHRINK : rules.shrink();
    shrink = leastShrink;
  }

  Places best() {
    return best;
  }

  long work() {
    return crowd.work();
  }

  /** Whether the layout is as short as any can be. */
  boolean finished() {
    return best.length <= task.leastLength;
  }

  /** Begins from copies thrown on a strip at random. */
  void beginAtRandom() {
    double length = Math.max(task.leastLength, Math.rint(task.leastLengthByArea / FIRST_DENSITY));
    int[] cut = new int[crowd.size];
    double[] x = new double[crowd.size];
    double[] y = new double[crowd.size];
    for (int copy = 0; copy < crowd.size; copy++) {
      do {
        cut[copy] = task.room.drawCut(task.shapeOf[copy], chance);
      } while (task.room.lastX(cut[copy], length) < 0);
      x[copy] = task.room.drawX(cut[copy], length, chance);
      y[copy] = task.room.drawY(cut[copy], chance);
    }
    crowd.arrange(length, cut, x, y);
    beginAttempt();
  }

  /** Begins from copies that may overlap. */
  void beginFrom(Places crowded) {
    crowded.restore(crowd);
    beginAttempt();
  }

  /** Begins from a layout, or goes on from it when it is shorter than the best one so far. */
  void adopt(Places layout) {
    if (found && best.length <= layout.length) {
      return;
    }
    best = layout;
    found = true;
    pool.clear();
    squeezing = false;
    layout.restore(crowd);
    shortenFrom(layout.length);
  }

  private void beginAttempt() {
    separation.begin(rules.patience(), rules.strikes());
  }

  private void shortenFrom(double length) {
    shrinkage.shorten(Math.max(task.leastLength, Math.rint(length * (1 - shrink))));
    beginAttempt();
  }

  /** Explores until so many places have been looked at. */
  void explore(long until) {
    while (crowd.work() < until && !finished()) {
      switch (separation.sweep()) {
        case GOING_ON -> {}
        case DONE -> {
          adaptShrink();
          remember();
          best.restore(crowd);
          shortenFrom(best.length);
        }
        case GIVEN_UP -> {
          shrink = leastShrink;
          if (found) {
            disruptFromPool();
          } else {
            shrinkage.lengthen(Math.rint(crowd.length() * LENGTHEN));
          }
          beginAttempt();
        }
      }
    }
  }

  private void remember() {
    Places layout = Places.of(crowd, 0);
    best = crowd.size <= SETTLED_AT_ONCE ? tightening.tighten(settling.settle(layout)) : layout;
    found = true;
    pool.clear();
  }

  private void adaptShrink() {
    if (separation.sweeps() < EASY) {
      shrink = Math.min(FASTEST_SHRINK, shrink * 2);
    } else if (separation.sweeps() > HARD) {
      shrink = Math.max(leastShrink, shrink / 2);
    }
  }

  private void disruptFromPool() {
    Places dead = separation.lowest();
    int at = 0;
    while (at < pool.size() && pool.get(at).overlap <= dead.overlap) {
      at++;
    }
    pool.add(at, dead);
    if (pool.size() > POOL) {
      pool.remove(POOL);
    }
    double likelyLow = chance.share() * chance.share();
    pool.get((int) (likelyLow * pool.size())).restore(crowd);
    disruption.disrupt();
  }

  /**
   * Compresses until so many places have been looked at.
   *
   * @param share how much of all compression is done, 0 to 1
   */
  void compress(long until, double share) {
    while (crowd.work() < until && !finished()) {
      if (!squeezing) {
        double ratio = rules.lastSqueeze() / rules.firstSqueeze();
        double squeeze = rules.firstSqueeze() * StrictMath.pow(ratio, share);
        best.restore(crowd);
        shrinkage.shorten(Math.max(task.leastLength, Math.rint(best.length * (1 - squeeze))));
        separation.begin(rules.shortPatience(), rules.shortStrikes());
        squeezing = true;
      }
      Separation.State state = separation.sweep();
      if (state == Separation.State.DONE) {
        remember();
      }
      squeezing = state == Separation.State.GOING_ON;
    }
  }
}
