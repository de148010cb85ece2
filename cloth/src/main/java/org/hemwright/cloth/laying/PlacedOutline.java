package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * One placed shape as {@link LayoutChecker} sees it: a closed outline with its corners on a grid of
 * strip width / 2<sup>30</sup>, and the questions that are asked of it.
 */
final class PlacedOutline {

  private static final long FAR = 1L << 50;

  final Placement placement;
  final long[] x;
  final long[] y;
  final long minX;
  final long maxX;
  final long minY;
  final long maxY;

  private PlacedOutline(Placement placement, long[] x, long[] y) {
    this.placement = placement;
    this.x = x;
    this.y = y;
    this.minX = Arrays.stream(x).min().orElseThrow();
    this.maxX = Arrays.stream(x).max().orElseThrow();
    this.minY = Arrays.stream(y).min().orElseThrow();
    this.maxY = Arrays.stream(y).max().orElseThrow();
  }

  /** Turns, moves and rounds a shape; {@code unit} is the grid's step. */
  static PlacedOutline of(LooseShape shape, Placement placement, double unit) {
    Turn turn = placement.turn();
    double quarters = turn.degrees() / 90;
    boolean quarter = quarters == Math.rint(quarters);
    double angle = StrictMath.toRadians(turn.degrees());
    double cos = quarter ? new int[] {1, 0, -1, 0}[(int) quarters] : StrictMath.cos(angle);
    double sin = quarter ? new int[] {0, 1, 0, -1}[(int) quarters] : StrictMath.sin(angle);
    long[] xs = new long[shape.outline().size()];
    long[] ys = new long[xs.length];
    for (int i = 0; i < xs.length; i++) {
      double px = shape.outline().get(i).x();
      double py = turn.mirrored() ? -shape.outline().get(i).y() : shape.outline().get(i).y();
      xs[i] = Math.round((px * cos - py * sin + placement.x()) / unit);
      ys[i] = Math.round((px * sin + py * cos + placement.y()) / unit);
    }
    return new PlacedOutline(placement, xs, ys);
  }

  /** Whether it lies so far off that distances to it could not be taken exactly. */
  boolean farAway() {
    return minX < -FAR || minY < -FAR || maxX > FAR || maxY > FAR;
  }

  int size() {
    return x.length;
  }

  int next(int corner) {
    return corner + 1 == x.length ? 0 : corner + 1;
  }

  /** Whether a point lies inside or on the outline; exact. */
  boolean contains(long px, long py) {
    if (isFarFrom(px, py, 0)) {
      return false;
    }
    boolean inside = false;
    for (int i = 0, k = x.length - 1; i < x.length; k = i++) {
      if ((y[i] < py && y[k] < py) || (y[i] > py && y[k] > py) || (x[i] < px && x[k] < px)) {
        continue; // neither on the edge, nor has it a ray from the point to the right to cross
      }
      int side = side(x[k], y[k], x[i], y[i], px, py);
      if (side == 0
          && px >= Math.min(x[i], x[k])
          && px <= Math.max(x[i], x[k])
          && py >= Math.min(y[i], y[k])
          && py <= Math.max(y[i], y[k])) {
        return true;
      }
      if ((y[k] <= py) != (y[i] <= py) && (side > 0) == (y[i] > y[k])) {
        inside = !inside;
      }
    }
    return inside;
  }

  /**
   * The shares along a segment, from 0 to 1, where it meets the outline, sorted, with 0 and 1
   * themselves.
   */
  double[] crossings(long ax, long ay, long bx, long by) {
    double[] shares = new double[2 + 2 * x.length];
    int n = 0;
    shares[n++] = 0;
    shares[n++] = 1;
    for (int i = 0; i < x.length; i++) {
      int k = next(i);
      if (Math.max(x[i], x[k]) < Math.min(ax, bx)
          || Math.min(x[i], x[k]) > Math.max(ax, bx)
          || Math.max(y[i], y[k]) < Math.min(ay, by)
          || Math.min(y[i], y[k]) > Math.max(ay, by)) {
        continue;
      }
      int from = side(ax, ay, bx, by, x[i], y[i]);
      int to = side(ax, ay, bx, by, x[k], y[k]);
      if (from == 0) {
        shares[n++] = share(ax, ay, bx, by, x[i], y[i]);
      }
      if (from * to < 0
          && side(x[i], y[i], x[k], y[k], ax, ay) * side(x[i], y[i], x[k], y[k], bx, by) <= 0) {
        double dx = x[k] - x[i];
        double dy = y[k] - y[i];
        double start = dx * (double) (ay - y[i]) - dy * (double) (ax - x[i]);
        double end = dx * (double) (by - y[i]) - dy * (double) (bx - x[i]);
        shares[n++] = Math.max(0, Math.min(1, start / (start - end)));
      }
    }
    double[] sorted = Arrays.copyOf(shares, n);
    Arrays.sort(sorted);
    return sorted;
  }

