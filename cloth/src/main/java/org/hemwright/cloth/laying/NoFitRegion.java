package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The no-fit region of two outlines: where the second one's corner must not be, seen from the first
 * one's, if their insides are to be disjoint. It is the inside of A ⊕ −B (Bennell and Oliveira
 * 2008), held as the convex sums of both outlines' parts, which cover it exactly, and as its
 * boundary: every stretch of a sum's edge that lies in no sum's inside. Slits, where the second
 * outline slides into the first with nothing to spare, are part of the boundary.
 *
 * <p>The sums' corners are exact; cuts between them are rounded to doubles, with an error far below
 * a grid step.
 */
final class NoFitRegion {

  /** Doubles kept of each boundary stretch: start x, start y, direction x, direction y, length. */
  static final int STRIDE = 5;

  /** How far inside a sum a point must be to be no boundary, in grid steps. */
  private static final double INSIDE = 0.05;

  /** Stretches shorter than this are dropped, in grid steps. */
  private static final double SHORT = 0.5;

  private final double[][] sumX;
  private final double[][] sumY;
  private final boolean[][] sumOuter;
  private final double[][] sumBox;

  /** The boundary, {@link #STRIDE} doubles a stretch; the region lies to the left of each. */
  final double[] boundary;

  NoFitRegion(List<ConvexPart> fixed, List<ConvexPart> moving) {
    int count = fixed.size() * moving.size();
    List<ConvexPart> sums = new ArrayList<>(count);
    for (ConvexPart b : moving) {
      ConvexPart reflected = b.reflected();
      for (ConvexPart a : fixed) {
        sums.add(a.plus(reflected));
      }
    }
    sumX = new double[count][];
    sumY = new double[count][];
    sumOuter = new boolean[count][];
    sumBox = new double[count][];
    for (int s = 0; s < count; s++) {
      sumX[s] = Arrays.stream(sums.get(s).x).asDoubleStream().toArray();
      sumY[s] = Arrays.stream(sums.get(s).y).asDoubleStream().toArray();
      sumOuter[s] = sums.get(s).outer;
      sumBox[s] =
          new double[] {
            Arrays.stream(sumX[s]).min().orElseThrow(),
            Arrays.stream(sumX[s]).max().orElseThrow(),
            Arrays.stream(sumY[s]).min().orElseThrow(),
            Arrays.stream(sumY[s]).max().orElseThrow()
          };
    }
    boundary = joined(boundaryStretches());
  }

  /** Whether a point lies inside the region by more than a given margin in some sum. */
  boolean contains(double px, double py, double margin) {
    for (int s = 0; s < sumX.length; s++) {
      double[] box = sumBox[s];
      if (px > box[0] && px < box[1] && py > box[2] && py < box[3] && inSum(s, px, py, margin)) {
        return true;
      }
    }
    return false;
  }

  private boolean inSum(int s, double px, double py, double margin) {
    double[] x = sumX[s];
    double[] y = sumY[s];
    for (int i = 0, k = x.length - 1; i < x.length; k = i++) {
      double dx = x[i] - x[k];
      double dy = y[i] - y[k];
      double cross = dx * (py - y[k]) - dy * (px - x[k]);
      if (cross <= 0 || cross * cross <= margin * margin * (dx * dx + dy * dy)) {
        return false;
      }
    }
    return true;
  }

  private double[] boundaryStretches() {
    double[] found = new double[64 * STRIDE];
    int n = 0;
    double[] from = new double[sumX.length + 1];
    double[] to = new double[sumX.length + 1];
    for (int s = 0; s < sumX.length; s++) {
      double[] x = sumX[s];
      double[] y = sumY[s];
      for (int i = 0; i < x.length; i++) {
        if (!sumOuter[s][i]) {
          continue;
        }
        int k = i + 1 == x.length ? 0 : i + 1;
        double dx = x[k] - x[i];
        double dy = y[k] - y[i];
        double length = Math.sqrt(dx * dx + dy * dy);
        if (length == 0) {
          continue;
        }
        int pieces = uncovered(s, x[i], y[i], dx / length, dy / length, length, from, to);
        for (int p = 0; p < pieces; p++) {
          if (to[p] - from[p] < SHORT) {
            continue;
          }
          if ((n + 1) * STRIDE > found.length) {
            found = Arrays.copyOf(found, 2 * found.length);
          }
          found[n * STRIDE] = x[i] + dx / length * from[p];
          found[n * STRIDE + 1] = y[i] + dy / length * from[p];
          found[n * STRIDE + 2] = dx / length;
          found[n * STRIDE + 3] = dy / length;
          found[n * STRIDE + 4] = to[p] - from[p];
          n++;
        }
      }
    }
    return Arrays.copyOf(found, n * STRIDE);
  }

