package org.hemwright.paper.label;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/** A grid of small squares, each free or taken, upright in its own frame. */
final class FreeGrid {
  /** Side of a square (mm). */
  static final double SQUARE = 1;

  private static final double LONGEST_STRETCH = 25;

  private final double left;
  private final double bottom;
  private final int columns;
  private final int rows;
  private final boolean[] taken;
  private int[] sums = {};

  FreeGrid(Box area) {
    left = area.minX();
    bottom = area.minY();
    columns = Math.max(1, (int) Math.ceil(area.width() / SQUARE));
    rows = Math.max(1, (int) Math.ceil(area.height() / SQUARE));
    taken = new boolean[columns * rows];
  }

  private FreeGrid(FreeGrid other) {
    left = other.left;
    bottom = other.bottom;
    columns = other.columns;
    rows = other.rows;
    taken = other.taken.clone();
  }

  FreeGrid copy() {
    return new FreeGrid(this);
  }

  /** Takes every square whose middle lies outside a closed outline given by its points. */
  void takeOutside(List<Point> outline) {
    double[] crossings = new double[outline.size()];
    for (int row = 0; row < rows; row++) {
      double y = bottom + (row + 0.5) * SQUARE;
      int count = 0;
      for (int i = 1; i < outline.size(); i++) {
        Point from = outline.get(i - 1);
        Point to = outline.get(i);
        if (from.y() > y != to.y() > y) {
          crossings[count++] = crossing(from, to, y);
        }
      }
      Arrays.sort(crossings, 0, count);
      int next = 0;
      for (int column = 0; column < columns; column++) {
        double x = left + (column + 0.5) * SQUARE;
        while (next < count && crossings[next] < x) {
          next++;
        }
        if (next % 2 == 0) {
          taken[row * columns + column] = true;
        }
      }
    }
    sums = new int[0];
  }

  private static double crossing(Point from, Point to, double y) {
    return from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
  }

  /** Takes every square whose middle lies within a margin of a line given by its points. */
  void takeLine(List<Point> line, double margin) {
    for (int i = 1; i < line.size(); i++) {
      Point from = line.get(i - 1);
      Point to = line.get(i);
      int parts = 1 + (int) (from.distanceTo(to) / LONGEST_STRETCH);
      for (int k = 0; k < parts; k++) {
        takeStretch(
            from.toward(to, (double) k / parts), from.toward(to, (double) (k + 1) / parts), margin);
      }
    }
    sums = new int[0];
  }

  private void takeStretch(Point from, Point to, double margin) {
    Box box = Box.of(from, to).grown(margin);
    int firstRow = Math.max(0, row(box.minY()));
    int lastRow = Math.min(rows - 1, row(box.maxY()));
    int firstColumn = Math.max(0, column(box.minX()));
    int lastColumn = Math.min(columns - 1, column(box.maxX()));
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (!taken[row * columns + column] && middle(column, row).distanceTo(from, to) <= margin) {
          taken[row * columns + column] = true;
        }
      }
    }
  }

  /** Takes every square that an upright box touches. */
  void takeBox(Box box) {
    for (int row = Math.max(0, row(box.minY()));
        row <= Math.min(rows - 1, row(box.maxY()));
        row++) {
      for (int column = Math.max(0, column(box.minX()));
          column <= Math.min(columns - 1, column(box.maxX()));
          column++) {
        taken[row * columns + column] = true;
      }
    }
    sums = new int[0];
  }

  /** Whether a point lies on a free square of the grid. */
  boolean isFree(Point point) {
    int row = row(point.y());
    int column = column(point.x());
    return row >= 0
        && column >= 0
        && row < rows
        && column < columns
        && !taken[row * columns + column];
  }

  /** The lower left corner of the free box of a size whose middle is nearest to a point. */
  Optional<Point> room(double width, double height, Point near) {
    int across = (int) Math.ceil(width / SQUARE);
    int up = (int) Math.ceil(height / SQUARE);
    double best = Double.POSITIVE_INFINITY;
    int bestColumn = -1;
    int bestRow = -1;
    for (int row = 0; row + up <= rows; row++) {
      double dy = bottom + (row + up / 2.0) * SQUARE - near.y();
      if (dy * dy >= best) {
        continue;
      }
      for (int column = 0; column + across <= columns; column++) {
        double dx = left + (column + across / 2.0) * SQUARE - near.x();
        double far = dx * dx + dy * dy;
        if (far < best && takenIn(column, row, column + across, row + up) == 0) {
          best = far;
          bestColumn = column;
          bestRow = row;
        }
      }
    }
    return bestRow < 0
        ? Optional.empty()
        : Optional.of(new Point(left + bestColumn * SQUARE, bottom + bestRow * SQUARE));
  }

  /** The middle of all free squares; the grid's own middle where none is. */
  Point centreOfFree() {
    double sumX = 0;
    double sumY = 0;
    long count = 0;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        if (!taken[row * columns + column]) {
          sumX += column + 0.5;
          sumY += row + 0.5;
          count++;
        }
      }
    }
    return count == 0
        ? middle(columns / 2, rows / 2)
        : new Point(left + sumX / count * SQUARE, bottom + sumY / count * SQUARE);
  }

  private int takenIn(int fromColumn, int fromRow, int toColumn, int toRow) {
    if (sums.length == 0) {
      sums = summed();
    }
    int wide = columns + 1;
    return sums[toRow * wide + toColumn]
        - sums[fromRow * wide + toColumn]
        - sums[toRow * wide + fromColumn]
        + sums[fromRow * wide + fromColumn];
  }

  private int[] summed() {
    int wide = columns + 1;
    int[] all = new int[wide * (rows + 1)];
    for (int row = 0; row < rows; row++) {
      int run = 0;
      for (int column = 0; column < columns; column++) {
        run += taken[row * columns + column] ? 1 : 0;
        all[(row + 1) * wide + column + 1] = all[row * wide + column + 1] + run;
      }
    }
    return all;
  }

  private Point middle(int column, int row) {
    return new Point(left + (column + 0.5) * SQUARE, bottom + (row + 0.5) * SQUARE);
  }

  private int row(double y) {
    return (int) Math.floor((y - bottom) / SQUARE);
  }

  private int column(double x) {
    return (int) Math.floor((x - left) / SQUARE);
  }
}
