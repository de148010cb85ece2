package org.hemwright.paper.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/**
 * A footprint on a grid of cells: which cells it may touch. Its lower left corner lies a little
 * inside the first cell, so that its lines never lie on the edge of a page.
 */
final class CellMask {
  /** How far the footprint keeps from the edge of its cells (mm). */
  static final double INSET = 2.5;

  private final int columns;
  private final int rows;
  private final int words;

  /** A bit for each cell, rows from the top. */
  private final long[] bits;

  /** The same with all cells next to them: a row and a column more on each side. */
  private final long[] grown;

  private final int grownWords;
  private final int[] runs;

  /** Where the footprint's own origin lies from the mask's upper left corner (mm). */
  private final double originRight;

  private final double originDown;

  CellMask(Footprint footprint, double cellWidth, double cellHeight) {
    Box box = footprint.bounds();
    columns = Math.max(1, (int) Math.ceil((box.width() + 2 * INSET) / cellWidth));
    rows = Math.max(1, (int) Math.ceil((box.height() + 2 * INSET) / cellHeight));
    words = (columns + 63) / 64;
    bits = new long[rows * words];
    originRight = INSET - box.minX();
    originDown = INSET + box.maxY();
    for (List<Point> area : footprint.areas()) {
      edge(area, cellWidth, cellHeight);
      inside(area, cellWidth, cellHeight);
    }
    runs = runs();
    grownWords = (columns + 2 + 63) / 64;
    grown = grow();
  }

  private void edge(List<Point> area, double cellWidth, double cellHeight) {
    double step = Math.min(cellWidth, cellHeight) / 4;
    for (int i = 1; i < area.size(); i++) {
      Point from = area.get(i - 1);
      Point to = area.get(i);
      int parts = 1 + (int) (from.distanceTo(to) / step);
      for (int k = 0; k <= parts; k++) {
        Point at = from.toward(to, (double) k / parts);
        double right = at.x() + originRight;
        double down = originDown - at.y();
        for (int column = cell(right - INSET, cellWidth, columns);
            column <= cell(right + INSET, cellWidth, columns);
            column++) {
          for (int row = cell(down - INSET, cellHeight, rows);
              row <= cell(down + INSET, cellHeight, rows);
              row++) {
            set(column, row);
          }
        }
      }
    }
  }

  private static int cell(double at, double side, int count) {
    return Math.max(0, Math.min(count - 1, (int) Math.floor(at / side)));
  }

  private void inside(List<Point> area, double cellWidth, double cellHeight) {
    for (int row = 0; row < rows; row++) {
      double y = originDown - (row + 0.5) * cellHeight;
      double[] crossings = new double[area.size()];
      int count = 0;
      for (int i = 1; i < area.size(); i++) {
        Point from = area.get(i - 1);
        Point to = area.get(i);
        if (from.y() > y != to.y() > y) {
          crossings[count++] =
              from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
        }
      }
      Arrays.sort(crossings, 0, count);
      int next = 0;
      for (int column = 0; column < columns; column++) {
        double x = (column + 0.5) * cellWidth - originRight;
        while (next < count && crossings[next] < x) {
          next++;
        }
        if (next % 2 == 1) {
          set(column, row);
        }
      }
    }
  }

  private void set(int column, int row) {
    bits[row * words + column / 64] |= 1L << (column % 64);
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  boolean isSet(int column, int row) {
    return (bits[row * words + column / 64] & 1L << (column % 64)) != 0;
  }

  private long[] grow() {
    long[] more = new long[(rows + 2) * grownWords];
    for (int i = 0; i < runs.length; i += 3) {
      for (int row = runs[i]; row <= runs[i] + 2; row++) {
        for (int column = runs[i + 1]; column < runs[i + 1] + runs[i + 2] + 2; column++) {
          more[row * grownWords + column / 64] |= 1L << (column % 64);
        }
      }
    }
    return more;
  }

  /** How many words hold a row of the grown mask. */
  int grownWords() {
    return grownWords;
  }

  /** 64 cells of the grown mask, whose first row and column lie before the mask's own. */
  long grown(int row, int word) {
    return grown[row * grownWords + word];
  }

  double originRight() {
    return originRight;
  }

  double originDown() {
    return originDown;
  }

  int count() {
    return Arrays.stream(bits).mapToInt(Long::bitCount).sum();
  }

  /** How many cells are set above and left of each place: a row and a column more than cells. */
  int[] sums() {
    int wide = columns + 1;
    int[] sums = new int[wide * (rows + 1)];
    for (int row = 0; row < rows; row++) {
      int run = 0;
      for (int column = 0; column < columns; column++) {
        run += isSet(column, row) ? 1 : 0;
        sums[(row + 1) * wide + column + 1] = sums[row * wide + column + 1] + run;
      }
    }
    return sums;
  }

  /**
   * Leaves open those columns of a sheet at which it would lie on no taken cell, its upper row on a
   * row of the sheet.
   *
   * @param open a bit for each column that is asked about
   * @return whether any is left
   */
  boolean leaveFree(CellSheet sheet, int row, long[] open) {
    for (int i = 0; i < runs.length; i += 3) {
      if (!sheet.leaveFree(open, row + runs[i], runs[i + 1], runs[i + 2])) {
        return false;
      }
    }
    return true;
  }

  /** The runs of cells that are set, the longest first: row, first column and length of each. */
  private int[] runs() {
    List<int[]> found = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        if (isSet(column, row)) {
          int from = column;
          while (column < columns && isSet(column, row)) {
            column++;
          }
          found.add(new int[] {row, from, column - from});
        }
      }
    }
    found.sort(Comparator.comparingInt(run -> -run[2]));
    return found.stream().flatMapToInt(Arrays::stream).toArray();
  }
}
