package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * Copies laid on the strip without overlap, and where another may be laid so that it touches them:
 * corners and crossings of no-fit boundaries and of the strip's edges.
 */
final class CuttingTable {

  private static final int S = NoFitRegion.STRIDE;

  /** Crossing so many pairs of stretches counts as one place looked at. */
  private static final int CROSSINGS_PER_PLACE = 8;

  private final LayTask task;
  private final double[][][] touching;
  private final int[] cut;
  private final double[] x;
  private final double[] y;
  private int laid;

  /** Stretches that the copy to be laid may touch, and which laid copy each belongs to. */
  private double[] edges = new double[64 * S];

  private int[] owner = new int[64];
  private int edgeCount;

  private double[] foundX = new double[64];
  private double[] foundY = new double[64];
  private int found;
  private long crossings;
  private long tested;

  CuttingTable(LayTask task) {
    this.task = task;
    touching = new double[task.forms.count()][task.forms.count()][];
    cut = new int[task.shapeOf.length];
    x = new double[task.shapeOf.length];
    y = new double[task.shapeOf.length];
  }

  /** How many places were looked at. */
  long work() {
    return tested + crossings / CROSSINGS_PER_PLACE;
  }

  void clear() {
    laid = 0;
  }

  void lay(int newCut, double px, double py) {
    cut[laid] = newCut;
    x[laid] = px;
    y[laid] = py;
    laid++;
  }

  private double[] touching(int moving, int fixed) {
    double[] stretches = touching[moving][fixed];
    if (stretches == null) {
      stretches = task.table.touching(moving, fixed);
      touching[moving][fixed] = stretches;
    }
    return stretches;
  }

