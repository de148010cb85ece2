package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Roots of polynomials that are made from their roots, and products against values. */
class BernsteinTest {

  private static double value(double[] coefficients, double t) {
    double[] work = coefficients.clone();
    for (int size = work.length - 1; size > 0; size--) {
      for (int i = 0; i < size; i++) {
        work[i] = (1 - t) * work[i] + t * work[i + 1];
      }
    }
    return work[0];
  }

  @Test
  void productsHaveTheProductOfTheValues() {
    Drawn drawn = new Drawn(71);
    for (int i = 0; i < 100; i++) {
      double[] one = new double[drawn.count(1, 7)];
      double[] other = new double[drawn.count(1, 7)];
      Arrays.setAll(one, k -> drawn.number(-3, 3));
      Arrays.setAll(other, k -> drawn.number(-3, 3));
      double t = drawn.number(0, 1);
      assertThat(value(Bernstein.product(one, other), t))
          .isCloseTo(value(one, t) * value(other, t), within(1e-12));
    }
  }

  @Test
  void everyRootBetweenNothingAndOneIsFound() {
    Drawn drawn = new Drawn(72);
    for (int i = 0; i < 300; i++) {
      double[] polynomial = {drawn.number(0.5, 2)};
      TreeSet<Double> expected = new TreeSet<>();
      for (int k = drawn.count(1, 6); k > 0; k--) {
        double root = drawn.number(-0.5, 1.5);
        if (expected.stream().anyMatch(known -> Math.abs(known - root) < 0.02)) {
          continue;
        }
        polynomial = Bernstein.product(polynomial, new double[] {-root, 1 - root});
        if (root >= 0 && root <= 1) {
          expected.add(root);
        }
      }
      double[] roots = Bernstein.roots(polynomial);
      assertThat(roots).hasSize(expected.size());
      int k = 0;
      for (double root : expected) {
        assertThat(roots[k++]).isCloseTo(root, within(1e-8));
      }
    }
  }

  @Test
  void rootsAtTheEndsAndInTheMiddleAreFoundOnce() {
    // t (t − 1/2) (t − 1)
    double[] polynomial =
        Bernstein.product(
            Bernstein.product(new double[] {0, 1}, new double[] {-0.5, 0.5}), new double[] {-1, 0});
    assertThat(Bernstein.roots(polynomial)).containsExactly(0, 0.5, 1);
  }

  @Test
  void aDoubleRootIsFound() {
    double[] polynomial = Bernstein.product(new double[] {-0.3, 0.7}, new double[] {-0.3, 0.7});
    double[] roots = Bernstein.roots(polynomial);
    assertThat(roots).isNotEmpty();
    for (double root : roots) {
      assertThat(root).isCloseTo(0.3, within(1e-6));
    }
  }
}