  private static double share(long ax, long ay, long bx, long by, long px, long py) {
    double dx = bx - ax;
    double dy = by - ay;
    double square = dx * dx + dy * dy;
    double share = square == 0 ? 0 : ((px - ax) * dx + (py - ay) * dy) / square;
    return Math.max(0, Math.min(1, share));
  }

  /** Where a line across the strip's frame, y constant, enters and leaves the shape, sorted. */
  long[] crossingsOfLevel(long level) {
    long[] found = new long[x.length];
    int n = 0;
    for (int i = 0, k = x.length - 1; i < x.length; k = i++) {
      if ((y[k] <= level) != (y[i] <= level)) {
        double share = (double) (level - y[k]) / (y[i] - y[k]);
        found[n++] = x[k] + Math.round((x[i] - x[k]) * share);
      }
    }
    long[] sorted = Arrays.copyOf(found, n);
    Arrays.sort(sorted);
    return sorted;
  }

  /** The distance from a point to the outline, in steps. */
  double distance(long px, long py) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      least = Math.min(least, distanceToEdge(i, px, py));
    }
    return least;
  }

  /** Whether a single edge has both ends of a stretch, and so all of it, within a distance. */
  boolean oneEdgeIsNear(long ax, long ay, long bx, long by, double within) {
    double left = Math.min(ax, bx) + within;
    double right = Math.max(ax, bx) - within;
    double low = Math.min(ay, by) + within;
    double high = Math.max(ay, by) - within;
    for (int i = 0; i < x.length; i++) {
      int k = next(i);
      if (left >= Math.min(x[i], x[k])
          && right <= Math.max(x[i], x[k])
          && low >= Math.min(y[i], y[k])
          && high <= Math.max(y[i], y[k])
          && distanceToEdge(i, ax, ay) <= within
          && distanceToEdge(i, bx, by) <= within) {
        return true;
      }
    }
    return false;
  }

  /** Whether a point lies outside of the box of this outline by more than a distance, in steps. */
  boolean isFarFrom(long px, long py, double distance) {
    return px < minX - distance
        || px > maxX + distance
        || py < minY - distance
        || py > maxY + distance;
  }

  /** Whether a segment lies wholly beside the box of this outline, or touches it. */
  boolean isBeside(long ax, long ay, long bx, long by) {
    return Math.max(ax, bx) <= minX
        || Math.min(ax, bx) >= maxX
        || Math.max(ay, by) <= minY
        || Math.min(ay, by) >= maxY;
  }

  private double distanceToEdge(int i, long px, long py) {
    int k = next(i);
    double dx = x[k] - x[i];
    double dy = y[k] - y[i];
    double rx = px - x[i];
    double ry = py - y[i];
    double square = dx * dx + dy * dy;
    double dot = rx * dx + ry * dy;
    if (dot <= 0 || square == 0) {
      return Math.sqrt(rx * rx + ry * ry);
    }
    if (dot >= square) {
      double ex = px - x[k];
      double ey = py - y[k];
      return Math.sqrt(ex * ex + ey * ey);
    }
    return Math.abs(dx * ry - dy * rx) / Math.sqrt(square);
  }

  /** On which side of the line from a to b the point p lies: 1 left, −1 right, 0 on it; exact. */
  private static int side(long ax, long ay, long bx, long by, long px, long py) {
    long u = bx - ax;
    long v = py - ay;
    long s = by - ay;
    long t = px - ax;
    long leftHigh = Math.multiplyHigh(u, v);
    long rightHigh = Math.multiplyHigh(s, t);
    return leftHigh != rightHigh
        ? Long.compare(leftHigh, rightHigh)
        : Long.compareUnsigned(u * v, s * t);
  }
}
