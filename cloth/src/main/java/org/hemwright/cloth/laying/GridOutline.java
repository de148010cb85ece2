package org.hemwright.cloth.laying;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
    return counterClockwise(Arrays.copyOf(xs, n), Arrays.copyOf(ys, n));
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

  /**
   * The same polygon with its lower left corner at the origin, without corners that lie in line
   * with their neighbours, and beginning at its lowest corner: two outlines that differ only in
   * their place become equal.
   */
  GridOutline standing() {
    int n = x.length;
    long[] xs = new long[n];
    long[] ys = new long[n];
    int count = 0;
    int first = 0;
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      int after = (i + 1) % n;
      if (side(x[before], y[before], x[i], y[i], x[after], y[after]) != 0) {
        xs[count] = x[i] - minX();
        ys[count] = y[i] - minY();
        if (ys[count] < ys[first] || (ys[count] == ys[first] && xs[count] < xs[first])) {
          first = count;
        }
        count++;
      }
    }
    long[] rx = new long[count];
    long[] ry = new long[count];
    for (int i = 0; i < count; i++) {
      rx[i] = xs[(first + i) % count];
      ry[i] = ys[(first + i) % count];
    }
    return new GridOutline(rx, ry);
  }

  /** This outline turned half round, standing. */
  GridOutline halfTurned() {
    return reflected().standing();
  }

  /** The set of −p, counter-clockwise. */
  GridOutline reflected() {
    long[] rx = new long[x.length];
    long[] ry = new long[y.length];
    for (int i = 0; i < x.length; i++) {
      rx[i] = -x[i];
      ry[i] = -y[i];
    }
    return new GridOutline(rx, ry);
  }

  /**
   * Whether a corner is convex and a direction lies between those of the edges before and after it,
   * or is one of theirs; exact.
   */
  boolean turnsThrough(int corner, long dx, long dy) {
    int before = corner == 0 ? x.length - 1 : corner - 1;
    int after = corner + 1 == x.length ? 0 : corner + 1;
    long inX = x[corner] - x[before];
    long inY = y[corner] - y[before];
    long outX = x[after] - x[corner];
    long outY = y[after] - y[corner];
    return compareProducts(inX, outY, inY, outX) > 0
        && compareProducts(inX, dy, inY, dx) >= 0
        && compareProducts(dx, outY, dy, outX) >= 0;
  }

  /** Whether another has the same corners in the same order. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof GridOutline outline
        && Arrays.equals(x, outline.x)
        && Arrays.equals(y, outline.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }

  /** The area, in steps squared; rounded. */
  double area() {
    double twice = 0;
    for (int i = 1; i + 1 < x.length; i++) {
      twice +=
          (double) (x[i] - x[0]) * (double) (y[i + 1] - y[0])
              - (double) (x[i + 1] - x[0]) * (double) (y[i] - y[0]);
    }
    return twice / 2;
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
