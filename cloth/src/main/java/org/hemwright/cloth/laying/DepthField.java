package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * How deep points lie inside a {@link NoFitRegion}, prepared on a grid of square cells: the least
 * distance that the second outline must move to be clear of the first. {@link NoFit} looks it up.
 *
 * <p>In a cell that the boundary crosses the depth is exact, taken from the few stretches of the
 * boundary that can be nearest. In a cell wholly inside it is the plane that has the depth and
 * slope of the cell's middle.
 */
final class DepthField {

  /**
   * Floats kept of each cell: its kind, then depth at the middle and its slopes per cell along x
   * and y.
   */
  static final int STRIDE = 4;

  /** Kind of a cell outside the region. */
  static final float OUTSIDE = -1;

  /** Kind of a cell wholly inside; any kind from 0 up is a place in {@link #near}. */
  static final float INSIDE = -2;

  /** Cells a side of the blocks that are looked at first. */
  private static final int BLOCK = 8;

  final double minX;
  final double minY;
  final double side;
  final int columns;
  final float[] cells;

  /**
   * For each cell on the boundary how many stretches can be nearest, and where they are in {@link
   * #boundary}.
   */
  final int[] near;

  final double[] boundary;

  private final NoFitRegion region;
  private final int rows;
  private final int[] candidates;
  private final double[] distances;
  private int candidateCount;
  private int[] lists = new int[256];
  private int used;

  /**
   * A field over the box of the region.
   *
   * @param cellsWanted about how many cells it should have
   */
  DepthField(
      NoFitRegion region, double minX, double minY, double maxX, double maxY, int cellsWanted) {
    this.region = region;
    this.minX = minX;
    this.minY = minY;
    this.boundary = region.boundary;
    double even = Math.sqrt((maxX - minX) * (maxY - minY) / cellsWanted);
    side = Math.max(even, Math.max(maxX - minX, maxY - minY) / cellsWanted);
    columns = (int) ((maxX - minX) / side) + 1;
    rows = (int) ((maxY - minY) / side) + 1;
    cells = new float[columns * rows * STRIDE];
    candidates = new int[boundary.length / NoFitRegion.STRIDE];
    distances = new double[candidates.length];
    for (int row = 0; row < rows; row += BLOCK) {
      for (int column = 0; column < columns; column += BLOCK) {
        fillBlock(row, column);
      }
    }
    near = Arrays.copyOf(lists, used);
  }

  private void fillBlock(int firstRow, int firstColumn) {
    double px = minX + (firstColumn + BLOCK / 2) * side;
    double py = minY + (firstRow + BLOCK / 2) * side;
    double radius = BLOCK * side * Math.sqrt(0.5) * (1 + 1e-9);
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < distances.length; s++) {
      distances[s] = distance(s * NoFitRegion.STRIDE, px, py);
      least = Math.min(least, distances[s]);
    }
    candidateCount = 0;
    for (int s = 0; s < distances.length; s++) {
      if (distances[s] <= least + 2 * radius) {
        candidates[candidateCount++] = s * NoFitRegion.STRIDE;
      }
    }
    boolean allOutside = least > radius && !region.contains(px, py, 0);
    boolean allInside = least > radius && !allOutside;
    for (int row = firstRow; row < Math.min(rows, firstRow + BLOCK); row++) {
      for (int column = firstColumn; column < Math.min(columns, firstColumn + BLOCK); column++) {
        if (allOutside) {
          cells[(row * columns + column) * STRIDE] = OUTSIDE;
        } else {
          fillCell(row, column, allInside);
        }
      }
    }
  }

  private void fillCell(int row, int column, boolean knownInside) {
    double px = minX + (column + 0.5) * side;
    double py = minY + (row + 0.5) * side;
    double radius = side * Math.sqrt(0.5) * (1 + 1e-9);
    int at = (row * columns + column) * STRIDE;
    int nearest = 0;
    for (int c = 0; c < candidateCount; c++) {
      distances[c] = distance(candidates[c], px, py);
      if (distances[c] < distances[nearest]) {
        nearest = c;
      }
    }
    double least = distances[nearest];
    if (least > radius) {
      if (knownInside || region.contains(px, py, 0)) {
        setInside(at, candidates[nearest], px, py, least);
      } else {
        cells[at] = OUTSIDE;
      }
      return;
    }
    if (used + candidateCount + 1 > lists.length) {
      lists = Arrays.copyOf(lists, 2 * lists.length + candidateCount + 1);
    }
    cells[at] = used;
    int listed = 0;
    for (int c = 0; c < candidateCount; c++) {
      if (distances[c] <= least + 2 * radius) {
        listed++;
        lists[used + listed] = candidates[c];
      }
    }
    lists[used] = listed;
    used += 1 + listed;
  }

  private void setInside(int at, int s, double px, double py, double depth) {
    double along = (px - boundary[s]) * boundary[s + 2] + (py - boundary[s + 1]) * boundary[s + 3];
    double held = Math.max(0, Math.min(boundary[s + 4], along));
    cells[at] = INSIDE;
    cells[at + 1] = (float) depth;
    cells[at + 2] = (float) ((px - boundary[s] - held * boundary[s + 2]) / depth * side);
    cells[at + 3] = (float) ((py - boundary[s + 1] - held * boundary[s + 3]) / depth * side);
  }

  private double distance(int s, double px, double py) {
    double rx = px - boundary[s];
    double ry = py - boundary[s + 1];
    double t = rx * boundary[s + 2] + ry * boundary[s + 3];
    double aside = rx * boundary[s + 3] - ry * boundary[s + 2];
    double over = t < 0 ? t : Math.max(0, t - boundary[s + 4]);
    return Math.sqrt(aside * aside + over * over);
  }
}
