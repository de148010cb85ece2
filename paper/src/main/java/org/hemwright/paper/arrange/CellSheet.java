package org.hemwright.paper.arrange;

/** The cells of a sheet: which are taken, or so near to what is laid that they must stay free. */
final class CellSheet {
  private final int columns;
  private final int rows;
  private final int words;
  private final long[] bits;

  CellSheet(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    words = (columns + 63) / 64;
    bits = new long[rows * words];
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  long word(int row, int word) {
    return row < rows && word < words ? bits[row * words + word] : 0;
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
  }

  private void around(int column, int row) {
    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
        bits[r * words + c / 64] |= 1L << (c % 64);
      }
    }
  }
}
