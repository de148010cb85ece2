package org.hemwright.workroom.room;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The room's own thread, and those beside it on which things are worked out. */
final class Workers {
  /** How long the last of the work is waited for (s). */
  private static final int LAST = 5;

  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(work -> daemon(work, "room"));
  private final List<ExecutorService> all = new ArrayList<>();

  /** Where things are worked out, one after another at each. */
  final ExecutorService beside = place("room-beside");

  final ExecutorService promptly = place("room-promptly");
  final ExecutorService atLength = place("room-at-length");
  final ExecutorService whileWaited = place("room-while-waited");
  private final Consumer<String> log;

  /** At work from now on; what goes wrong is told to the log. */
  Workers(Consumer<String> log) {
    this.log = log;
  }

  private ExecutorService place(String name) {
    ExecutorService place = Executors.newSingleThreadExecutor(work -> daemon(work, name));
    all.add(place);
    return place;
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  /** Does something over and over (ms) on the room's thread; it tells of its failures itself. */
  void again(Runnable work, int every) {
    var unused = thread.scheduleWithFixedDelay(work, every, every, TimeUnit.MILLISECONDS);
  }

  /** Does something on the room's thread, in its turn. */
  void run(Runnable work) {
    try {
      thread.execute(
          () -> {
            try {
              work.run();
            } catch (RuntimeException fault) {
              log.accept("a fault of the program: " + fault);
            }
          });
    } catch (RejectedExecutionException closed) {
      log.accept("something was asked after the room was closed");
    }
  }

  /** Works something out at a place, and goes on with it on the room's thread. */
  <T> void on(ExecutorService place, Supplier<T> work, Consumer<T> then) {
    place.execute(
        () -> {
          try {
            T result = work.get();
            run(() -> then.accept(result));
          } catch (RuntimeException fault) {
            log.accept("a fault of the program: " + fault);
          }
        });
  }

  /** Ends all work, with some last of it on the room's thread; whether that was done in time. */
  boolean close(Runnable last) {
    thread.execute(last);
    thread.shutdown();
    all.forEach(ExecutorService::shutdownNow);
    try {
      return thread.awaitTermination(LAST, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
