package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Moves all copies of a layout a little, together, so that it becomes as short as it can while each
 * stays on its side of the others: compaction by linear programs (Li and Milenkovic 1995; Gomes and
 * Oliveira 2006). Where a layout is right but for small moves this makes it exactly right.
 *
 * <p>For every two convex parts of two copies the edge is taken that has them farthest apart, and
 * they stay on its two sides. Then edges are taken anew, as long as that shortens the layout.
 */
final class Tightening {

  /** Layouts of more parts are left alone: many parts are a curve, and little is gained for it. */
  private static final int MOST_PARTS = 24;

  private static final int MOST_ROUNDS = 12;

  /** How far a copy moves at most in one round, as a share of the strip's width. */
  private static final double REACH = 0.05;

  /** A gain of less, as a share of the strip's width, is none. */
  private static final double GAIN = 1e-9;

  private final LayTask task;
  private final double width;
  private final List<List<ConvexPart>> parts = new ArrayList<>();
  private final boolean simple;

  /** The program at hand. */
  private final List<double[]> rows = new ArrayList<>();

  private final List<Double> bounds = new ArrayList<>();

  Tightening(LayTask task) {
    this.task = task;
    this.width = (double) task.grid.width();
    simple = fewParts() && !onBars();
  }

  /** Copies that are held to bars cannot move by a little. */
  private boolean onBars() {
    boolean held = false;
    for (int cut = 0; cut < task.forms.cuts().size(); cut++) {
      held |= task.room.onBars(cut);
    }
    return held;
  }

  private boolean fewParts() {
    int[] most = new int[task.problem.shapes().size()];
    for (Cut cut : task.forms.cuts()) {
      while (parts.size() <= cut.form()) {
        parts.add(task.table.parts(parts.size()));
      }
      most[cut.shape()] = Math.max(most[cut.shape()], parts.get(cut.form()).size());
    }
    return Arrays.stream(task.shapeOf).map(shape -> most[shape]).sum() <= MOST_PARTS;
  }

  /** Whether layouts of this problem are tightened at all. */
  boolean applies() {
    return simple;
  }

  /** The tightened layout; the one given where it is as tight already. */
  Places tighten(Places layout) {
    Places best = layout;
    for (int round = 0; simple && round < MOST_ROUNDS; round++) {
      Places next = once(best);
      if (next.length > best.length - GAIN * width || !isLayout(next)) {
        break;
      }
      best = next;
    }
    return best;
  }

  /**
   * One program. Its variables are, in strip widths, how far each copy moves along and across from
   * the least place it may take, and then the length.
   */
  private Places once(Places from) {
    int n = from.cut.length;
    double[] least = new double[2 * n];
    rows.clear();
    bounds.clear();
    for (int copy = 0; copy < n; copy++) {
      Cut cut = task.forms.cuts().get(from.cut[copy]);
      LaneRange lane = lane(cut, from.y[copy]);
      least[2 * copy] = Math.max(0, from.x[copy] - REACH * width);
      least[2 * copy + 1] = Math.max((double) lane.low(), from.y[copy] - REACH * width);
      double most = Math.min((double) lane.high(), from.y[copy] + REACH * width);
      double[] across = row(n);
      across[2 * copy + 1] = -1;
      add(across, least[2 * copy + 1] - most);
      double[] along = row(n);
      along[2 * copy] = -1;
      add(along, least[2 * copy] - from.x[copy] - REACH * width);
      double[] end = row(n);
      end[2 * copy] = -1;
      end[2 * n] = 1;
      add(end, least[2 * copy] + (double) cut.width());
    }
    for (int copy = 0; copy < n; copy++) {
      for (int other = copy + 1; other < n; other++) {
        keepApart(from, copy, other, least);
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

  private void keepApart(Places from, int copy, int other, double[] least) {
    double dx = from.x[other] - from.x[copy];
    double dy = from.y[other] - from.y[copy];
    for (ConvexPart a : partsOf(from.cut[copy])) {
      for (ConvexPart b : partsOf(from.cut[other])) {
        double[] ab = farthest(a, b, dx, dy);
        double[] ba = farthest(b, a, -dx, -dy);
        boolean first = ab[2] >= ba[2];
        double nx = first ? ab[0] : -ba[0];
        double ny = first ? ab[1] : -ba[1];
        double apart = first ? ab[2] : ba[2];
        if (apart > 2 * Math.sqrt(2) * REACH * width) {
          continue;
        }
        double[] row = row(from.cut.length);
        row[2 * other] = nx;
        row[2 * other + 1] = ny;
        row[2 * copy] = -nx;
        row[2 * copy + 1] = -ny;
        double now =
            nx * (from.x[other] - least[2 * other] - from.x[copy] + least[2 * copy])
                + ny * (from.y[other] - least[2 * other + 1] - from.y[copy] + least[2 * copy + 1]);
        add(row, now - Math.max(0, apart));
      }
    }
  }

  private List<ConvexPart> partsOf(int cut) {
    return parts.get(task.forms.cuts().get(cut).form());
  }

  /**
   * The edge of one part beyond which another lies farthest: the direction away from it, and how
   * far.
   */
  private static double[] farthest(ConvexPart a, ConvexPart b, double dx, double dy) {
    double[] best = {0, 0, Double.NEGATIVE_INFINITY};
    for (int e = 0; e < a.size(); e++) {
      int f = e + 1 == a.size() ? 0 : e + 1;
      double nx = (double) (a.y[f] - a.y[e]);
      double ny = (double) (a.x[e] - a.x[f]);
      double length = Math.sqrt(nx * nx + ny * ny);
      if (length == 0) {
        continue;
      }
      nx /= length;
      ny /= length;
      double apart = Double.POSITIVE_INFINITY;
      for (int c = 0; c < b.size(); c++) {
        double away =
            nx * ((double) (b.x[c] - a.x[e]) + dx) + ny * ((double) (b.y[c] - a.y[e]) + dy);
        apart = Math.min(apart, away);
      }
      if (apart > best[2]) {
        best = new double[] {nx, ny, apart};
      }
    }
    return best;
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
