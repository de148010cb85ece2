package org.hemwright.geometry;

import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.util.Pair;

/** Where to look, and with what weight, to integrate over 0 to 1 by the rule of Gauss. */
final class GaussRule {
  /** The rule that gives the answer, exact for polynomials up to degree 31. */
  static final GaussRule FINE = new GaussRule(16);

  /** The rule that the fine one is held against. */
  static final GaussRule COARSE = new GaussRule(8);

  /** Places on 0 to 1, rising. */
  final double[] places;

  /** Weights, whose sum is 1. */
  final double[] weights;

  private GaussRule(int count) {
    Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(count);
    places = rule.getFirst().clone();
    weights = rule.getSecond().clone();
    for (int i = 0; i < count; i++) {
      places[i] = (places[i] + 1) / 2;
      weights[i] /= 2;
    }
  }
}
