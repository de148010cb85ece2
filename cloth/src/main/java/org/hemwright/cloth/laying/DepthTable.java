package org.hemwright.cloth.laying;

import java.util.List;

/**
 * How deep each form is inside each other one, by the place of the moving form's lower left corner
 * seen from the fixed one's: all {@link DepthField}s in flat arrays, since the search asks nothing
 * else so often. Pairs that are each other's reflection share one field.
 */
final class DepthTable {

  /** A depth up to this counts as none, in grid steps: planes are held in single precision. */
  static final double TOUCHING = 8;

  /** Two squared distances that differ by less than this share, or by one, count as equal. */
  private static final double SAME = 1e-9;

  /** Doubles and integers kept of each pair. */
  private static final int REALS = 8;

  private static final int WHOLES = 4;

  private final int forms;
  private final double[] reals;
  private final int[] wholes;
  private final float[] cells;
  private final double[][] near;

  /**
   * A field as one pair of forms sees it: the field's point for a difference d of corners is sign ·
   * d + (moveX, moveY).
   *
   * @param field which of the fields
   * @param weight by what a depth is multiplied
   * @param spanX the field's extent along x, both forms' widths together
   * @param spanY likewise along y
   */
  record View(
      int field,
      double sign,
      double moveX,
      double moveY,
      double weight,
      double spanX,
      double spanY) {}

  /**
   * A table.
   *
   * @param views by moving form times forms plus fixed form
   */
  DepthTable(int forms, List<DepthField> fields, View[] views) {
    this.forms = forms;
    int[] cellStart = new int[fields.size() + 1];
    for (int f = 0; f < fields.size(); f++) {
      cellStart[f + 1] = cellStart[f] + fields.get(f).cells.length;
    }
    cells = new float[cellStart[fields.size()]];
    near = new double[fields.size()][];
    for (int f = 0; f < fields.size(); f++) {
      DepthField field = fields.get(f);
      System.arraycopy(field.cells, 0, cells, cellStart[f], field.cells.length);
      near[f] = field.near;
    }
    reals = new double[views.length * REALS];
    wholes = new int[views.length * WHOLES];
    for (int pair = 0; pair < views.length; pair++) {
      View view = views[pair];
      DepthField field = fields.get(view.field);
      int r = pair * REALS;
      reals[r] = view.sign;
      reals[r + 1] = view.moveX - field.minX;
      reals[r + 2] = view.moveY - field.minY;
      reals[r + 3] = 1 / field.side;
      reals[r + 4] = view.spanX;
      reals[r + 5] = view.spanY;
      reals[r + 6] = view.weight;
      int w = pair * WHOLES;
      wholes[w] = cellStart[view.field];
      wholes[w + 1] = field.columns;
      wholes[w + 2] = view.field;
    }
  }

  /** The number of a pair, for {@link #depth}. */
  int pair(int moving, int fixed) {
    return moving * forms + fixed;
  }

  /**
   * The weighted depth for a difference of corners, moving less fixed, in grid steps; 0 when the
   * forms do not overlap.
   */
  double depth(int pair, double dx, double dy) {
    int r = pair * REALS;
    double sign = reals[r];
    double px = sign * dx + reals[r + 1];
    double py = sign * dy + reals[r + 2];
    if (px <= 0 || py <= 0 || px >= reals[r + 4] || py >= reals[r + 5]) {
      return 0;
    }
    double cellsPerStep = reals[r + 3];
    double u = px * cellsPerStep;
    double v = py * cellsPerStep;
    int column = (int) u;
    int row = (int) v;
    int w = pair * WHOLES;
    int at = wholes[w] + (row * wholes[w + 1] + column) * DepthField.STRIDE;
    float offX = (float) (u - column - 0.5);
    float offY = (float) (v - row - 0.5);
    float depth = cells[at] + cells[at + 1] * offX + cells[at + 2] * offY;
    if (depth > TOUCHING) {
      return reals[r + 6] * depth;
    }
    return depth <= TOUCHING
        ? 0
        : reals[r + 6] * nearDepth(near[wholes[w + 2]], listOf(at), px, py);
  }

