package org.hemwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Makes files on several cores. Which of them is ready first changes nothing in the result. */
final class SideBySide {
  private SideBySide() {}

  /** The files, in the order of their jobs. */
  static List<PrintedFile> make(List<Paper.Job> jobs, int threads, Printing.Watcher watcher) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, SideBySide::thread);
    try {
      List<Future<PrintedFile>> running = new ArrayList<>();
      for (Paper.Job job : jobs) {
        running.add(pool.submit(job::make));
      }
      List<PrintedFile> files = new ArrayList<>();
      for (int i = 0; i < jobs.size(); i++) {
        watcher.waitsFor(jobs.get(i).name(), i, jobs.size());
        files.add(running.get(i).get());
      }
      return List.copyOf(files);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the printing was interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException("a file failed: " + e.getCause(), e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "printing");
    thread.setDaemon(true);
    return thread;
  }
}
