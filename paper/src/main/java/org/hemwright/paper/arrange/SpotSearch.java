package org.hemwright.paper.arrange;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Looks for one thing's place on a sheet: the one that needs the fewest pages not in use; of equals
 * the highest, then the leftmost.
 */
final class SpotSearch {
  private final int thing;
  private final CellSheet sheet;
  private final int[] used;
  private final boolean whole;
  private final int cellsAcross;
  private final int cellsDown;
  private final long[] open;
  private @Nullable Spot best;
  private int fewest = Integer.MAX_VALUE;
  private int lowest = Integer.MAX_VALUE;

  /**
   * A search that has looked nowhere yet.
   *
   * @param used which pages are in use: a row each, a bit for each page of it
   * @param whole whether the thing must lie on one page
   * @param cellsAcross in a page
   * @param cellsDown in a page
   */
  SpotSearch(
      int thing, CellSheet sheet, int[] used, boolean whole, int cellsAcross, int cellsDown) {
    this.thing = thing;
    this.sheet = sheet;
    this.used = used;
    this.whole = whole;
    this.cellsAcross = cellsAcross;
    this.cellsDown = cellsDown;
    open = new long[sheet.words()];
  }

  /** A thing's place in cells, and how many pages it needs that were not in use. */
  record Spot(int thing, Laid laid, int column, int row, int fresh) {
    void use(int[] used, int cellsAcross, int cellsDown) {
      laid.stretch(column, row).use(used, column / cellsAcross, row / cellsDown);
    }
  }

  /** The best place of those that were looked at; none where none will do. */
  @Nullable Spot best() {
    return best;
  }

  /** Looks at the places of the thing, turned so, down to a row. */
  void among(Laid laid, int lastRow) {
    int places = sheet.columns() - laid.mask().columns() + 1;
    int end = Math.min(lastRow, sheet.rows() - laid.mask().rows());
    for (int row = 0; row <= end && places > 0; row++) {
      int foot = row + laid.mask().rows();
      if (fewest == 0 && foot >= lowest) {
        return;
      }
      if (worthwhile(laid, row, places) && laid.mask().leaveFree(sheet, row, open)) {
        for (int w = 0; w < open.length; w++) {
          for (long free = open[w]; free != 0; free &= free - 1) {
            at(laid, 64 * w + Long.numberOfTrailingZeros(free), row);
          }
        }
      }
    }
  }

  /** Opens the places of a row that would be better than the best; answers whether any is. */
  private boolean worthwhile(Laid laid, int row, int places) {
    Arrays.fill(open, 0);
    boolean any = false;
    int most = most(row + laid.mask().rows());
    Laid.Stretch[] stretches = laid.stretches(row);
    for (int page = 0; page * cellsAcross < places; page++) {
      for (int i = 0; i < stretches.length; i++) {
        Laid.Stretch stretch = stretches[i];
        boolean barred = whole && !stretch.isOnePage();
        if (!barred && stretch.fresh(used, page, row / cellsDown) <= most) {
          int from = page * cellsAcross + stretch.from();
          int next = i + 1 < stretches.length ? stretches[i + 1].from() : cellsAcross;
          int to = Math.min(places, page * cellsAcross + next);
          if (from < to) {
            open(from, to);
            any = true;
          }
        }
      }
    }
    return any;
  }

  private void open(int from, int to) {
    for (int w = from / 64; w <= (to - 1) / 64; w++) {
      long above = w == from / 64 ? -1L << (from % 64) : -1L;
      long below = w == (to - 1) / 64 ? -1L >>> (63 - (to - 1) % 64) : -1L;
      open[w] |= above & below;
    }
  }

  /** The most new pages that a place may need which is to be better than the best. */
  private int most(int foot) {
    return foot < lowest ? fewest : fewest - 1;
  }

  private void at(Laid laid, int column, int row) {
    int foot = row + laid.mask().rows();
    int fresh = laid.stretch(column, row).fresh(used, column / cellsAcross, row / cellsDown);
    if (fresh <= most(foot)) {
      best = new Spot(thing, laid, column, row, fresh);
      fewest = fresh;
      lowest = foot;
    }
  }
}
