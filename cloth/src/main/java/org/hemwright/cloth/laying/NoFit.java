package org.hemwright.cloth.laying;

/**
 * How deep a moving form is inside a fixed one, by the place of its lower left corner seen from the
 * fixed one's. Pairs that are each other's reflection share one {@link DepthField}.
 */
final class NoFit {

  /** Two squared distances that differ by less than this share, or by one, count as equal. */
  private static final double SAME = 1e-9;

  /** A depth up to this counts as none, in grid steps: places are rounded to whole steps. */
  private static final double TOUCHING = 1;

  private final double sign;
  private final double moveX;
  private final double moveY;
  private final double weight;
  private final double cellsPerStep;
  private final int columns;
  private final float[] cells;
  private final int[] near;
  private final double[] boundary;

  /**
   * The field's point for a difference d of corners is sign · d + (moveX, moveY).
   *
   * @param weight by what a depth is multiplied
   */
  NoFit(DepthField field, double sign, double moveX, double moveY, double weight) {
    this.sign = sign;
    this.moveX = moveX - field.minX;
    this.moveY = moveY - field.minY;
    this.weight = weight;
    cellsPerStep = 1 / field.side;
    columns = field.columns;
    cells = field.cells;
    near = field.near;
    boundary = shifted(field.boundary, field.minX, field.minY);
  }

  private static double[] shifted(double[] boundary, double minX, double minY) {
    double[] moved = boundary.clone();
    for (int s = 0; s < moved.length; s += NoFitRegion.STRIDE) {
      moved[s] -= minX;
      moved[s + 1] -= minY;
    }
    return moved;
  }

  /**
   * The weighted depth for a difference of corners at which the forms' boxes overlap; 0 when the
   * forms do not.
   */
  double depth(double dx, double dy) {
    double px = sign * dx + moveX;
    double py = sign * dy + moveY;
    double u = px * cellsPerStep;
    double v = py * cellsPerStep;
    int column = (int) u;
    int row = (int) v;
    int at = (row * columns + column) * DepthField.STRIDE;
    float kind = cells[at];
    if (kind == DepthField.INSIDE) {
      double off = cells[at + 2] * (u - column - 0.5) + cells[at + 3] * (v - row - 0.5);
      return weight * (cells[at + 1] + off);
    }
    return kind == DepthField.OUTSIDE ? 0 : weight * nearDepth((int) kind, px, py);
  }

  /**
   * The boundary of the region by differences of corners, {@link NoFitRegion#STRIDE} doubles a
   * stretch: on it the forms touch, and to the left of each stretch they overlap.
   */
  double[] touching() {
    double[] stretches = boundary.clone();
    for (int s = 0; s < stretches.length; s += NoFitRegion.STRIDE) {
      stretches[s] = sign * (stretches[s] - moveX);
      stretches[s + 1] = sign * (stretches[s + 1] - moveY);
      stretches[s + 2] *= sign;
      stretches[s + 3] *= sign;
    }
    return stretches;
  }

  private double nearDepth(int list, double px, double py) {
    int end = list + near[list];
    double best = Double.POSITIVE_INFINITY;
    double bestSide = 0;
    for (int i = list + 1; i <= end; i++) {
      int s = near[i];
      double rx = px - boundary[s];
      double ry = py - boundary[s + 1];
      double t = rx * boundary[s + 2] + ry * boundary[s + 3];
      double side = rx * boundary[s + 3] - ry * boundary[s + 2];
      double over = t < 0 ? t : Math.max(0, t - boundary[s + 4]);
      double square = side * side + over * over;
      double slack = SAME * square + 1;
      if (square < best - slack) {
        best = square;
        bestSide = side;
      } else if (square <= best + slack) {
        // Two stretches meet at the nearest corner: the one seen more squarely says which side the
        // point is on. In a slit
        // both are seen alike, and the point is inside.
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
