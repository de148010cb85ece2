package org.hemwright.paper.arrange;

/**
 * A mask that may be laid on a sheet, with the pages it would need wherever it is put: these depend
 * only on where it starts within a page.
 */
final class Laid {
  private final CellMask mask;
  private final int turn;
  private final int cellsAcross;
  private final int cellsDown;

  /** By phase; empty where not yet asked for, since a mask needs one page at least. */
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
   * The pages needed with the mask's upper left cell at a place: for each row of pages from the one
   * that holds it, a bit for each column from the one that holds it.
   */
  int[] pages(int column, int row) {
    int phase = row % cellsDown * cellsAcross + column % cellsAcross;
    int[] known = byPhase[phase];
    if (known.length == 0) {
      known = pagesFrom(column % cellsAcross, row % cellsDown);
      byPhase[phase] = known;
    }
    return known;
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
