package org.hemwright.workroom.serve;

import java.time.Duration;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** How many windows are open, and a way to wait until there are none. Any thread may call. */
final class Presence {
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private int windows;

  void entered() {
    count(1);
  }

  void left() {
    count(-1);
  }

  private void count(int more) {
    lock.lock();
    try {
      windows += more;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /**
   * Waits until there is no window, and none comes for a while: a page that is loaded again leaves
   * and comes back at once.
   *
   * @param first how long to wait for the first window
   * @param grace how long to wait for another once the last has gone
   */
  void awaitNobody(Duration first, Duration grace) throws InterruptedException {
    lock.lock();
    try {
      boolean here = comesWithin(first);
      while (here) {
        while (windows > 0) {
          changed.await();
        }
        here = comesWithin(grace);
      }
    } finally {
      lock.unlock();
    }
  }

  private boolean comesWithin(Duration patience) throws InterruptedException {
    long left = patience.toNanos();
    while (windows == 0 && left > 0) {
      left = changed.awaitNanos(left);
    }
    return windows > 0;
  }
}