  /**
   * Takes from a segment what lies inside the other sums; leaves the rest in from and to, and
   * returns how many stretches.
   */
  private int uncovered(
      int own,
      double ax,
      double ay,
      double ux,
      double uy,
      double length,
      double[] from,
      double[] to) {
    int pieces = 1;
    from[0] = 0;
    to[0] = length;
    double bx = ax + ux * length;
    double by = ay + uy * length;
    for (int s = 0; s < sumX.length && pieces > 0; s++) {
      double[] box = sumBox[s];
      if (s == own
          || Math.max(ax, bx) <= box[0]
          || Math.min(ax, bx) >= box[1]
          || Math.max(ay, by) <= box[2]
          || Math.min(ay, by) >= box[3]) {
        continue;
      }
      double enter = 0;
      double leave = length;
      double[] x = sumX[s];
      double[] y = sumY[s];
      for (int i = 0, k = x.length - 1; i < x.length && enter < leave; k = i++) {
        double dx = x[i] - x[k];
        double dy = y[i] - y[k];
        double norm = Math.sqrt(dx * dx + dy * dy);
        double depth = (dx * (ay - y[k]) - dy * (ax - x[k])) / norm;
        double slope = (dx * uy - dy * ux) / norm;
        if (depth + slope * enter <= 0 && depth + slope * leave <= 0) {
          leave = enter;
        } else if (slope > 0) {
          enter = Math.max(enter, -depth / slope);
        } else if (slope < 0) {
          leave = Math.min(leave, -depth / slope);
        }
      }
      double middle = (enter + leave) / 2;
      if (enter < leave && inSum(s, ax + ux * middle, ay + uy * middle, INSIDE)) {
        pieces = without(enter, leave, from, to, pieces);
      }
    }
    return pieces;
  }

  private static int without(double enter, double leave, double[] from, double[] to, int pieces) {
    for (int p = pieces - 1; p >= 0; p--) {
      if (leave <= from[p] || enter >= to[p]) {
        continue;
      }
      boolean before = enter > from[p];
      boolean after = leave < to[p];
      if (before && after) {
        from[pieces] = leave;
        to[pieces] = to[p];
        to[p] = enter;
        pieces++;
      } else if (before) {
        to[p] = enter;
      } else if (after) {
        from[p] = leave;
      } else {
        pieces--;
        from[p] = from[pieces];
        to[p] = to[pieces];
      }
    }
    return pieces;
  }

  /** Joins stretches that lie on one line, run the same way and meet or overlap. */
  private static double[] joined(double[] s) {
    int n = s.length / STRIDE;
    boolean[] gone = new boolean[n];
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < n; i++) {
        for (int k = 0; k < n && !gone[i]; k++) {
          if (k != i && !gone[k] && takesIn(s, i * STRIDE, k * STRIDE)) {
            gone[k] = true;
            changed = true;
          }
        }
      }
    }
    double[] kept = new double[s.length];
    int count = 0;
    for (int i = 0; i < n; i++) {
      if (!gone[i]) {
        System.arraycopy(s, i * STRIDE, kept, count * STRIDE, STRIDE);
        count++;
      }
    }
    return Arrays.copyOf(kept, count * STRIDE);
  }

  private static boolean takesIn(double[] s, int i, int k) {
    double ux = s[i + 2];
    double uy = s[i + 3];
    if (ux * s[k + 2] + uy * s[k + 3] <= 0) {
      return false;
    }
    double rx = s[k] - s[i];
    double ry = s[k + 1] - s[i + 1];
    double ex = rx + s[k + 2] * s[k + 4];
    double ey = ry + s[k + 3] * s[k + 4];
    if (Math.abs(ux * ry - uy * rx) > INSIDE || Math.abs(ux * ey - uy * ex) > INSIDE) {
      return false;
    }
    double start = ux * rx + uy * ry;
    double end = ux * ex + uy * ey;
    if (start > s[i + 4] + SHORT || end < -SHORT) {
      return false;
    }
    if (start < 0) {
      s[i] += ux * start;
      s[i + 1] += uy * start;
      s[i + 4] -= start;
      end -= start;
    }
    s[i + 4] = Math.max(s[i + 4], end);
    return true;
  }
}
