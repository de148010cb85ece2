package org.hemwright.cloth.yardage;

import org.hemwright.cloth.laying.LayWatcher;
import org.hemwright.cloth.laying.StripProblem;

/**
 * Ends a search that no longer gains, counted in places looked at: few pieces are soon laid as
 * short as they can be. What is spared goes to no other laying, so that each depends on itself
 * alone.
 */
final class Patience implements LayWatcher {
  /** So many copies are worth all the work, fewer the square of their share; found by trial. */
  private static final double MANY = 12;

  /** A laying that is shorter by less than this share is no gain. */
  private static final double GAIN = 5e-4;

  private final long patience;
  private final double least;
  private double shortest = Double.POSITIVE_INFINITY;
  private long gained;

  /**
   * Patience with one problem.
   *
   * @param work what the search may take in all
   * @param least a length that is as short as any
   */
  Patience(StripProblem problem, long work, double least) {
    int copies = problem.shapes().stream().mapToInt(shape -> shape.demand()).sum();
    double share = Math.min(1, copies / MANY);
    this.patience = (long) (work * share * share);
    this.least = least;
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
