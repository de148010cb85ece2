package org.hemwright.pattern.notion;

import org.hemwright.pattern.make.ThreadUse;

/**
 * Thread of one kind of machine.
 *
 * @param machine which
 * @param sewn how long the lines of stitching are together (mm), at most
 * @param thread all threads together (mm), with waste and tails, from least to most
 * @param threads how many spools stand on the machine at once
 * @param spool the length of thread on one of them (mm)
 */
public record ThreadNeed(
    Machine machine, double sewn, ThreadUse.Range thread, int threads, double spool) {
  /** What the thread is for. */
  public enum Machine {
    /** Sewing machine and hand. */
    SEWING("sewing"),
    /** Overlock and cover stitch machines, which take a cone for every thread. */
    OVERLOCK("overlock");

    private final String word;

    Machine(String word) {
      this.word = word;
    }

    /** As JSON names it. */
    public String word() {
      return word;
    }
  }

  /**
   * How many spools to buy for the most that may be needed: whole ones, and one for each thread at
   * least.
   */
  public int spools() {
    return threads * (int) Math.max(1, Math.ceil(thread.most() / threads / spool));
  }
}
