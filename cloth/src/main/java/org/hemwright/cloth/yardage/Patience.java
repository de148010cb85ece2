package org.hemwright.cloth.yardage;

import org.hemwright.cloth.laying.LayWatcher;
import org.hemwright.cloth.laying.StripProblem;

/**
 * How much work a laying is worth, and when its search no longer gains, counted in places looked
 * at: few pieces are soon laid as short as they can be, many want more. What is spared goes to no
 * other laying, so that each depends on itself alone.
 */
final class Patience implements LayWatcher {
  /** So many copies are worth the usual work; fewer are waited for less long; found by trial. */
  private static final double MANY = 12;

  /** More copies are worth the cube of their share, and at most so many times the work. */
  private static final double MOST_TIMES = 3;

  /** A laying that is shorter by less than this share is no gain. */
  private static final double GAIN = 5e-4;

  private final long work;
  private final long patience;
  private final double least;
  private double shortest = Double.POSITIVE_INFINITY;
  private long gained;

  private Patience(long work, long patience, double least) {
    this.work = work;
    this.patience = patience;
    this.least = least;
  }

  /**
   * Patience with one problem.
   *
   * @param usual what the search of a problem may take in all
   * @param least a length that is as short as any
   */
  static Patience with(StripProblem problem, long usual, double least) {
    double share = problem.copies() / MANY;
    double times = Math.max(1, Math.min(MOST_TIMES, share * share * share));
    long work = (long) Math.min(Long.MAX_VALUE / 2.0, usual * times);
    return new Patience(work, (long) (work * Math.min(1, share * share)), least);
  }

  /** How many places the search may look at. */
  long work() {
    return work;
  }

  @Override
  public Wish follow(Progress progress) {
    if (progress.length() <= least) {
      return Wish.STOP;
    }
    if (progress.length() < shortest * (1 - GAIN)) {
      shortest = progress.length();
      gained = progress.work();
    }
    return progress.work() - gained > patience ? Wish.COME_TO_AN_END : Wish.GO_ON;
  }
}
