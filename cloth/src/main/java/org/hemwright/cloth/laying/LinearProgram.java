package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * Least cost · v over all v ≥ 0 with row · v ≥ bound for every row, where no cost is below 0: a
 * small linear program, solved by the simplex method on its dual (Dantzig 1951; against cycling:
 * Bland 1977).
 *
 * <p>Rows are best given of length about 1 and bounds of the order of 1; what is within {@link
 * #ROUNDING} counts as equal.
 */
final class LinearProgram {

  /** Numbers that differ by less are equal. */
  static final double ROUNDING = 1e-11;

  /** After so many steps that gained nothing the cautious rule takes over. */
  private static final int STEPS_IN_VAIN = 20;

  /** Programs of this size end in far fewer; rounding can keep one from ending at all. */
  private static final int MOST_STEPS = 5_000;

  private final int variables;
  private final int rows;

  /**
   * The dual's tableau: a line for each variable, a column for each row and for each variable's
   * slack, and one for what is left of the cost; below them the line of gains.
   */
  private final double[][] lines;

  private final int[] basis;

  /** What was found. */
  static final class Answer {

    /** The v of least cost; empty where no v keeps to all rows, or none was found in time. */
    final double[] values;

    /**
     * How much each row adds to the cost: none below 0, together they add no more to any variable
     * than that costs, and prices · bounds is the least cost, which proves it so. Where there is no
     * v: amounts of the rows that add up to a row that none can keep; empty where none was found in
     * time.
     */
    final double[] prices;

    private Answer(double[] values, double[] prices) {
      this.values = values;
      this.prices = prices;
    }

    boolean exists() {
      return values.length > 0;
    }
  }

  private LinearProgram(double[] cost, double[][] row, double[] bound) {
    variables = cost.length;
    rows = bound.length;
    lines = new double[variables + 1][rows + variables + 1];
    basis = new int[variables];
    for (int v = 0; v < variables; v++) {
      for (int r = 0; r < rows; r++) {
        lines[v][r] = row[r][v];
      }
      lines[v][rows + v] = 1;
      lines[v][rows + variables] = cost[v];
      basis[v] = rows + v;
    }
    System.arraycopy(bound, 0, lines[variables], 0, rows);
  }

  /** Solves a program. */
  static Answer solve(double[] cost, double[][] row, double[] bound) {
    return new LinearProgram(cost, row, bound).solve();
  }

  private Answer solve() {
    int inVain = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      int enters = inVain > STEPS_IN_VAIN ? firstGain() : mostGain();
      if (enters < 0) {
        return new Answer(values(), prices());
      }
      int leaves = leaving(enters);
      if (leaves < 0) {
        return new Answer(new double[0], amounts(enters));
      }
      inVain = lines[leaves][rows + variables] > ROUNDING ? 0 : inVain + 1;
      pivot(leaves, enters);
    }
    return new Answer(new double[0], new double[0]);
  }

  private int mostGain() {
    int best = -1;
    double most = ROUNDING;
    double[] gains = lines[variables];
    for (int column = 0; column < rows + variables; column++) {
      if (gains[column] > most) {
        most = gains[column];
        best = column;
      }
    }
    return best;
  }

  private int firstGain() {
    int column = 0;
    while (column < rows + variables && lines[variables][column] <= ROUNDING) {
      column++;
    }
    return column < rows + variables ? column : -1;
  }

  private int leaving(int enters) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < variables; v++) {
      double pivot = lines[v][enters];
      if (pivot > ROUNDING) {
        double ratio = lines[v][rows + variables] / pivot;
        boolean alike = best >= 0 && Math.abs(ratio - least) <= ROUNDING;
        if (alike ? basis[v] < basis[best] : ratio < least) {
          least = ratio;
          best = v;
        }
      }
    }
    return best;
  }

  private void pivot(int leaves, int enters) {
    double[] line = lines[leaves];
    double pivot = line[enters];
    for (int column = 0; column < line.length; column++) {
      line[column] /= pivot;
    }
    line[enters] = 1;
    for (double[] other : lines) {
      double times = other[enters];
      if (other != line && times != 0) {
        for (int column = 0; column < line.length; column++) {
          other[column] -= times * line[column];
        }
        other[enters] = 0;
      }
    }
    basis[leaves] = enters;
  }

  private double[] values() {
    double[] values = Arrays.copyOfRange(lines[variables], rows, rows + variables);
    for (int v = 0; v < variables; v++) {
      values[v] = Math.max(0, -values[v]);
    }
    return values;
  }

  private double[] prices() {
    double[] prices = new double[rows];
    for (int v = 0; v < variables; v++) {
      if (basis[v] < rows) {
        prices[basis[v]] = Math.max(0, lines[v][rows + variables]);
      }
    }
    return prices;
  }

  /** The direction in which the dual grows without end. */
  private double[] amounts(int enters) {
    double[] amounts = new double[rows];
    if (enters < rows) {
      amounts[enters] = 1;
    }
    for (int v = 0; v < variables; v++) {
      if (basis[v] < rows) {
        amounts[basis[v]] = Math.max(0, -lines[v][enters]);
      }
    }
    return amounts;
  }
}
