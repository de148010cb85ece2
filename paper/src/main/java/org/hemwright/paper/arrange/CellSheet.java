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
    for (int r = 0; r < mask.rows(); r++) {
      for (int c = 0; c < mask.columns(); c++) {
        if (mask.isSet(c, r)) {
          around(column + c, row + r);
        }
      }
    }
    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + mask.rows()); r++) {
      rerun(r);
    }
  }

  private void around(int column, int row) {
    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
        runs[0][r * words + c / 64] |= 1L << (c % 64);
      }
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
   * Marks the columns at which a run of cells, somewhere to the right of them, would meet a taken
   * cell.
   *
   * @param blocked a bit for each column; those already set stay
   * @param from how far right of the column the run begins
   * @param length of the run, 1 or more
   */
  void block(long[] blocked, int row, int from, int length) {
    int power = Math.min(log(length), runs.length - 1);
    long[] part = runs[power];
    int last = from + length - (1 << power);
    for (int w = 0; w < words; w++) {
      blocked[w] |= shifted(part, row, w, from) | shifted(part, row, w, last);
    }
  }
}
