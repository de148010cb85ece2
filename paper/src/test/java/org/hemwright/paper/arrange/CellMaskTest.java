package org.hemwright.paper.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class CellMaskTest {
  private static final double CELL = 8;

  /** A closed outline of a few corners about a middle, not simple at times. */
  private static Footprint blot(Random random) {
    List<Point> corners = new ArrayList<>();
    double wide = 20 + random.nextInt(700);
    double high = 20 + random.nextInt(400);
    for (int i = 0; i < 7; i++) {
      corners.add(new Point(random.nextDouble() * wide, random.nextDouble() * high));
    }
    corners.add(corners.get(0));
    return new Footprint(List.of(corners));
  }

  /** Asked cell by cell, as the definition says. */
  private static boolean meets(CellMask mask, boolean[][] taken, int column, int row) {
    for (int r = 0; r < mask.rows(); r++) {
      for (int c = 0; c < mask.columns(); c++) {
        if (mask.isSet(c, r) && taken[row + r][column + c]) {
          return true;
        }
      }
    }
    return false;
  }

  private static void take(boolean[][] taken, CellMask mask, int column, int row) {
    for (int r = -1; r <= mask.rows(); r++) {
      for (int c = -1; c <= mask.columns(); c++) {
        for (int dr = -1; dr <= 1; dr++) {
          for (int dc = -1; dc <= 1; dc++) {
            boolean in = c + dc >= 0 && c + dc < mask.columns() && r + dr >= 0;
            if (in && r + dr < mask.rows() && mask.isSet(c + dc, r + dr)) {
              int y = row + r;
              int x = column + c;
              if (y >= 0 && y < taken.length && x >= 0 && x < taken[0].length) {
                taken[y][x] = true;
              }
            }
          }
        }
      }
    }
  }

  @Test
  void columnsStayOpenWhereNoCellWouldLieOnATakenOne() {
    int free = 0;
    int met = 0;
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      int columns = 100 + random.nextInt(180);
      int rows = 80;
      CellSheet sheet = new CellSheet(columns, rows);
      boolean[][] taken = new boolean[rows][columns];
      for (int i = 0; i < 3; i++) {
        CellMask laid = new CellMask(blot(random), CELL, CELL);
        int column = random.nextInt(Math.max(1, columns - laid.columns()));
        int row = random.nextInt(Math.max(1, rows - laid.rows()));
        sheet.take(laid, column, row);
        take(taken, laid, column, row);
      }
      CellMask mask = new CellMask(blot(random), CELL, CELL);
      for (int row = 0; row + mask.rows() <= rows; row++) {
        long[] open = new long[sheet.words()];
        Arrays.fill(open, -1);
        mask.leaveFree(sheet, row, open);
        for (int column = 0; column + mask.columns() <= columns; column++) {
          boolean stops = (open[column / 64] & (1L << (column % 64))) == 0;
          assertThat(stops)
              .as("seed %d, row %d, column %d", seed, row, column)
              .isEqualTo(meets(mask, taken, column, row));
          free += stops ? 0 : 1;
          met += stops ? 1 : 0;
        }
      }
    }
    assertThat(free).isGreaterThan(10_000);
    assertThat(met).isGreaterThan(10_000);
  }
}
