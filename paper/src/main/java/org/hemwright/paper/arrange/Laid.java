package org.hemwright.paper.arrange;

import java.util.Arrays;

/**
 * A mask that may be laid on a sheet, with the pages it would need wherever it is put: these depend
 * only on where it starts within a page.
 */
final class Laid {
  private static final int ROW = 1 << 12;
  private static final int[] ONE = {0};

  private final CellMask mask;
  private final int turn;
  private final int cellsAcross;
  private final int cellsDown;

  /** Empty where not yet asked for; a mask needs one page at least. */
  private final int[][] byPhase;

  private final int[] sums;

  Laid(CellMask mask, int turn, int cellsAcross, int cellsDown) {
    this.mask = mask;
    this.turn = turn;
    this.cellsAcross = cellsAcross;
    this.cellsDown = cellsDown;
    sums = mask.sums();
    byPhase = new int[cellsAcross * cellsDown][0];
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

  /**
   * The pages needed with the mask's upper left cell at a place, counted from the page that holds
   * it: read them with {@link #row} and {@link #column}.
   */
  int[] pages(int column, int row) {
    if (column % cellsAcross + mask.columns() <= cellsAcross
        && row % cellsDown + mask.rows() <= cellsDown) {
      return ONE;
    }
    int phase = row % cellsDown * cellsAcross + column % cellsAcross;
    int[] known = byPhase[phase];
    if (known.length == 0) {
      known = pagesFrom(column % cellsAcross, row % cellsDown);
      byPhase[phase] = known;
    }
    return known;
  }

  static int row(int page) {
    return page / ROW;
  }

  static int column(int page) {
    return page % ROW;
  }

  private int[] pagesFrom(int phaseColumn, int phaseRow) {
    int across = (phaseColumn + mask.columns() - 1) / cellsAcross + 1;
    int down = (phaseRow + mask.rows() - 1) / cellsDown + 1;
    boolean[] needed = new boolean[across * down];
    int wide = mask.columns() + 1;
    for (int i = 0; i < needed.length; i++) {
      int left = Math.max(0, i % across * cellsAcross - phaseColumn);
      int right = Math.min(mask.columns(), (i % across + 1) * cellsAcross - phaseColumn);
      int top = Math.max(0, i / across * cellsDown - phaseRow);
      int foot = Math.min(mask.rows(), (i / across + 1) * cellsDown - phaseRow);
      int set =
          sums[foot * wide + right]
              - sums[top * wide + right]
              - sums[foot * wide + left]
              + sums[top * wide + left];
      needed[i] = set > 0;
    }
    int[] pages = new int[needed.length];
    int count = 0;
    for (int i = 0; i < needed.length; i++) {
      if (needed[i]) {
        pages[count++] = i / across * ROW + i % across;
      }
    }
    return Arrays.copyOf(pages, count);
  }
}
