package org.hemwright.cloth.yardage;

import java.util.Optional;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.Silhouette;

/**
 * What is left of a cloth, laid flat, in square cells: a cell is left when nothing that is cut
 * reaches into it, and free for another piece when nothing is nearer to it than the least distance
 * between two pieces. So what fits here fits the cloth, and what fits by less than a cell is not
 * found.
 */
final class Remnant {
  /** Side of a cell (mm), as long as the cloth has no more than {@link #MOST_CELLS} of them. */
  static final double CELL = 5;

  /** A cloth that is longer than any bolt has larger cells, so that it takes no more memory. */
  private static final double MOST_CELLS = 4e6;

  private final double cell;
  private final int columns;
  private final int rows;
  private final double low;
  private final double gap;

  /** By row, then column: from how many cells on, itself the first, nothing is cut. */
  private final int[][] left;

  /** The same of cells that are as far from what is cut as the gap. */
  private final int[][] free;

  /**
   * What a laying leaves.
   *
   * @param length of the cloth, as it lies on the table (mm)
   */
  Remnant(ClothLaying laying, double length) {
    ClothLaying flat = laying.unfolded();
    double usable = flat.sheet().settings().usable(flat.sheet().width());
    low = flat.sheet().settings().selvedge();
    cell = Math.max(CELL, Math.sqrt(length * usable / MOST_CELLS));
    columns = (int) Math.floor(length / cell);
    rows = (int) Math.floor(usable / cell);
    gap = flat.sheet().settings().gap();
    left = whole();
    free = whole();
    for (LaidPiece laid : flat.pieces()) {
      take(laid.covered(), 0, 0);
    }
  }

  private Remnant(Remnant other) {
    cell = other.cell;
    columns = other.columns;
    rows = other.rows;
    low = other.low;
    gap = other.gap;
    left = copy(other.left);
    free = copy(other.free);
  }

  private int[][] whole() {
    int[][] cells = new int[rows][columns];
    for (int[] row : cells) {
      for (int column = 0; column < columns; column++) {
        row[column] = columns - column;
      }
    }
    return cells;
  }

  private static int[][] copy(int[][] cells) {
    int[][] copy = cells.clone();
    for (int row = 0; row < copy.length; row++) {
      copy[row] = cells[row].clone();
    }
    return copy;
  }

  /** The same, of which something else may be taken. */
  Remnant copy() {
    return new Remnant(this);
  }

  /**
   * A rectangle of cloth.
   *
   * @param along the selvedge (mm)
   * @param across the cloth (mm)
   */
  record Rectangle(double along, double across) {
    double area() {
      return along * across;
    }
  }

  /** The largest rectangle that is left, its sides along and across the cloth. */
  Rectangle largest() {
    Rectangle largest = new Rectangle(0, 0);
    int[] deep = new int[columns];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        deep[column] = left[row][column] == 0 ? 0 : deep[column] + 1;
      }
      Rectangle here = largestUnder(deep);
      largest = here.area() > largest.area() ? here : largest;
    }
    return largest;
  }

  /** The largest rectangle under a skyline. */
  private Rectangle largestUnder(int[] deep) {
    Rectangle largest = new Rectangle(0, 0);
    int[] open = new int[deep.length + 1];
    int count = 0;
    for (int column = 0; column <= deep.length; column++) {
      int here = column < deep.length ? deep[column] : 0;
      while (count > 0 && deep[open[count - 1]] >= here) {
        int high = deep[open[--count]];
        int wide = count > 0 ? column - open[count - 1] - 1 : column;
        Rectangle closed = new Rectangle(wide * cell, high * cell);
        largest = closed.area() > largest.area() ? closed : largest;
      }
      open[count++] = column;
    }
    return largest;
  }

  /**
   * Takes a place for a shape, the nearest to the cut end that is free, as far from all others as
   * the laying's pieces are from each other.
   *
   * @return whether there is one
   */
  boolean takes(Silhouette shape) {
    Silhouette own = shape.moved(-shape.left(), -shape.low());
    int[][] runs = runs(own);
    Optional<int[]> place = free(runs, (int) Math.ceil(own.length() / cell));
    place.ifPresent(at -> take(own, at[0] * cell, at[1] * cell + low));
    return place.isPresent();
  }

  private Optional<int[]> free(int[][] runs, int wide) {
    for (int column = 0; column + wide <= columns; column++) {
      for (int row = 0; row + runs.length <= rows; row++) {
        if (isFree(runs, column, row)) {
          return Optional.of(new int[] {column, row});
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(int[][] runs, int column, int row) {
    for (int r = 0; r < runs.length; r++) {
      int wide = runs[r][1] - runs[r][0] + 1;
      if (wide > 0 && free[row + r][column + runs[r][0]] < wide) {
        return false;
      }
    }
    return true;
  }

  private void take(Silhouette shape, double x, double y) {
    Silhouette moved = shape.moved(x, y - low);
    cover(moved, left);
    cover(moved.grown(gap), free);
  }

  private void cover(Silhouette moved, int[][] cells) {
    int first = Math.max(0, (int) Math.floor(moved.low() / cell));
    int last = Math.min(rows - 1, (int) Math.ceil(moved.high() / cell) - 1);
    for (int row = first; row <= last; row++) {
      double[] reach = reach(moved, row * cell, (row + 1) * cell);
      int from = Math.max(0, (int) Math.floor(reach[0] / cell));
      int to = Math.min(columns - 1, (int) Math.ceil(reach[1] / cell) - 1);
      take(cells[row], from, to);
    }
  }

  /** Takes cells of a row, from one to another. */
  private static void take(int[] row, int from, int to) {
    if (from > to) {
      return;
    }
    for (int column = from; column <= to; column++) {
      row[column] = 0;
    }
    for (int column = from - 1; column >= 0 && row[column] > 0; column--) {
      row[column] = from - column;
    }
  }

  /** For each row of cells, from which column to which a shape at the origin reaches. */
  private int[][] runs(Silhouette shape) {
    int count = Math.max(1, (int) Math.ceil(shape.height() / cell));
    int[][] runs = new int[count][];
    for (int row = 0; row < count; row++) {
      double[] reach = reach(shape, row * cell, (row + 1) * cell);
      runs[row] =
          new int[] {
            (int) Math.floor(reach[0] / cell), Math.max(0, (int) Math.ceil(reach[1] / cell) - 1)
          };
    }
    return runs;
  }

  /** How far along a shape reaches between two lines along the cloth; hollows count as filled. */
  private static double[] reach(Silhouette shape, double from, double to) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    int n = shape.corners().size();
    for (int i = 0; i < n; i++) {
      Spot a = shape.corners().get(i);
      Spot b = shape.corners().get((i + 1) % n);
      if (Math.max(a.y(), b.y()) < from || Math.min(a.y(), b.y()) > to) {
        continue;
      }
      for (double y : new double[] {from, to}) {
        double share = (y - a.y()) / (b.y() - a.y());
        if (share >= 0 && share <= 1) {
          double x = a.x() + share * (b.x() - a.x());
          least = Math.min(least, x);
          most = Math.max(most, x);
        }
      }
      for (Spot end : new Spot[] {a, b}) {
        if (end.y() >= from && end.y() <= to) {
          least = Math.min(least, end.x());
          most = Math.max(most, end.x());
        }
      }
    }
    return new double[] {least, most};
  }
}