  /** Whether a cut overlaps nothing at a place. */
  boolean clear(int moved, double px, double py) {
    tested++;
    Cut m = task.forms.cuts().get(moved);
    DepthTable depths = task.table.depths;
    for (int i = 0; i < laid; i++) {
      int pair = depths.pair(m.form(), task.forms.cuts().get(cut[i]).form());
      if (depths.depth(pair, px - x[i], py - y[i]) > 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * The places where a cut touches what is laid, or the strip's near edges, and overlaps nothing:
   * from the left, then from below, as many as are wanted.
   *
   * @param farthest places beyond this x are left out
   * @return x and y of each in turn
   */
  double[] places(int moved, double farthest, int wanted) {
    found = 0;
    for (LaneRange lane : task.forms.cuts().get(moved).lanes()) {
      double low = (double) lane.low();
      double high = (double) lane.high();
      gather(moved, low, high, farthest);
      if (task.room.onBars(moved)) {
        addOnBars(moved, low, high, farthest);
        continue;
      }
      add(0, low, low, high, farthest);
      add(0, high, low, high, farthest);
      for (int e = 0; e < edgeCount; e++) {
        addEdge(e * S, low, high, farthest);
        for (int other = e + 1; other < edgeCount; other++) {
          if (owner[e] != owner[other]) {
            addCrossing(e * S, other * S, low, high, farthest);
          }
        }
      }
    }
    return leftmost(moved, wanted);
  }

  private void gather(int moved, double low, double high, double farthest) {
    edgeCount = 0;
    Cut own = task.forms.cuts().get(moved);
    double width = (double) own.width();
    double height = (double) own.height();
    for (int i = 0; i < laid; i++) {
      Cut other = task.forms.cuts().get(cut[i]);
      if (x[i] - width > farthest + 1
          || x[i] + (double) other.width() < -1
          || y[i] - height > high + 1
          || y[i] + (double) other.height() < low - 1) {
        continue;
      }
      double[] stretches = touching(own.form(), other.form());
      for (int s = 0; s < stretches.length; s += S) {
        double ax = stretches[s] + x[i];
        double ay = stretches[s + 1] + y[i];
        double bx = ax + stretches[s + 2] * stretches[s + 4];
        double by = ay + stretches[s + 3] * stretches[s + 4];
        if (Math.max(ax, bx) < -1
            || Math.min(ax, bx) > farthest + 1
            || Math.max(ay, by) < low - 1
            || Math.min(ay, by) > high + 1) {
          continue;
        }
        if (edgeCount == owner.length) {
          owner = Arrays.copyOf(owner, 2 * edgeCount);
          edges = Arrays.copyOf(edges, 2 * edgeCount * S);
        }
        owner[edgeCount] = i;
        int at = edgeCount * S;
        edges[at] = ax;
        edges[at + 1] = ay;
        edges[at + 2] = bx;
        edges[at + 3] = by;
        edgeCount++;
      }
    }
  }

  /** On each bar the lane's edges, and where it crosses what may be touched. */
  private void addOnBars(int moved, double low, double high, double farthest) {
    double step = task.room.repeat(moved);
    for (double bar = task.room.nextX(moved, 0);
        bar <= farthest;
        bar = task.room.nextX(moved, bar + step / 2)) {
      add(bar, low, low, high, farthest);
      add(bar, high, low, high, farthest);
      for (int e = 0; e < edgeCount * S; e += S) {
        double along = edges[e + 2] - edges[e];
        double share = (bar - edges[e]) / along;
        if (along == 0 ? Math.abs(bar - edges[e]) < 1 : share >= 0 && share <= 1) {
          double reached = along == 0 ? 0 : share;
          add(bar, edges[e + 1] + reached * (edges[e + 3] - edges[e + 1]), low, high, farthest);
          add(bar, edges[e + 3], low, high, along == 0 ? farthest : -1);
        }
      }
    }
  }

  private void addEdge(int e, double low, double high, double farthest) {
    double ax = edges[e];
    double ay = edges[e + 1];
    double dx = edges[e + 2] - ax;
    double dy = edges[e + 3] - ay;
    add(ax, ay, low, high, farthest);
    add(ax + dx, ay + dy, low, high, farthest);
    if (dx != 0) {
      double share = -ax / dx;
      if (share > 0 && share < 1) {
        add(0, ay + share * dy, low, high, farthest);
      }
    }
    if (dy != 0) {
      double atLow = (low - ay) / dy;
      if (atLow > 0 && atLow < 1) {
        add(ax + atLow * dx, low, low, high, farthest);
      }
      double atHigh = (high - ay) / dy;
      if (atHigh > 0 && atHigh < 1) {
        add(ax + atHigh * dx, high, low, high, farthest);
      }
    }
  }

  private void addCrossing(int e, int f, double low, double high, double farthest) {
    crossings++;
    double ax = edges[e];
    double ay = edges[e + 1];
    double bx = edges[e + 2];
    double by = edges[e + 3];
    double cx = edges[f];
    double cy = edges[f + 1];
    double dx = edges[f + 2];
    double dy = edges[f + 3];
    if (Math.max(ax, bx) < Math.min(cx, dx)
        || Math.max(cx, dx) < Math.min(ax, bx)
        || Math.max(ay, by) < Math.min(cy, dy)
        || Math.max(cy, dy) < Math.min(ay, by)) {
      return;
    }
    double ux = bx - ax;
    double uy = by - ay;
    double vx = dx - cx;
    double vy = dy - cy;
    double cross = ux * vy - uy * vx;
    if (cross == 0) {
      return;
    }
    double t = ((cx - ax) * vy - (cy - ay) * vx) / cross;
    double s = ((cx - ax) * uy - (cy - ay) * ux) / cross;
    if (t >= 0 && t <= 1 && s >= 0 && s <= 1) {
      add(ax + t * ux, ay + t * uy, low, high, farthest);
    }
  }

  private void add(double px, double py, double low, double high, double farthest) {
    double rx = Math.rint(px);
    double ry = Math.rint(py);
    if (rx < 0 || rx > farthest || ry < low || ry > high) {
      return;
    }
    if (found == foundX.length) {
      foundX = Arrays.copyOf(foundX, 2 * found);
      foundY = Arrays.copyOf(foundY, 2 * found);
    }
    foundX[found] = rx;
    foundY[found] = ry;
    found++;
  }

  private double[] leftmost(int moved, int wanted) {
    Integer[] order = new Integer[found];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) ->
            foundX[a] != foundX[b]
                ? Double.compare(foundX[a], foundX[b])
                : Double.compare(foundY[a], foundY[b]));
    double[] places = new double[2 * wanted];
    int taken = 0;
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (int i = 0; i < found && taken < wanted; i++) {
      double px = foundX[order[i]];
      double py = foundY[order[i]];
      if (px == lastX && py == lastY) {
        continue;
      }
      lastX = px;
      lastY = py;
      if (clear(moved, px, py)) {
        places[2 * taken] = px;
        places[2 * taken + 1] = py;
        taken++;
      }
    }
    return Arrays.copyOf(places, 2 * taken);
  }

  /**
   * The least x at which a cut, kept at its place across the strip, overlaps nothing; at most the x
   * that it has.
   */
  double farthestLeft(int moved, double px, double py) {
    if (task.room.onBars(moved)) {
      return barFarthestLeft(moved, px, py);
    }
    found = 0;
    gather(moved, py, py, px);
    add(0, py, py, py, px);
    for (int e = 0; e < edgeCount * S; e += S) {
      double ay = edges[e + 1];
      double by = edges[e + 3];
      if (ay == by) {
        add(edges[e], py, py, py, px);
        add(edges[e + 2], py, py, py, px);
      } else {
        double share = (py - ay) / (by - ay);
        if (share >= 0 && share <= 1) {
          add(Math.ceil(edges[e] + share * (edges[e + 2] - edges[e])), py, py, py, px);
        }
      }
    }
    double[] first = leftmost(moved, 1);
    return first.length > 0 ? Math.min(px, first[0]) : px;
  }

  private double barFarthestLeft(int moved, double px, double py) {
    double step = task.room.repeat(moved);
    double reached = px;
    for (double next = px - step; next > -step / 2; next -= step) {
      double bar = task.room.nextX(moved, next - step / 2);
      if (bar >= reached || !clear(moved, bar, py)) {
        break;
      }
      reached = bar;
    }
    return reached;
  }
}
