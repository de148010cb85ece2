package org.hemwright.geometry;

import java.util.Arrays;

/**
 * Polynomials on 0 to 1, given by their Bernstein coefficients: products, and where one is nothing.
 *
 * <p>A polynomial has no more roots than its coefficients change sign (the variation diminishing
 * property, de Casteljau 1959, Lane and Riesenfeld 1981): halve until there is one change, then
 * close in on it; no change means no root.
 */
final class Bernstein {
  private static final int MOST_STEPS = 100;

  private final double[] roots;
  private int count;

  private Bernstein(int degree) {
    roots = new double[4 * degree];
  }

  /** All roots, rising; a double root may be given once or twice, side by side. */
  static double[] roots(double[] coefficients) {
    int degree = coefficients.length - 1;
    Bernstein found = new Bernstein(degree);
    if (coefficients[0] == 0) {
      found.add(0);
    }
    found.search(coefficients, 0, 1);
    if (coefficients[degree] == 0) {
      found.add(1);
    }
    return Arrays.copyOf(found.roots, found.count);
  }

  /** The coefficients of the product of two polynomials. */
  static double[] product(double[] one, double[] other) {
    int m = one.length - 1;
    int n = other.length - 1;
    double[] product = new double[m + n + 1];
    for (int i = 0; i <= m; i++) {
      for (int j = 0; j <= n; j++) {
        product[i + j] += choose(m, i) * choose(n, j) * one[i] * other[j];
      }
    }
    for (int k = 0; k <= m + n; k++) {
      product[k] /= choose(m + n, k);
    }
    return product;
  }

  private static double choose(int n, int k) {
    double ways = 1;
    for (int i = 1; i <= k; i++) {
      ways = ways * (n - k + i) / i;
    }
    return ways;
  }

  private void add(double root) {
    if (count < roots.length && (count == 0 || roots[count - 1] < root)) {
      roots[count++] = root;
    }
  }

  private void search(double[] c, double from, double to) {
    int changes = signChanges(c);
    if (changes == 0) {
      return;
    }
    if (changes == 1) {
      add(from + (to - from) * only(c));
      return;
    }
    double middle = (from + to) / 2;
    if (to - from <= Tolerance.PARAMETER) {
      add(middle);
      return;
    }
    double[] right = c.clone();
    double[] left = leftHalf(right);
    search(left, from, middle);
    if (right[0] == 0) {
      add(middle);
    }
    search(right, middle, to);
  }

  private static int signChanges(double[] c) {
    int changes = 0;
    double last = 0;
    for (double value : c) {
      if (value != 0) {
        if (last != 0 && (last > 0) != (value > 0)) {
          changes++;
        }
        last = value;
      }
    }
    return changes;
  }

  /** Gives the coefficients of the left half, and leaves those of the right half in place. */
  private static double[] leftHalf(double[] c) {
    int degree = c.length - 1;
    double[] left = new double[degree + 1];
    for (int level = 0; level <= degree; level++) {
      left[level] = c[0];
      for (int i = 0; i < degree - level; i++) {
        c[i] = (c[i] + c[i + 1]) / 2;
      }
    }
    return left;
  }

  /** The one root of coefficients that change sign once: Newton's steps held in a bracket. */
  private static double only(double[] c) {
    boolean rising = lastSign(c) > 0;
    double low = 0;
    double high = 1;
    double t = 0.5;
    double[] work = new double[c.length];
    for (int step = 0; step < MOST_STEPS && high - low > Tolerance.PARAMETER / 8; step++) {
      double slope = valueAndSlope(c, t, work);
      double value = work[0];
      if (value == 0) {
        return t;
      }
      if (value > 0 == rising) {
        high = t;
      } else {
        low = t;
      }
      double next = t - value / slope;
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - t) <= Tolerance.PARAMETER / 8) {
        return next;
      }
      t = next;
    }
    return t;
  }

  private static double lastSign(double[] c) {
    int i = c.length - 1;
    while (c[i] == 0) {
      i--;
    }
    return c[i];
  }

  /** Gives the slope, and leaves the value in the first place of {@code work}. */
  private static double valueAndSlope(double[] c, double t, double[] work) {
    int degree = c.length - 1;
    System.arraycopy(c, 0, work, 0, c.length);
    double s = 1 - t;
    for (int size = degree; size > 1; size--) {
      for (int i = 0; i < size; i++) {
        work[i] = s * work[i] + t * work[i + 1];
      }
    }
    double slope = degree * (work[1] - work[0]);
    work[0] = s * work[0] + t * work[1];
    return slope;
  }
}
