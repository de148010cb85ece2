package org.hemwright.pattern.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Estimates against the textbook formulas of regression on one and on two variables. */
class BodyEstimateTest {
  private static final BodySurvey WOMEN = BodySurvey.of(BodySurvey.Sex.WOMEN);

  private static SurveyedMeasure measure(String name) {
    return WOMEN.measure(name).orElseThrow();
  }

  /** With one variable the slope is the correlation, what is left the root of 1 − r². */
  @Test
  void fromOneMeasurement() {
    SurveyedMeasure hip = measure("hip");
    SurveyedMeasure thigh = measure("thigh");
    double r = WOMEN.correlation(hip, thigh);
    BodyEstimate estimate = BodyEstimate.of(WOMEN, "thigh", Map.of("hip", 1100.0)).orElseThrow();
    double mm = thigh.at(r * hip.deviations(1100));
    assertThat(estimate.mm()).isCloseTo(mm, within(1e-9));
    assertThat(estimate.spread())
        .isCloseTo(mm * thigh.logDeviation() * Math.sqrt(1 - r * r), within(1e-9));
    assertThat(estimate.mm()).as("a hip of 110 cm").isBetween(640.0, 720.0);
  }

  /** With two: b1 = (r1 − r2·r12) / (1 − r12²). */
  @Test
  void fromTwoMeasurements() {
    SurveyedMeasure a = measure("height");
    SurveyedMeasure b = measure("hip");
    SurveyedMeasure y = measure("inside_leg");
    double r1 = WOMEN.correlation(y, a);
    double r2 = WOMEN.correlation(y, b);
    double r12 = WOMEN.correlation(a, b);
    double b1 = (r1 - r2 * r12) / (1 - r12 * r12);
    double b2 = (r2 - r1 * r12) / (1 - r12 * r12);
    BodyEstimate estimate =
        BodyEstimate.of(WOMEN, "inseam", Map.of("height", 1700.0, "hip", 980.0)).orElseThrow();
    assertThat(estimate.mm())
        .isCloseTo(y.at(b1 * a.deviations(1700) + b2 * b.deviations(980)), within(1e-6));
    double alone =
        BodyEstimate.of(WOMEN, "inseam", Map.of("height", 1700.0)).orElseThrow().spread();
    assertThat(estimate.spread()).isLessThan(alone);
  }

  @Test
  void whatTheSurveyLacksOrMeasuresOtherwiseIsNotEstimated() {
    assertThat(BodyEstimate.of(WOMEN, "scye_depth", Map.of("bust", 900.0))).isEmpty();
    assertThat(BodyEstimate.of(WOMEN, "thigh", Map.of("pocket", 100.0))).isEmpty();
    assertThat(BodyEstimate.of(WOMEN, "waist", Map.of("hip", 1000.0)))
        .as("the survey's waist goes round the navel")
        .isEmpty();
  }
}
