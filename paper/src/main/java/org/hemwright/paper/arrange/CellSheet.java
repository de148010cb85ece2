package org.hemwright.paper.arrange;

/**
 * The cells of a sheet: which are taken, or so near to what is laid that they must stay free.
 *
 * <p>For each cell it also knows whether any of the next 2, 4, 8 … cells to its right is taken, so
 * that a run of cells of any length is asked about with two looks: its first part and its last,
 * each as long as a power of two. A look covers 64 places of the run at once.
 */
final class CellSheet {
  private final int columns;
  private final int rows;
  private final int words;

  /** For each power of two, a bit for each cell: whether one of so many from it on is taken. */
  private final long[][] runs;

  CellSheet(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    words = (columns + 63) / 64;
    runs = new long[1 + log(columns)][rows * words];
  }

  /** The largest power of two, as an exponent, that is no more than a number. */
  private static int log(int number) {
    return 31 - Integer.numberOfLeadingZeros(number);
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  /** How many words hold a bit for each column. */
  int words() {
    return words;
  }

  /** Takes a mask's cells and those next to them. */
  void take(CellMask mask, int column, int row) {
    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + mask.rows()); r++) {
      for (int w = 0; w < mask.grownWords(); w++) {
        take(r, column - 1 + 64 * w, mask.grown(r - row + 1, w));
      }
      rerun(r);
    }
  }

  /**
   * Takes the cells of 64 columns of a row that are set, the first of them perhaps off the sheet.
   */
  private void take(int row, int column, long cells) {
    int word = Math.floorDiv(column, 64);
    int bit = Math.floorMod(column, 64);
    if (word >= 0 && word < words) {
      runs[0][row * words + word] |= cells << bit;
    }
    if (bit != 0 && word + 1 < words) {
      runs[0][row * words + word + 1] |= cells >>> (64 - bit);
    }
  }

  private void rerun(int row) {
    for (int power = 1; power < runs.length; power++) {
      long[] half = runs[power - 1];
      for (int w = 0; w < words; w++) {
        runs[power][row * words + w] =
            half[row * words + w] | shifted(half, row, w, 1 << (power - 1));
      }
    }
  }

  /** A word of a row moved left by some columns; nothing is taken beyond the sheet's edge. */
  private long shifted(long[] bits, int row, int word, int by) {
    int at = word + (by >> 6);
    int bit = by & 63;
    if (at >= words) {
      return 0;
    }
    long low = bits[row * words + at];
    if (bit == 0) {
      return low;
    }
    long high = at + 1 < words ? bits[row * words + at + 1] : 0;
    return low >>> bit | high << (64 - bit);
  }

  /**
   * Leaves open those columns at which a run of cells, somewhere to the right of them, would meet
   * no taken cell.
   *
   * @param open a bit for each column that is asked about
   * @param from how far right of the column the run begins
   * @param length of the run, 1 or more
   * @return whether any is left
   */
  boolean leaveFree(long[] open, int row, int from, int length) {
    int power = Math.min(log(length), runs.length - 1);
    long[] part = runs[power];
    int last = from + length - (1 << power);
    long any = 0;
    for (int w = 0; w < words; w++) {
      if (open[w] != 0) {
        open[w] &= ~(shifted(part, row, w, from) | shifted(part, row, w, last));
        any |= open[w];
      }
    }
    return any != 0;
  }
}
