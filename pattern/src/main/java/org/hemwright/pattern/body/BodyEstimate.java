package org.hemwright.pattern.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a survey lets one expect of a measurement that a chart lacks, from those that it has: a
 * linear regression on the logarithms.
 *
 * @param mm the length to expect
 * @param spread how far one body in three lies from it or farther (mm, one standard deviation)
 * @param from the measurements it was worked out from
 */
public record BodyEstimate(double mm, double spread, List<String> from) {
  /** So little of a deviation may be left before measurements are taken to say the same twice. */
  private static final double SINGULAR = 1e-6;

  public BodyEstimate {
    from = List.copyOf(from);
  }

  /**
   * The estimate of a measurement.
   *
   * @param survey whose figures
   * @param wanted the measurement, by its name in a document
   * @param known lengths (mm) by name; those that the survey lacks, or measures otherwise, do not
   *     count
   * @return nothing where the survey lacks the measurement, measures it in another way, or has none
   *     of those known
   */
  public static Optional<BodyEstimate> of(
      BodySurvey survey, String wanted, Map<String, Double> known) {
    Optional<SurveyedMeasure> measure = survey.measure(wanted).filter(BodyEstimate::isAlike);
    if (measure.isEmpty()) {
      return Optional.empty();
    }
    List<SurveyedMeasure> by = new ArrayList<>();
    List<Double> deviations = new ArrayList<>();
    for (Map.Entry<String, Double> entry : known.entrySet()) {
      Optional<SurveyedMeasure> one = survey.measure(entry.getKey()).filter(BodyEstimate::isAlike);
      if (one.isPresent() && !one.equals(measure) && !by.contains(one.get())) {
        by.add(one.get());
        deviations.add(one.get().deviations(entry.getValue()));
      }
    }
    if (by.isEmpty()) {
      return Optional.empty();
    }
    double[] weights = weights(survey, measure.get(), by);
    double expected = 0;
    double told = 0;
    List<String> from = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      expected += weights[i] * deviations.get(i);
      told += weights[i] * survey.correlation(measure.get(), by.get(i));
      from.add(by.get(i).name());
    }
    double mm = measure.get().at(expected);
    double left = Math.sqrt(Math.max(0, 1 - told)) * measure.get().logDeviation();
    return Optional.of(new BodyEstimate(mm, mm * left, from));
  }

  private static boolean isAlike(SurveyedMeasure measure) {
    return measure.likeness() == SurveyedMeasure.Likeness.ALIKE;
  }

  /** The weights of a regression on standardised values: correlations solved by elimination. */
  private static double[] weights(
      BodySurvey survey, SurveyedMeasure wanted, List<SurveyedMeasure> by) {
    int n = by.size();
    double[][] rows = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        rows[i][k] = i == k ? 1 : survey.correlation(by.get(i), by.get(k));
      }
      rows[i][n] = survey.correlation(wanted, by.get(i));
    }
    for (int i = 0; i < n; i++) {
      if (rows[i][i] < SINGULAR) {
        continue;
      }
      for (int k = 0; k < n; k++) {
        if (k != i) {
          double factor = rows[k][i] / rows[i][i];
          for (int c = i; c <= n; c++) {
            rows[k][c] -= factor * rows[i][c];
          }
        }
      }
    }
    double[] weights = new double[n];
    for (int i = 0; i < n; i++) {
      weights[i] = rows[i][i] < SINGULAR ? 0 : rows[i][n] / rows[i][i];
    }
    return weights;
  }
}
