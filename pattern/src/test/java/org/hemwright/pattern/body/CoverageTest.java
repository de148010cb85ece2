package org.hemwright.pattern.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.body.BodySurvey.Sex;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

/** Shares of a population, against the people of the survey counted one by one. */
class CoverageTest {
  private static final Origin HERE = new Origin("sizes.csv", 1, 1);

  /** A chart of columns given as name and values in centimetres; 0 for a blank cell. */
  private static SizeChart chart(Object... namesAndValues) {
    List<Size> sizes = new ArrayList<>();
    List<SizeChart.Column> columns = new ArrayList<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      String name = (String) namesAndValues[i];
      List<SizeChart.Cell> cells = new ArrayList<>();
      for (double cm : (double[]) namesAndValues[i + 1]) {
        cells.add(
            new SizeChart.Cell(
                cm == 0 ? OptionalDouble.empty() : OptionalDouble.of(cm * 10), HERE));
      }
      columns.add(new SizeChart.Column(name, name, QuantityKind.LENGTH, cells, HERE));
    }
    for (int i = 0; i < columns.get(0).cells().size(); i++) {
      sizes.add(new Size(i, Integer.toString(2 * i)));
    }
    return new SizeChart("sizes.csv", sizes, columns);
  }

  private static double[] steps(double from, double step, int count) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = from + i * step;
    }
    return values;
  }

  private static Coverage women(SizeChart chart) {
    return Coverage.of(chart, BodySurvey.of(Sex.WOMEN)).coverage().orElseThrow();
  }

  /** Counts the people within half a step of some size by every column given. */
  private static double counted(Sex sex, double half, double[][] charts, String... columns)
      throws IOException {
    SurveyedPeople people = SurveyedPeople.of(sex);
    double[][] measured = new double[columns.length][];
    for (int c = 0; c < columns.length; c++) {
      measured[c] = people.column(columns[c]);
    }
    int served = 0;
    for (int person = 0; person < people.count(); person++) {
      boolean any = false;
      for (int size = 0; size < charts[0].length; size++) {
        boolean all = true;
        for (int c = 0; c < columns.length; c++) {
          double off = measured[c][person] - charts[c][size] * 10;
          all &= -half * 10 <= off && off < half * 10;
        }
        any |= all;
      }
      served += any ? 1 : 0;
    }
    return (double) served / people.count();
  }

  @Test
  void oneGirthIsCountedAlike() throws IOException {
    assumeTrue(SurveyedPeople.present(), "../shared/data/body is not here");
    double[] hips = steps(90, 4, 8);
    Coverage coverage = women(chart("hip", hips));
    double counted = counted(Sex.WOMEN, 2, new double[][] {hips}, "buttockcircumference");
    assertThat(coverage.share()).isCloseTo(counted, within(0.02)).isBetween(0.5, 0.99);
    assertThat(coverage.sizes().stream().mapToDouble(Coverage.OfSize::share).sum())
        .isCloseTo(coverage.share(), within(1e-9));
  }

  @Test
  void twoGirthsAreCountedTogether() throws IOException {
    assumeTrue(SurveyedPeople.present(), "../shared/data/body is not here");
    double[] busts = steps(80, 4, 12);
    double[] hips = steps(88, 4, 12);
    Coverage women = women(chart("bust", busts, "hip", hips));
    double counted =
        counted(
            Sex.WOMEN,
            2,
            new double[][] {busts, hips},
            "chestcircumference",
            "buttockcircumference");
    assertThat(women.share()).isCloseTo(counted, within(0.02)).isBetween(0.15, 0.6);
    assertThat(women.dimensions())
        .extracting(Coverage.Dimension::column)
        .containsExactly("bust", "hip");
    assertThat(women.dimensions().get(0).share()).isGreaterThan(women.share());

    Coverage men =
        Coverage.of(
                chart("chest", steps(88, 5, 10), "hip", steps(86, 5, 10)), BodySurvey.of(Sex.MEN))
            .coverage()
            .orElseThrow();
    double countedMen =
        counted(
            Sex.MEN,
            2.5,
            new double[][] {steps(88, 5, 10), steps(86, 5, 10)},
            "chestcircumference",
            "buttockcircumference");
    assertThat(men.share()).isCloseTo(countedMen, within(0.02));
  }

  /** Half way to each neighbour; outward at the ends as far as inward (arithmetic). */
  @Test
  void aSizeReachesHalfWayToItsNeighbours() {
    Coverage coverage = women(chart("hip", new double[] {90, 94, 100, 0, 110}));
    assertThat(coverage.sizes())
        .extracting(size -> size.spans().get(0))
        .containsExactly(
            new SizeSpan(880, 920),
            new SizeSpan(920, 970),
            new SizeSpan(970, 1050),
            new SizeSpan(1050, 1150));
  }

  @Test
  void theWaistRoundTheNavelIsLeftOut() {
    Coverage coverage = women(chart("waist", steps(66, 4, 8), "hip", steps(90, 4, 8)));
    assertThat(coverage.dimensions()).extracting(Coverage.Dimension::column).containsExactly("hip");
    assertThat(coverage.leftOut()).containsExactly("waist");
  }

  @Test
  void sizesBeyondTheSurveyAreNotSpokenOf() {
    Coverage coverage = women(chart("hip", steps(80, 10, 10)));
    assertThat(coverage.sizes())
        .extracting(Coverage.OfSize::held)
        .containsExactly(false, true, true, true, true, false, false, false, false, false);
  }

  @Test
  void whatIsNotKnownIsSaidSo() {
    SizeChart hips = chart("hip", steps(90, 4, 8));
    assertThat(reason(hips, Optional.empty())).contains(Coverage.NoData.WEARERS_UNSAID);
    for (Wearers.People people :
        List.of(Wearers.People.CHILDREN, Wearers.People.TEENAGERS, Wearers.People.BABIES)) {
      assertThat(reason(hips, Optional.of(new Wearers(people, List.of()))))
          .contains(Coverage.NoData.NOT_SURVEYED);
    }
    Wearers plus = new Wearers(Wearers.People.WOMEN, List.of(Wearers.Build.PLUS));
    assertThat(reason(hips, Optional.of(plus))).contains(Coverage.NoData.NOT_SURVEYED);
    Optional<Wearers> women = Optional.of(new Wearers(Wearers.People.WOMEN, List.of()));
    assertThat(reason(chart("waist", steps(60, 4, 8)), women))
        .contains(Coverage.NoData.NO_MEASUREMENT);
    assertThat(reason(chart("hip", steps(180, 4, 8)), women)).contains(Coverage.NoData.NO_SIZES);
    assertThat(reason(chart("hip", steps(100, 4, 1)), women)).contains(Coverage.NoData.NO_SIZES);
    assertThat(reason(hips, women)).isEmpty();
  }

  private static Optional<Coverage.NoData> reason(SizeChart chart, Optional<Wearers> wearers) {
    List<Coverage.Answer> answers = Coverage.of(chart, wearers);
    assertThat(answers).hasSize(1);
    return answers.get(0).because();
  }

  @Test
  void theSexesAreAnsweredApart() {
    List<Coverage.Answer> both =
        Coverage.of(
            chart("head", steps(52, 2, 5)),
            Optional.of(new Wearers(Wearers.People.ADULTS, List.of())));
    assertThat(both)
        .extracting(answer -> answer.coverage().orElseThrow().survey().sex())
        .containsExactly(Sex.WOMEN, Sex.MEN);
    assertThat(both.get(0).coverage().orElseThrow().dimensions().get(0).column()).isEqualTo("head");
  }
}
