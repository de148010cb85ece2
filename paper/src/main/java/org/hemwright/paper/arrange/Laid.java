package org.hemwright.paper.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A mask that may be laid on a sheet, with the pages it would need wherever it is put: these depend
 * only on where it starts within a page.
 */
final class Laid {
  private final CellMask mask;
  private final int turn;
  private final int cellsAcross;
  private final int cellsDown;

  /**
   * By the row within a page; empty where not yet asked for, since a page has one stretch at least.
   */
  private final Stretch[][] byRow;

  private final int[] sums;

  /** Columns of a page, side by side, from which the mask needs the same pages. */
  static final class Stretch {
    private final int from;

    /**
     * For each row of pages from the one that holds the mask's upper left cell, a bit for each
     * column of pages from the one that holds it.
     */
    private final int[] pages;

    private Stretch(int from, int[] pages) {
      this.from = from;
      this.pages = pages;
    }

    /** The first of the columns, counted from the page's left edge. */
    int from() {
      return from;
    }

    /** Marks the pages as used, the upper left cell lying on a page. */
    void use(int[] used, int pageColumn, int pageRow) {
      for (int i = 0; i < pages.length; i++) {
        used[pageRow + i] |= pages[i] << pageColumn;
      }
    }

    /** How many of the pages are not in use yet, the upper left cell lying on a page. */
    int fresh(int[] used, int pageColumn, int pageRow) {
      int fresh = 0;
      for (int i = 0; i < pages.length; i++) {
        fresh += Integer.bitCount((pages[i] << pageColumn) & ~used[pageRow + i]);
      }
      return fresh;
    }

    /** Whether it is one page alone. */
    boolean isOnePage() {
      return pages.length == 1 && pages[0] == 1;
    }
  }

  Laid(CellMask mask, int turn, int cellsAcross, int cellsDown) {
    this.mask = mask;
    this.turn = turn;
    this.cellsAcross = cellsAcross;
    this.cellsDown = cellsDown;
    sums = mask.sums();
    byRow = new Stretch[cellsDown][0];
  }

  CellMask mask() {
    return mask;
  }

  int turn() {
    return turn;
  }

  boolean fitsOnePage() {
    return mask.columns() <= cellsAcross && mask.rows() <= cellsDown;
  }

  /** The stretches of a page's columns, left to right, with the upper left cell on a row. */
  Stretch[] stretches(int row) {
    int phase = row % cellsDown;
    if (byRow[phase].length == 0) {
      byRow[phase] = stretchesFrom(phase);
    }
    return byRow[phase];
  }

  /** The stretch that holds a place of the upper left cell. */
  Stretch stretch(int column, int row) {
    Stretch[] stretches = stretches(row);
    int at = stretches.length - 1;
    while (stretches[at].from() > column % cellsAcross) {
      at--;
    }
    return stretches[at];
  }

  private Stretch[] stretchesFrom(int phaseRow) {
    List<Stretch> stretches = new ArrayList<>();
    int[] last = {};
    for (int column = 0; column < cellsAcross; column++) {
      int[] pages = pagesFrom(column, phaseRow);
      if (!Arrays.equals(pages, last)) {
        stretches.add(new Stretch(column, pages));
        last = pages;
      }
    }
    return stretches.toArray(Stretch[]::new);
  }

  private int[] pagesFrom(int phaseColumn, int phaseRow) {
    int across = (phaseColumn + mask.columns() - 1) / cellsAcross + 1;
    int down = (phaseRow + mask.rows() - 1) / cellsDown + 1;
    int[] pages = new int[down];
    int wide = mask.columns() + 1;
    for (int i = 0; i < across * down; i++) {
      int left = Math.max(0, i % across * cellsAcross - phaseColumn);
      int right = Math.min(mask.columns(), (i % across + 1) * cellsAcross - phaseColumn);
      int top = Math.max(0, i / across * cellsDown - phaseRow);
      int foot = Math.min(mask.rows(), (i / across + 1) * cellsDown - phaseRow);
      int set =
          sums[foot * wide + right]
              - sums[top * wide + right]
              - sums[foot * wide + left]
              + sums[top * wide + left];
      if (set > 0) {
        pages[i / across] |= 1 << i % across;
      }
    }
    return pages;
  }
}
