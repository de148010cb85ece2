package org.hemwright.cloth.laying;

import java.util.Arrays;
import java.util.List;

/**
 * The no-fit region of two outlines: where the second one's corner must not be, seen from the first
 * one's, if their insides are to be disjoint. It is the inside of A ⊕ −B (Bennell and Oliveira
 * 2008), held as the convex sums of both outlines' parts, which cover it exactly, and as its
 * boundary. Slits, where the second outline slides into the first with nothing to spare, are part
 * of the boundary.
 *
 * <p>The boundary is made of edges of one outline carried to those convex corners of the other
 * between whose own edges their direction lies (the reduced convolution; Behar and Lien 2011), less
 * what lies in some sum's inside.
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

  /** Doubles kept of each edge of a sum: a point on it and its direction, of length 1. */
  private static final int EDGE = 4;

  private final double[][] sums;

  /** Least x, greatest x, least y and greatest y of each sum. */
  private final double[] boxes;

  /** The boundary, {@link #STRIDE} doubles a stretch; the region lies to the left of each. */
  final double[] boundary;

  private double[] found = new double[64 * STRIDE];
  private int count;

  /** The stretches of a segment that no sum has covered so far. */
  private final double[] from;

  private final double[] to;

  /**
   * The region of two outlines.
   *
   * @param fixedParts convex parts that cover the fixed outline
   * @param movingParts likewise of the moving one
   */
  NoFitRegion(
      GridOutline fixed,
      List<ConvexPart> fixedParts,
      GridOutline moving,
      List<ConvexPart> movingParts) {
    int n = fixedParts.size() * movingParts.size();
    sums = new double[n][];
    boxes = new double[4 * n];
    int sum = 0;
    for (ConvexPart b : movingParts) {
      ConvexPart reflected = b.reflected();
      for (ConvexPart a : fixedParts) {
        keep(sum++, a.plus(reflected));
      }
    }
    from = new double[n + 1];
    to = new double[n + 1];
    GridOutline reflected = moving.reflected();
    addEdges(fixed, reflected);
    addEdges(reflected, fixed);
    boundary = joined(Arrays.copyOf(found, count * STRIDE));
  }

  private void keep(int sum, ConvexPart part) {
    int n = part.size();
    double[] edges = new double[n * EDGE];
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      int k = i + 1 == n ? 0 : i + 1;
      double x = (double) part.x[i];
      double y = (double) part.y[i];
      double dx = (double) (part.x[k] - part.x[i]);
      double dy = (double) (part.y[k] - part.y[i]);
      double length = Math.sqrt(dx * dx + dy * dy);
      edges[i * EDGE] = x;
      edges[i * EDGE + 1] = y;
      edges[i * EDGE + 2] = length == 0 ? 0 : dx / length;
      edges[i * EDGE + 3] = length == 0 ? 0 : dy / length;
      minX = Math.min(minX, x);
      maxX = Math.max(maxX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }
    sums[sum] = edges;
    boxes[4 * sum] = minX;
    boxes[4 * sum + 1] = maxX;
    boxes[4 * sum + 2] = minY;
    boxes[4 * sum + 3] = maxY;
  }

  /** Whether a point lies inside the region by more than a given margin in some sum. */
  boolean contains(double px, double py, double margin) {
    for (int s = 0, box = 0; s < sums.length; s++, box += 4) {
      if (px > boxes[box]
          && px < boxes[box + 1]
          && py > boxes[box + 2]
          && py < boxes[box + 3]
          && inSum(s, px, py, margin)) {
        return true;
      }
    }
    return false;
  }

  private boolean inSum(int s, double px, double py, double margin) {
    double[] edges = sums[s];
    for (int e = 0; e < edges.length; e += EDGE) {
      double depth = edges[e + 2] * (py - edges[e + 1]) - edges[e + 3] * (px - edges[e]);
      if (depth <= margin && (edges[e + 2] != 0 || edges[e + 3] != 0)) {
        return false;
      }
    }
    return true;
  }

  /** Carries the edges of one outline to the other's corners, and keeps what is boundary. */
  private void addEdges(GridOutline edges, GridOutline corners) {
    int n = edges.size();
    int m = corners.size();
    for (int i = 0; i < n; i++) {
      int k = i + 1 == n ? 0 : i + 1;
      long ex = edges.x[k] - edges.x[i];
      long ey = edges.y[k] - edges.y[i];
      for (int c = 0; c < m; c++) {
        if (corners.turnsThrough(c, ex, ey)) {
          addUncovered(edges.x[i] + corners.x[c], edges.y[i] + corners.y[c], ex, ey);
        }
      }
    }
  }

  private void addUncovered(long startX, long startY, long ex, long ey) {
    double ax = (double) startX;
    double ay = (double) startY;
    double dx = (double) ex;
    double dy = (double) ey;
    double length = Math.sqrt(dx * dx + dy * dy);
    double ux = dx / length;
    double uy = dy / length;
    int pieces = uncovered(ax, ay, ux, uy, length);
    for (int p = 0; p < pieces; p++) {
      if (to[p] - from[p] < SHORT) {
        continue;
      }
      if ((count + 1) * STRIDE > found.length) {
        found = Arrays.copyOf(found, 2 * found.length);
      }
      int at = count * STRIDE;
      found[at] = ax + ux * from[p];
      found[at + 1] = ay + uy * from[p];
      found[at + 2] = ux;
      found[at + 3] = uy;
      found[at + 4] = to[p] - from[p];
      count++;
    }
  }

  /**
   * Takes from a segment what lies inside the sums; leaves the rest in from and to, and returns how
   * many stretches.
   */
  private int uncovered(double ax, double ay, double ux, double uy, double length) {
    int pieces = 1;
    from[0] = 0;
    to[0] = length;
    double bx = ax + ux * length;
    double by = ay + uy * length;
    double minX = Math.min(ax, bx);
    double maxX = Math.max(ax, bx);
    double minY = Math.min(ay, by);
    double maxY = Math.max(ay, by);
    for (int s = 0, box = 0; s < sums.length && pieces > 0; s++, box += 4) {
      if (maxX <= boxes[box]
          || minX >= boxes[box + 1]
          || maxY <= boxes[box + 2]
          || minY >= boxes[box + 3]) {
        continue;
      }
      double enter = 0;
      double leave = length;
      double[] edges = sums[s];
      for (int e = 0; e < edges.length && enter < leave; e += EDGE) {
        double depth = edges[e + 2] * (ay - edges[e + 1]) - edges[e + 3] * (ax - edges[e]);
        double slope = edges[e + 2] * uy - edges[e + 3] * ux;
        if (depth + slope * enter <= 0 && depth + slope * leave <= 0) {
          leave = enter;
        } else if (slope > 0) {
          enter = Math.max(enter, -depth / slope);
        } else if (slope < 0) {
          leave = Math.min(leave, -depth / slope);
        }
      }
      if (enter < leave) {
        double middle = (enter + leave) / 2;
        if (inSum(s, ax + ux * middle, ay + uy * middle, INSIDE)) {
          pieces = without(enter, leave, pieces);
        }
      }
    }
    return pieces;
  }

  private int without(double enter, double leave, int pieces) {
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
