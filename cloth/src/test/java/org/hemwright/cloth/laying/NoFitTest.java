package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NoFitTest {

  /**
   * The field says that two outlines overlap exactly when the checker, which knows nothing of it,
   * says so.
   */
  @Test
  void agreesWithTheCheckerEverywhereAndAboveAllNearTheBoundary() {
    Random random = new Random(11);
    int overlapping = 0;
    int clear = 0;
    for (int problem = 0; problem < 40; problem++) {
      List<Turn> turns = problem % 2 == 0 ? LooseShapes.EITHER_END : LooseShapes.FIXED;
      List<LooseShape> shapes =
          List.of(
              new LooseShape("a", 1, turns, LooseShapes.star(random, 3 + random.nextInt(12), 1)),
              new LooseShape("b", 1, turns, LooseShapes.star(random, 3 + random.nextInt(12), 0.6)));
      LayTask task = new LayTask(new StripProblem("two", 4, shapes));
      for (int trial = 0; trial < 400; trial++) {
        int fixed = random.nextInt(task.forms.count());
        int moving = random.nextInt(task.forms.count());
        GridOutline a = task.forms.outline(fixed);
        GridOutline b = task.forms.outline(moving);
        double dx = Math.rint(-b.maxX() + random.nextDouble() * (a.maxX() + b.maxX()));
        double dy = Math.rint(-b.maxY() + random.nextDouble() * (a.maxY() + b.maxY()));
        if (trial % 4 != 0) {
          double[] boundary = task.table.region(fixed, moving).boundary;
          int s = NoFitRegion.STRIDE * random.nextInt(boundary.length / NoFitRegion.STRIDE);
          double along = boundary[s + 4] * Math.max(0, random.nextDouble() * 1.5 - 0.5);
          double away = Math.pow(10, 8 * random.nextDouble());
          dx = Math.rint(boundary[s] + along * boundary[s + 2] + away * random.nextGaussian());
          dy = Math.rint(boundary[s + 1] + along * boundary[s + 3] + away * random.nextGaussian());
        }
        if (dx <= -b.maxX() || dx >= a.maxX() || dy <= -b.maxY() || dy >= a.maxY()) {
          continue;
        }
        DepthTable depths = task.table.depths;
        boolean deep = depths.depth(depths.pair(moving, fixed), dx, dy) > 0;
        PlacedOutline first = placed(a, 0, 0);
        PlacedOutline second = placed(b, dx, dy);
        // A touch of a few steps is none; the checker itself is true to a step.
        if (deep) {
          assertThat(new Penetration(0).exceeds(first, second)).as("%s %s", dx, dy).isTrue();
          overlapping++;
        } else {
          assertThat(new Penetration(DepthTable.TOUCHING + 8).exceeds(first, second))
              .as("%s %s", dx, dy)
              .isFalse();
          clear++;
        }
      }
    }
    assertThat(overlapping).isGreaterThan(2000);
    assertThat(clear).isGreaterThan(2000);
  }

  private static PlacedOutline placed(GridOutline outline, double x, double y) {
    List<Spot> corners = new java.util.ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      corners.add(new Spot(outline.x[i], outline.y[i]));
    }
    LooseShape shape = new LooseShape("outline", 1, LooseShapes.FIXED, corners);
    return PlacedOutline.of(shape, new Placement("outline", Turn.AS_DRAWN, x, y), 1);
  }

  @Test
  void depthIsTheLeastDistanceThatClearsTwoRectangles() {
    StripProblem problem =
        new StripProblem(
            "two",
            8,
            List.of(
                LooseShapes.rectangle("a", 1, 4, 2),
                LooseShapes.rectangle("b", 1, 2, 2),
                LooseShapes.rectangle("c", 1, 2, 4)));
    LayTask task = new LayTask(problem);
    double step = task.grid.width() / 8.0;
    DepthTable depths = task.table.depths;
    int pair = depths.pair(1, 0);
    double unit = depths.depth(pair, step, 1.9 * step) / 0.1;
    assertThat(depths.depth(pair, 3.5 * step, 0.25 * step) / unit).isCloseTo(0.5, within(1e-6));
    assertThat(depths.depth(pair, -1.875 * step, 0) / unit).isCloseTo(0.125, within(1e-6));
    assertThat(depths.depth(pair, step, 0) / unit).isCloseTo(2, within(0.1));
    assertThat(depths.depth(pair, 4 * step, 0)).isZero();
    assertThat(depths.depth(pair, 5 * step, 0)).isZero();
    assertThat(depths.depth(pair, 4 * step - 2, 0)).isZero();
    assertThat(depths.depth(pair, 4 * step - 2 * DepthTable.TOUCHING, 0)).isPositive();
  }

  /**
   * A square that fills a U's slot exactly: the slot's line is part of the boundary, so that the
   * fit is none too deep.
   */
  @Test
  void anExactFitIsNoOverlap() {
    StripProblem problem =
        new StripProblem(
            "slot",
            4,
            List.of(
                LooseShapes.shape(
                    "u", 1, LooseShapes.FIXED, 0, 0, 3, 0, 3, 1, 1, 1, 1, 2, 3, 2, 3, 3, 0, 3),
                LooseShapes.rectangle("s", 1, 1, 1)));
    LayTask task = new LayTask(problem);
    double step = task.grid.width() / 4.0;
    DepthTable depths = task.table.depths;
    int square = depths.pair(1, 0);
    assertThat(depths.depth(square, step, step)).isZero();
    assertThat(depths.depth(square, 2.5 * step, step)).isZero();
    assertThat(depths.depth(square, 2.5 * step, step + 20)).isPositive();
    assertThat(depths.depth(square, step - 20, step)).isPositive();
  }

  /** A form that goes as far as it is deep, the way that is told, comes clear. */
  @Test
  void theWayOutLeadsOut() {
    Random random = new Random(12);
    int led = 0;
    for (int problem = 0; problem < 30; problem++) {
      List<LooseShape> shapes =
          List.of(
              new LooseShape(
                  "a",
                  1,
                  LooseShapes.EITHER_END,
                  LooseShapes.star(random, 3 + random.nextInt(9), 1)),
              new LooseShape("b", 1, LooseShapes.FIXED, LooseShapes.box(0.7, 0.4)));
      LayTask task = new LayTask(new StripProblem("two", 4, shapes));
      DepthTable depths = task.table.depths;
      for (int trial = 0; trial < 200; trial++) {
        int fixed = random.nextInt(task.forms.count());
        int moving = random.nextInt(task.forms.count());
        double[] boundary = task.table.region(fixed, moving).boundary;
        int s = NoFitRegion.STRIDE * random.nextInt(boundary.length / NoFitRegion.STRIDE);
        double along = boundary[s + 4] * random.nextDouble();
        double inside = Math.pow(10, 2 + 4 * random.nextDouble());
        double dx = boundary[s] + along * boundary[s + 2] - inside * boundary[s + 3];
        double dy = boundary[s + 1] + along * boundary[s + 3] + inside * boundary[s + 2];
        double[] way = new double[2];
        int pair = depths.pair(moving, fixed);
        double depth = depths.depth(pair, dx, dy, way);
        assertThat(depth * depths.weight(pair))
            .isCloseTo(depths.depth(pair, dx, dy), within(1e-9 * depth));
        if (depth > 0) {
          double far = depth + 2 * DepthTable.TOUCHING;
          assertThat(Math.hypot(way[0], way[1])).isCloseTo(1, within(1e-6));
          assertThat(depths.depth(pair, dx + far * way[0], dy + far * way[1])).isZero();
          led++;
        }
      }
    }
    assertThat(led).isGreaterThan(4_000);
  }
}
