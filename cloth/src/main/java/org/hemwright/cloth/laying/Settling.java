package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * Takes the last air out of a layout: every copy slides to the left until it touches, as often as
 * that shortens anything.
 */
final class Settling {

  private static final int MOST_ROUNDS = 20;

  private final LayTask task;

  Settling(LayTask task) {
    this.task = task;
  }

  /** The settled layout; never longer than the one given. */
  Places settle(Places layout) {
    int n = layout.x.length;
    double[] x = layout.x.clone();
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    CuttingTable table = new CuttingTable(task);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Arrays.sort(
          order, (a, b) -> x[a] != x[b] ? Double.compare(x[a], x[b]) : Integer.compare(a, b));
      boolean moved = false;
      for (int copy : order) {
        table.clear();
        for (int other = 0; other < n; other++) {
          if (other != copy) {
            table.lay(layout.cut[other], x[other], layout.y[other]);
          }
        }
        double left = table.farthestLeft(layout.cut[copy], x[copy], layout.y[copy]);
        moved |= left < x[copy];
        x[copy] = left;
      }
      if (!moved) {
        break;
      }
    }
    double length = 0;
    for (int copy = 0; copy < n; copy++) {
      length = Math.max(length, x[copy] + task.forms.cuts().get(layout.cut[copy]).width());
    }
    return new Places(length, 0, layout.cut, x, layout.y);
  }
}
