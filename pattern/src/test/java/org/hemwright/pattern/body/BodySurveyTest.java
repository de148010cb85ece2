package org.hemwright.pattern.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.hemwright.pattern.body.BodySurvey.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The derived figures against the people they were derived from, and against printed ones. */
class BodySurveyTest {
  @ParameterizedTest
  @EnumSource(Sex.class)
  void everyFigureIsThatOfThePeople(Sex sex) throws IOException {
    assumeTrue(SurveyedPeople.present(), "../shared/data/body is not here");
    BodySurvey survey = BodySurvey.of(sex);
    SurveyedPeople people = SurveyedPeople.of(sex);

    assertThat(survey.people()).isEqualTo(people.count());
    for (SurveyedMeasure measure : survey.measures()) {
      double[] values = people.column(measure.column());
      double[] logs = people.logarithms(measure.column());
      assertThat(measure.mean()).as(measure.name()).isCloseTo(mean(values), within(0.001));
      assertThat(measure.deviation()).isCloseTo(deviation(values), within(0.001));
      assertThat(measure.logMean()).isCloseTo(mean(logs), within(1e-6));
      assertThat(measure.logDeviation()).isCloseTo(deviation(logs), within(1e-6));
      for (SurveyedMeasure other : survey.measures()) {
        double[] others = people.logarithms(other.column());
        assertThat(survey.correlation(measure, other))
            .as(measure.name() + " and " + other.name())
            .isCloseTo(correlation(logs, others), within(1e-5));
      }
    }
  }

  /** The means and deviations of ../shared/data/body/ansur2_summary.csv, worked out elsewhere. */
  @Test
  void meansAndDeviationsAreThoseOfTheSummary() {
    BodySurvey women = BodySurvey.of(Sex.WOMEN);
    assertThat(women.people()).isEqualTo(1986);
    assertThat(women.measure("height").orElseThrow().mean()).isEqualTo(1628.473);
    assertThat(women.measure("height").orElseThrow().deviation()).isEqualTo(64.200);
    assertThat(BodySurvey.of(Sex.MEN).people()).isEqualTo(4082);
  }

  /** A spread by logarithms holds about as many people as the normal distribution says. */
  @ParameterizedTest
  @EnumSource(Sex.class)
  void girthsSpreadByShareAsTheNormalDistributionDoes(Sex sex) throws IOException {
    assumeTrue(SurveyedPeople.present(), "../shared/data/body is not here");
    SurveyedPeople people = SurveyedPeople.of(sex);
    for (String name : List.of("height", "bust", "hip", "thigh", "inside_leg")) {
      SurveyedMeasure measure = BodySurvey.of(sex).measure(name).orElseThrow();
      double[] values = people.column(measure.column());
      // 68.27 and 95.45 in 100 within one and two deviations (any table of the distribution).
      assertThat(share(values, measure.at(-1), measure.at(1))).isCloseTo(0.683, within(0.025));
      assertThat(share(values, measure.at(-2), measure.at(2))).isCloseTo(0.954, within(0.012));
      assertThat(share(values, measure.at(-BodySurvey.HELD), measure.at(BodySurvey.HELD)))
          .isCloseTo(0.99, within(0.006));
    }
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void proportionsFollowFromTheFigures(Sex sex) throws IOException {
    assumeTrue(SurveyedPeople.present(), "../shared/data/body is not here");
    BodySurvey survey = BodySurvey.of(sex);
    SurveyedPeople people = SurveyedPeople.of(sex);
    double[] waist = people.column("waistcircumference");
    double[] hip = people.column("buttockcircumference");
    double[] ratios = new double[waist.length];
    for (int i = 0; i < ratios.length; i++) {
      ratios[i] = waist[i] / hip[i];
    }
    Proportion proportion = survey.proportion("waist", "hip").orElseThrow();
    double[] logs = Arrays.stream(ratios).map(Math::log).toArray();
    assertThat(proportion.logMean()).isCloseTo(mean(logs), within(2e-6));
    assertThat(proportion.logDeviation()).isCloseTo(deviation(logs), within(2e-5));
    assertThat(share(ratios, proportion.at(-2), proportion.at(2))).isCloseTo(0.954, within(0.012));
    assertThat(proportion.deviations(proportion.at(1.5))).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void aChartsOtherWordsAreKnown() {
    BodySurvey men = BodySurvey.of(Sex.MEN);
    assertThat(men.measure("chest")).isEqualTo(men.measure("bust")).isPresent();
    assertThat(men.measure("inseam").orElseThrow().name()).isEqualTo("inside_leg");
    assertThat(men.measure("under_bust")).isEmpty();
    assertThat(men.proportion("chest", "bust")).isEmpty();
    assertThat(men.proportion("hip", "hip_depth")).isEmpty();
  }

  /** Trap 1 and 2 of ../shared/data/body/README.md. */
  @Test
  void whatWasMeasuredElsewhereIsMarked() {
    BodySurvey women = BodySurvey.of(Sex.WOMEN);
    assertThat(women.measures())
        .filteredOn(measure -> measure.likeness() == SurveyedMeasure.Likeness.LARGER)
        .extracting(SurveyedMeasure::name)
        .containsExactly("waist", "knee", "upper_arm", "back_width", "back_length");
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  private static double deviation(double[] values) {
    double mean = mean(values);
    double sum = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(sum / (values.length - 1));
  }

  private static double correlation(double[] a, double[] b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - meanA) * (b[i] - meanB);
    }
    return sum / (a.length - 1) / deviation(a) / deviation(b);
  }

  private static double share(double[] values, double from, double to) {
    long within = Arrays.stream(values).filter(v -> v >= from && v <= to).count();
    return (double) within / values.length;
  }
}