  /** By what the depths of a pair are multiplied. */
  double weight(int pair) {
    return reals[pair * REALS + 6];
  }

  /**
   * The depth likewise, unweighted and in grid steps, and the way out. The cell is found here
   * again: one method for both takes a whole search 7 % longer, for the sake of those who ask no
   * way.
   *
   * @param way where there is a depth, takes the direction of length 1 in which the moving form
   *     comes clear soonest
   */
  double depth(int pair, double dx, double dy, double[] way) {
    int r = pair * REALS;
    double sign = reals[r];
    double px = sign * dx + reals[r + 1];
    double py = sign * dy + reals[r + 2];
    if (px <= 0 || py <= 0 || px >= reals[r + 4] || py >= reals[r + 5]) {
      return 0;
    }
    double cellsPerStep = reals[r + 3];
    double u = px * cellsPerStep;
    double v = py * cellsPerStep;
    int column = (int) u;
    int row = (int) v;
    int w = pair * WHOLES;
    int at = wholes[w] + (row * wholes[w + 1] + column) * DepthField.STRIDE;
    float offX = (float) (u - column - 0.5);
    float offY = (float) (v - row - 0.5);
    float depth = cells[at] + cells[at + 1] * offX + cells[at + 2] * offY;
    if (depth > TOUCHING) {
      way[0] = -sign * cells[at + 1] * cellsPerStep;
      way[1] = -sign * cells[at + 2] * cellsPerStep;
      return depth;
    }
    if (depth <= TOUCHING) {
      return 0;
    }
    double[] stretches = near[wholes[w + 2]];
    double found = nearDepth(stretches, listOf(at), px, py);
    if (found > 0) {
      wayOut(stretches, listOf(at), px, py, way);
      way[0] *= sign / found;
      way[1] *= sign / found;
    }
    return found;
  }

  /** From a point to the nearest one of some stretches. */
  private static void wayOut(double[] near, int list, double px, double py, double[] way) {
    int listed = (int) near[list];
    int end = list + 1 + listed * DepthField.LISTED;
    double best = Double.POSITIVE_INFINITY;
    for (int s = list + 1; s < end; s += DepthField.LISTED) {
      double rx = px - near[s];
      double ry = py - near[s + 1];
      double along = rx * near[s + 2] + ry * near[s + 3];
      double held = Math.max(0, Math.min(near[s + 4], along));
      double goX = near[s + 2] * held - rx;
      double goY = near[s + 3] * held - ry;
      double square = goX * goX + goY * goY;
      if (square < best) {
        best = square;
        way[0] = goX;
        way[1] = goY;
      }
    }
  }

  private int listOf(int at) {
    return Float.floatToRawIntBits(cells[at + 1]);
  }

  private static double nearDepth(double[] near, int list, double px, double py) {
    int listed = (int) near[list];
    int end = list + 1 + listed * DepthField.LISTED;
    double best = Double.POSITIVE_INFINITY;
    double bestSide = 0;
    for (int s = list + 1; s < end; s += DepthField.LISTED) {
      double rx = px - near[s];
      double ry = py - near[s + 1];
      double t = rx * near[s + 2] + ry * near[s + 3];
      double side = rx * near[s + 3] - ry * near[s + 2];
      double over = t < 0 ? t : Math.max(0, t - near[s + 4]);
      double square = side * side + over * over;
      double slack = SAME * square + 1;
      if (square < best - slack) {
        best = square;
        bestSide = side;
      } else if (square <= best + slack) {
        // Two stretches meet at the nearest corner: the one seen more squarely says which side the
        // point is on. In a slit both are seen alike, and the point is inside.
        double turn = Math.abs(side) - Math.abs(bestSide);
        double alike = SAME * Math.abs(bestSide);
        if (turn > alike || (turn >= -alike && side < bestSide)) {
          bestSide = side;
        }
      }
    }
    return bestSide <= 0 && best > TOUCHING * TOUCHING ? Math.sqrt(best) : 0;
  }
}
