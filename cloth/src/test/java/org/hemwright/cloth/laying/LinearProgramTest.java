package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small linear programs against answers worked by hand, or by going through all corners. */
class LinearProgramTest {

  private static final double[][] NO_ROWS = {};

  @Test
  void twoRowsThatBothHold() {
    // x + y = 4 and x + 3 y = 6 meet at (3, 1), which costs 2 · 3 + 3 · 1.
    LinearProgram.Answer answer =
        LinearProgram.solve(
            new double[] {2, 3}, new double[][] {{1, 1}, {1, 3}}, new double[] {4, 6});
    assertThat(answer.values).containsExactly(new double[] {3, 1}, within(1e-12));
    // Each row's price times its bound: 1.5 · 4 + 0.5 · 6 = 9, the cost.
    assertThat(answer.prices).containsExactly(new double[] {1.5, 0.5}, within(1e-12));
  }

  @Test
  void nothingAskedCostsNothingAndWhatCannotBeIsSaid() {
    assertThat(LinearProgram.solve(new double[] {1, 1}, NO_ROWS, new double[0]).values)
        .containsExactly(0, 0);
    LinearProgram.Answer none =
        LinearProgram.solve(new double[] {1}, new double[][] {{1}, {-1}}, new double[] {2, -1});
    assertThat(none.exists()).isFalse();
    // x of at least 2 and at most 1: added up, 0 · x of at least 1.
    assertThat(none.prices).containsExactly(1, 1);
  }

  @Test
  void randomProgramsCostWhatTheirBestCornerCosts() {
    int without = 0;
    for (int seed = 0; seed < 2000; seed++) {
      Random random = new Random(Chance.mix(seed));
      int rows = 1 + random.nextInt(7);
      double[][] row = new double[rows][];
      double[] bound = new double[rows];
      for (int r = 0; r < rows; r++) {
        // Whole numbers, so that rows are often alike, opposite or through one corner.
        row[r] = new double[] {random.nextInt(7) - 3, random.nextInt(7) - 3};
        bound[r] = random.nextInt(7) - 3;
      }
      double[] cost = {random.nextInt(4), 1 + random.nextInt(3)};
      double best = bestCorner(cost, row, bound);
      LinearProgram.Answer answer = LinearProgram.solve(cost, row, bound);
      assertThat(answer.exists()).as("program %d", seed).isEqualTo(best < Double.MAX_VALUE);
      if (answer.exists()) {
        assertThat(cost[0] * answer.values[0] + cost[1] * answer.values[1])
            .as("program %d", seed)
            .isCloseTo(best, within(1e-9));
      } else {
        without++;
      }
    }
    assertThat(without).isBetween(200, 1800);
  }

  /** The least cost over all crossings of two rows or axes that keep to all rows. */
  private static double bestCorner(double[] cost, double[][] row, double[] bound) {
    int n = bound.length;
    double best = Double.MAX_VALUE;
    for (int a = 0; a < n + 2; a++) {
      for (int b = a + 1; b < n + 2; b++) {
        double[] p = a < n ? row[a] : axis(a - n);
        double[] q = b < n ? row[b] : axis(b - n);
        double s = a < n ? bound[a] : 0;
        double t = b < n ? bound[b] : 0;
        double cross = p[0] * q[1] - p[1] * q[0];
        if (cross == 0) {
          continue;
        }
        double x = (s * q[1] - t * p[1]) / cross;
        double y = (p[0] * t - q[0] * s) / cross;
        boolean holds = x >= -1e-9 && y >= -1e-9;
        for (int r = 0; r < n; r++) {
          holds &= row[r][0] * x + row[r][1] * y >= bound[r] - 1e-9;
        }
        best = holds ? Math.min(best, cost[0] * x + cost[1] * y) : best;
      }
    }
    return best;
  }

  private static double[] axis(int which) {
    return which == 0 ? new double[] {1, 0} : new double[] {0, 1};
  }
}
