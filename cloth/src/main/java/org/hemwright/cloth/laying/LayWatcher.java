package org.hemwright.cloth.laying;

/** Someone who follows a search while it goes on, and may stop it. */
@FunctionalInterface
public interface LayWatcher {

  /** Lets every search go on to its end. */
  LayWatcher PATIENT = progress -> true;

  /**
   * Called on the caller's thread from time to time, more often than once in a second on an
   * ordinary machine.
   *
   * @return false to stop: the shortest layout so far is then returned and marked as incomplete
   */
  boolean goOn(Progress progress);

  /**
   * How a search stands.
   *
   * @param work how many places were looked at
   * @param ofWork how many are to be looked at
   * @param length the shortest layout so far, in the problem's unit
   * @param density its density, 0 to 1
   */
  record Progress(long work, long ofWork, double length, double density) {}
}
