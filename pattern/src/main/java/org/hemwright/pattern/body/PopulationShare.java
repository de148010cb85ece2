package org.hemwright.pattern.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.special.Erf;

/**
 * Shares of a population whose measurements spread normally by logarithms, together (the
 * multivariate normal distribution, T. W. Anderson, An Introduction to Multivariate Statistical
 * Analysis): integrated over the first measurements in small steps, exact in the last.
 */
final class PopulationShare {
  /** The distribution's tails beyond this many deviations hold less than a millionth. */
  private static final double FARTHEST = 5;

  /** Steps of this many deviations at most. */
  private static final double STEP = 0.02;

  private final List<SurveyedMeasure> measures;

  /** The lower triangle L of the correlations' matrix, with L times its transpose the matrix. */
  private final double[][] lower;

  PopulationShare(BodySurvey survey, List<SurveyedMeasure> measures) {
    this.measures = List.copyOf(measures);
    int count = measures.size();
    lower = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = survey.correlation(measures.get(i), measures.get(j));
        for (int k = 0; k < j; k++) {
          rest -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
      }
    }
  }

  /**
   * The share of the population that lies in at least one of some boxes.
   *
   * @param boxes each with a span for each measurement, more than 0 mm
   */
  double within(List<List<SizeSpan>> boxes) {
    return within(0, boxes, new double[measures.size()]);
  }

  /** A box's span in one measurement, as deviations of what is left once the others are known. */
  private SizeSpan rest(int at, SizeSpan span, double[] known) {
    SurveyedMeasure measure = measures.get(at);
    double middle = 0;
    for (int k = 0; k < at; k++) {
      middle += lower[at][k] * known[k];
    }
    return new SizeSpan(
        (measure.deviations(span.from()) - middle) / lower[at][at],
        (measure.deviations(span.to()) - middle) / lower[at][at]);
  }

  private double within(int at, List<List<SizeSpan>> boxes, double[] known) {
    List<SizeSpan> spans = boxes.stream().map(box -> rest(at, box.get(at), known)).toList();
    if (at == measures.size() - 1) {
      return union(spans);
    }
    TreeSet<Double> ends = new TreeSet<>();
    for (SizeSpan span : spans) {
      ends.add(Math.max(-FARTHEST, Math.min(FARTHEST, span.from())));
      ends.add(Math.max(-FARTHEST, Math.min(FARTHEST, span.to())));
    }
    double sum = 0;
    List<Double> stops = List.copyOf(ends);
    for (int i = 1; i < stops.size(); i++) {
      sum += between(at, stops.get(i - 1), stops.get(i), boxes, spans, known);
    }
    return sum;
  }

  /** Over a stretch in which the same boxes lie. */
  private double between(
      int at,
      double from,
      double to,
      List<List<SizeSpan>> boxes,
      List<SizeSpan> spans,
      double[] known) {
    double middle = (from + to) / 2;
    List<List<SizeSpan>> here = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      if (spans.get(i).from() <= middle && middle <= spans.get(i).to()) {
        here.add(boxes.get(i));
      }
    }
    if (here.isEmpty()) {
      return 0;
    }
    int steps = (int) Math.ceil((to - from) / STEP);
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double low = from + (to - from) * i / steps;
      double high = from + (to - from) * (i + 1) / steps;
      known[at] = (low + high) / 2;
      sum += (below(high) - below(low)) * within(at + 1, here, known);
    }
    return sum;
  }

  private static double union(List<SizeSpan> spans) {
    List<SizeSpan> rising = new ArrayList<>(spans);
    rising.sort(Comparator.comparingDouble(SizeSpan::from));
    double sum = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (SizeSpan span : rising) {
      double from = Math.max(reached, span.from());
      if (span.to() > from) {
        sum += below(span.to()) - below(from);
        reached = span.to();
      }
    }
    return sum;
  }

  /** The share of a normal distribution that lies below so many deviations. */
  private static double below(double deviations) {
    return 0.5 * Erf.erfc(-deviations / Math.sqrt(2));
  }
}
