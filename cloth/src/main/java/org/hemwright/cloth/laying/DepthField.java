package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * How deep points lie inside a {@link NoFitRegion}, prepared on a grid of square cells: the least
 * distance that the second outline must move to be clear of the first. {@link DepthTable} looks it
 * up.
 *
 * <p>Most cells hold a plane. Where a single stretch of the boundary can be nearest the plane is
 * exact, to a few grid steps; deeper inside it has the depth and slope of the cell's middle. A cell
 * in which several stretches can be nearest lists them, and the depth is then exact.
 */
final class DepthField {

  /**
   * Floats kept of each cell: the depth at its middle and its slopes per cell along x and y, below
   * 0 outside. In a cell with a list the depth is NaN and the next float holds the list's place as
   * raw bits.
   */
  static final int STRIDE = 3;

  /** Doubles kept of each stretch in a list; the list begins with how many there are. */
  static final int LISTED = NoFitRegion.STRIDE;

  /** A plane in a cell of at most this side, in steps, is true to {@link DepthTable#TOUCHING}. */
  private static final double LARGEST_EXACT_SIDE = 0x1p25;

  /** Cells a side of the blocks that are looked at first. */
  private static final int BLOCK = 8;

  final double minX;
  final double minY;
  final double side;
  final int columns;
  final float[] cells;

  /**
   * For each cell with a list how many stretches can be nearest, then these, their starts seen from
   * the field's lower left corner.
   */
  final double[] near;

  final double[] boundary;

  /**
   * A field over the box of the region.
   *
   * @param cellsWanted about how many cells it should have
   */
  DepthField(
      NoFitRegion region, double minX, double minY, double maxX, double maxY, int cellsWanted) {
    this.minX = minX;
    this.minY = minY;
    this.boundary = region.boundary;
    double even = Math.sqrt((maxX - minX) * (maxY - minY) / cellsWanted);
    side = Math.max(even, Math.max(maxX - minX, maxY - minY) / cellsWanted);
    columns = (int) ((maxX - minX) / side) + 1;
    int rows = (int) ((maxY - minY) / side) + 1;
    Filling filling = new Filling(this, region, rows);
    cells = filling.cells;
    near = filling.lists();
  }

  /** What is needed only while a field is made. */
  private static final class Filling {
    private final NoFitRegion region;
    private final double minX;
    private final double minY;
    private final double side;
    private final int rows;
    private final int columns;
    private final double[] boundary;
    private final float[] cells;
    private final int[] candidates;
    private final double[] distances;
    private int candidateCount;
    private double[] lists = new double[256];
    private int used;

    Filling(DepthField field, NoFitRegion region, int rows) {
      this.region = region;
      this.rows = rows;
      minX = field.minX;
      minY = field.minY;
      side = field.side;
      columns = field.columns;
      boundary = field.boundary;
      cells = new float[columns * rows * STRIDE];
      candidates = new int[boundary.length / NoFitRegion.STRIDE];
      distances = new double[candidates.length];
      for (int row = 0; row < rows; row += BLOCK) {
        for (int column = 0; column < columns; column += BLOCK) {
          fillBlock(row, column);
        }
      }
    }

    double[] lists() {
      return Arrays.copyOf(lists, used);
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
            cells[(row * columns + column) * STRIDE] = -1;
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
          cells[at] = -1;
        }
        return;
      }
      listNear(at, least + 2 * radius, nearest, px, py);
    }

    private void listNear(int at, double within, int nearest, double px, double py) {
      int listed = 0;
      for (int c = 0; c < candidateCount; c++) {
        listed += distances[c] <= within ? 1 : 0;
      }
      if (listed == 1 && side <= LARGEST_EXACT_SIDE) {
        int s = candidates[nearest];
        setPlane(
            at,
            (py - boundary[s + 1]) * boundary[s + 2] - (px - boundary[s]) * boundary[s + 3],
            -boundary[s + 3],
            boundary[s + 2]);
        return;
      }
      int needed = used + 1 + listed * LISTED;
      if (needed > lists.length) {
        lists = Arrays.copyOf(lists, 2 * needed);
      }
      cells[at] = Float.NaN;
      cells[at + 1] = Float.intBitsToFloat(used);
      lists[used++] = listed;
      for (int c = 0; c < candidateCount; c++) {
        if (distances[c] <= within) {
          int s = candidates[c];
          lists[used] = boundary[s] - minX;
          lists[used + 1] = boundary[s + 1] - minY;
          lists[used + 2] = boundary[s + 2];
          lists[used + 3] = boundary[s + 3];
          lists[used + 4] = boundary[s + 4];
          used += LISTED;
        }
      }
    }

    private void setInside(int at, int s, double px, double py, double depth) {
      double along =
          (px - boundary[s]) * boundary[s + 2] + (py - boundary[s + 1]) * boundary[s + 3];
      double held = Math.max(0, Math.min(boundary[s + 4], along));
      setPlane(
          at,
          depth,
          (px - boundary[s] - held * boundary[s + 2]) / depth,
          (py - boundary[s + 1] - held * boundary[s + 3]) / depth);
    }

    private void setPlane(int at, double depth, double slopeX, double slopeY) {
      cells[at] = (float) depth;
      cells[at + 1] = (float) (slopeX * side);
      cells[at + 2] = (float) (slopeY * side);
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
}
