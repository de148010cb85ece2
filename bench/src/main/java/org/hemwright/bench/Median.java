package org.hemwright.bench;

import java.util.Arrays;
import java.util.function.Supplier;

/**
 * How long some work takes: the median of many runs after a warm-up, so that a noisy neighbour on
 * the machine moves it little.
 *
 * @param millis the median
 * @param best the shortest run
 */
record Median(double millis, double best) {
  private static long kept;

  /** Times work; what it returns is kept, so that none of it can be left out. */
  static Median of(int warmUp, int runs, Supplier<?> work) {
    for (int i = 0; i < warmUp; i++) {
      kept += work.get().hashCode() & 1;
    }
    double[] times = new double[runs];
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      Object result = work.get();
      times[i] = (System.nanoTime() - start) / 1e6;
      kept += System.identityHashCode(result) & 1;
    }
    Arrays.sort(times);
    return new Median(times[runs / 2], times[0]);
  }

  /** Something that depends on all results, so that none of them is left out. */
  static long kept() {
    return kept;
  }

  void print(String what, String goal) {
    System.out.printf("| %s | %s | median %.2f ms, best %.2f ms |%n", what, goal, millis, best);
  }
}
