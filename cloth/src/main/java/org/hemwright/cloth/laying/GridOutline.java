package org.hemwright.cloth.laying;

import java.util.List;

/**
 * A simple polygon on the {@link StripGrid}, counter-clockwise, without two equal neighbouring
 * corners. All tests are exact: differences of coordinates stay below 2<sup>62</sup> and products
 * are taken in 128 bits.
 */
final class GridOutline {

  final long[] x;
  final long[] y;

  private GridOutline(long[] x, long[] y) {
    this.x = x;
    this.y = y;
  }

  /** The outline of a shape in one of its turns; it may fail to be simple. */
  static GridOutline of(List<Spot> outline, Turn turn, StripGrid grid) {
    long[] xs = new long[outline.size()];
    long[] ys = new long[outline.size()];
    int n = 0;
    for (Spot corner : outline) {
      Spot turned = turn.apply(corner);
      long gx = grid.toGrid(turned.x());
      long gy = grid.toGrid(turned.y());
      if (n == 0 || gx != xs[n - 1] || gy != ys[n - 1]) {
        xs[n] = gx;
        ys[n] = gy;
        n++;
      }
    }
    while (n > 1 && xs[0] == xs[n - 1] && ys[0] == ys[n - 1]) {
      n--;
    }
    return counterClockwise(java.util.Arrays.copyOf(xs, n), java.util.Arrays.copyOf(ys, n));
  }

  private static GridOutline counterClockwise(long[] x, long[] y) {
    int n = x.length;
    int lowest = 0;
    for (int i = 1; i < n; i++) {
      if (y[i] < y[lowest] || (y[i] == y[lowest] && x[i] < x[lowest])) {
        lowest = i;
      }
    }
    int before = (lowest + n - 1) % n;
    int after = (lowest + 1) % n;
    if (side(x[before], y[before], x[lowest], y[lowest], x[after], y[after]) < 0) {
      for (int i = 0, k = n - 1; i < k; i++, k--) {
        long swap = x[i];
        x[i] = x[k];
        x[k] = swap;
        swap = y[i];
        y[i] = y[k];
        y[k] = swap;
      }
    }
    return new GridOutline(x, y);
  }

  int size() {
    return x.length;
  }

  long minX() {
    return min(x);
  }

  long maxX() {
    return max(x);
  }

  long minY() {
    return min(y);
  }

  long maxY() {
    return max(y);
  }

  private static long min(long[] values) {
    long least = Long.MAX_VALUE;
    for (long value : values) {
      least = Math.min(least, value);
    }
    return least;
  }

  private static long max(long[] values) {
    long most = Long.MIN_VALUE;
    for (long value : values) {
      most = Math.max(most, value);
    }
    return most;
  }

  /** On which side of the line from a to b the point c lies: 1 left, −1 right, 0 on it. */
  static int side(long ax, long ay, long bx, long by, long cx, long cy) {
    return compareProducts(bx - ax, cy - ay, by - ay, cx - ax);
  }

  /** The sign of a·b − c·d, exact. */
  static int compareProducts(long a, long b, long c, long d) {
    long high = Math.multiplyHigh(a, b);
    long otherHigh = Math.multiplyHigh(c, d);
    return high != otherHigh ? Long.compare(high, otherHigh) : Long.compareUnsigned(a * b, c * d);
  }
}
