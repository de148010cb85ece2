package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves all copies of a layout a little, together, so that it becomes as short as it can while each
 * stays on its side of the others: compaction by linear programs (Li and Milenkovic 1995; Gomes and
 * Oliveira 2006). Where a layout is right but for small moves this makes it exactly right.
 *
 * <p>Each two copies that are near stay on the {@link FreeSides} of their no-fit region. Then these
 * are taken anew, as long as that shortens the layout.
 */
final class Tightening {

  /** Layouts of more copies are left alone: the programs would take longer than they gain. */
  private static final int MOST_COPIES = 24;

  private static final int MOST_ROUNDS = 12;

  /** How far a copy moves at most in one round, as a share of the strip's width. */
  private static final double REACH = 0.03;

  /** How much shorter that becomes where the copies went too far to stay clear of each other. */
  private static final double SHORTER = 0.25;

  /** A gain of less, as a share of the strip's width, is none. */
  private static final double GAIN = 1e-9;

  private final LayTask task;
  private final double width;
  private final boolean applies;
  private final FreeSides sides;

  /** The program at hand. */
  private final List<double[]> rows = new ArrayList<>();

  private final List<Double> bounds = new ArrayList<>();

  Tightening(LayTask task) {
    this.task = task;
    this.width = (double) task.grid.width();
    applies = task.shapeOf.length <= MOST_COPIES && !onBars();
    sides = new FreeSides(task);
  }

  /** Copies that are held to bars cannot move by a little. */
  private boolean onBars() {
    boolean held = false;
    for (int cut = 0; cut < task.forms.cuts().size(); cut++) {
      held |= task.room.onBars(cut);
    }
    return held;
  }

  /** Whether layouts of this problem are tightened at all. */
  boolean applies() {
    return applies;
  }

  /** The tightened layout; the one given where it is as tight already. */
  Places tighten(Places layout) {
    Places best = layout;
    double reach = REACH * width;
    for (int round = 0; applies && round < MOST_ROUNDS; round++) {
      Places next = once(best, reach);
      if (next.length > best.length - GAIN * width) {
        break;
      }
      if (isLayout(next)) {
        best = next;
      } else {
        reach *= SHORTER;
      }
    }
    return best;
  }

  /**
   * One program. Its variables are, in strip widths, how far each copy moves along and across from
   * the least place it may take, and then the length.
   */
  private Places once(Places from, double reach) {
    int n = from.cut.length;
    double[] least = new double[2 * n];
    rows.clear();
    bounds.clear();
    for (int copy = 0; copy < n; copy++) {
      Cut cut = task.forms.cuts().get(from.cut[copy]);
      LaneRange lane = lane(cut, from.y[copy]);
      least[2 * copy] = Math.max(0, from.x[copy] - reach);
      least[2 * copy + 1] = Math.max((double) lane.low(), from.y[copy] - reach);
      double most = Math.min((double) lane.high(), from.y[copy] + reach);
      double[] across = row(n);
      across[2 * copy + 1] = -1;
      add(across, least[2 * copy + 1] - most);
      double[] along = row(n);
      along[2 * copy] = -1;
      add(along, least[2 * copy] - from.x[copy] - reach);
      double[] end = row(n);
      end[2 * copy] = -1;
      end[2 * n] = 1;
      add(end, least[2 * copy] + (double) cut.width());
    }
    for (int copy = 0; copy < n; copy++) {
      for (int other = copy + 1; other < n; other++) {
        keepApart(from, copy, other, least, 2 * reach);
      }
    }
    double[] cost = row(n);
    cost[2 * n] = 1;
    double[] bound = bounds.stream().mapToDouble(b -> b / width).toArray();
    LinearProgram.Answer answer = LinearProgram.solve(cost, rows.toArray(new double[0][]), bound);
    return answer.exists() ? placed(from, least, answer.values) : from;
  }

  private static double[] row(int copies) {
    return new double[2 * copies + 1];
  }

  private void add(double[] row, double bound) {
    rows.add(row);
    bounds.add(bound);
  }

  private static LaneRange lane(Cut cut, double y) {
    return cut.lanes().stream()
        .filter(lane -> y >= (double) lane.low() && y <= (double) lane.high())
        .findFirst()
        .orElseThrow();
  }

  private void keepApart(Places from, int copy, int other, double[] least, double reach) {
    int found =
        sides.find(
            from.cut[copy],
            from.cut[other],
            from.x[other] - from.x[copy],
            from.y[other] - from.y[copy],
            reach);
    double x = from.x[other] - least[2 * other] - from.x[copy] + least[2 * copy];
    double y = from.y[other] - least[2 * other + 1] - from.y[copy] + least[2 * copy + 1];
    for (int side = 0; side < found; side++) {
      double nx = sides.x(side);
      double ny = sides.y(side);
      double[] row = row(from.cut.length);
      row[2 * other] = nx;
      row[2 * other + 1] = ny;
      row[2 * copy] = -nx;
      row[2 * copy + 1] = -ny;
      add(row, nx * x + ny * y - sides.room(side));
    }
  }

  private Places placed(Places from, double[] least, double[] moves) {
    int n = from.cut.length;
    double[] x = new double[n];
    double[] y = new double[n];
    double length = 0;
    for (int copy = 0; copy < n; copy++) {
      int cut = from.cut[copy];
      x[copy] = Math.rint(least[2 * copy] + moves[2 * copy] * width);
      y[copy] = task.room.nearestY(cut, least[2 * copy + 1] + moves[2 * copy + 1] * width);
      length = Math.max(length, x[copy] + (double) task.forms.cuts().get(cut).width());
    }
    return new Places(length, 0, from.cut, x, y);
  }

  private boolean isLayout(Places places) {
    CuttingTable table = new CuttingTable(task);
    for (int copy = 0; copy < places.cut.length; copy++) {
      if (!table.clear(places.cut[copy], places.x[copy], places.y[copy])) {
        return false;
      }
      table.lay(places.cut[copy], places.x[copy], places.y[copy]);
    }
    return true;
  }
}
