package org.hemwright.cli;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hemwright.cloth.laying.LayWatcher;

/**
 * How long a person waits for a layout: until the seconds are over, or until she presses Ctrl-C.
 * The program then still writes the best layout so far before it ends.
 */
final class LayPatience implements AutoCloseable {
  /** When so much of the time is over the search should be coming to an end. */
  private static final double EXPLORED = 0.8;

  private static final long LONGEST_END_SECONDS = 20;
  private static final double NANOS = 1e9;

  private final long start = System.nanoTime();
  private final Optional<Double> seconds;
  private final CountDownLatch written = new CountDownLatch(1);
  private final Thread hook = new Thread(this::interrupted, "last layout");
  private volatile boolean cancelled;

  LayPatience(Optional<Double> seconds) {
    this.seconds = seconds;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** What the person wants by now. */
  LayWatcher.Wish wish() {
    double waited = (System.nanoTime() - start) / NANOS;
    if (cancelled || waited >= seconds.orElse(Double.POSITIVE_INFINITY)) {
      return LayWatcher.Wish.STOP;
    }
    return waited >= EXPLORED * seconds.orElse(Double.POSITIVE_INFINITY)
        ? LayWatcher.Wish.COME_TO_AN_END
        : LayWatcher.Wish.GO_ON;
  }

  /** Runs when the program is told to end: waits until the layout is written. */
  private void interrupted() {
    cancelled = true;
    try {
      written.await(LONGEST_END_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException hurry) {
      Thread.currentThread().interrupt();
    }
  }

  /** The layout is written, or there is none. */
  @Override
  public void close() {
    written.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      // The program is ending already; the hook has just been let go.
    }
  }
}
