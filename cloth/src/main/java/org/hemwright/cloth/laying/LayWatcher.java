package org.hemwright.cloth.laying;

import java.util.function.Supplier;

/** Someone who follows a search while it goes on, and may end it. */
@FunctionalInterface
public interface LayWatcher {

  /** Lets every search go on to its end. */
  LayWatcher PATIENT = progress -> Wish.GO_ON;

  /** What a watcher wants. */
  enum Wish {
    /** That the search goes on. */
    GO_ON,
    /**
     * That the search comes to an end soon: it leaves off exploring and spends on compression what
     * that takes of the work done so far. The layout is marked as incomplete.
     */
    COME_TO_AN_END,
    /** That it ends at once: the shortest layout so far is returned and marked as incomplete. */
    STOP
  }

  /**
   * Called on the caller's thread from time to time, more often than once in a second on an
   * ordinary machine.
   */
  Wish follow(Progress progress);

  /**
   * Called on the caller's thread, before the next {@link #follow}, whenever a shorter layout was
   * found.
   *
   * @param layout makes that layout, which the exact checker has not seen yet; only during the call
   */
  default void shorter(Supplier<Layout> layout) {}

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
