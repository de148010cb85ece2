package org.hemwright.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.workbench.starter.Starter;
import org.junit.jupiter.api.Test;

class BroughtChartTest {
  private static final String HERS =
      "Size;Seat;Natural waist;Colour\nS;36 1/2;28;blue\nM;38;30;red\n";

  private static BroughtChart of(ChartAnswers answers) {
    return BroughtChart.of("mine.csv", HERS.getBytes(StandardCharsets.UTF_8), answers);
  }

  @Test
  void nothingIsTakenForAChartWithoutItsUnit() {
    BroughtChart chart =
        of(new ChartAnswers(Map.of(), Optional.empty(), List.of(), Optional.empty()));
    assertThat(chart.isWhole()).isFalse();
    assertThat(chart.withoutUnit()).containsExactly("Seat", "Natural waist");
    assertThat(chart.columns()).allMatch(BroughtChart.Column::proposed);
    assertThat(chart.leftOut()).contains("Colour");
  }

  /** Inches are exact: 36 1/2 in is 927.1 mm. */
  @Test
  void confirmedItIsASizeChartWithItsEstimatesMarked() {
    BroughtChart chart =
        of(
            new ChartAnswers(
                Map.of("Seat", "hip"),
                Optional.of("in"),
                List.of("hip", "thigh", "elbow"),
                Optional.of(BodySurvey.Sex.WOMEN)));
    assertThat(chart.isWhole()).isTrue();
    assertThat(chart.missing()).containsExactly("elbow");
    assertThat(chart.estimates()).extracting("name").containsExactly("thigh");
    assertThat(chart.readBack()).isEmpty();
    assertThat(chart.csv())
        .contains(
            "# thigh is an estimate from hip (2012 US Army Anthropometric Survey (ANSUR II));")
        .contains("size,hip (in),waist (in),thigh (in)\nS,36.5,28,");
    SizeChart read =
        ChartReader.read("sizes.csv", chart.csv().getBytes(StandardCharsets.UTF_8))
            .chart()
            .orElseThrow();
    assertThat(read.column("hip").orElseThrow().cells().get(0).value()).hasValue(36.5 * 25.4);
  }

  @Test
  void aColumnMayBeCalledOtherwiseOrLeftOut() {
    BroughtChart chart =
        of(
            new ChartAnswers(
                Map.of("Seat", "high_hip", "Natural waist", ""),
                Optional.of("cm"),
                List.of(),
                Optional.empty()));
    assertThat(chart.csv()).contains("size,high hip (cm)\nS,36.5\n");
  }

  /** For men the girth round the chest is no bust, in her heading as in what a starter needs. */
  @Test
  void aChestIsCalledSo() {
    BroughtChart chart =
        BroughtChart.of(
            "mine.csv",
            "Size,Chest (cm),Seat (cm)\nS,96,98\nM,104,104\n".getBytes(StandardCharsets.UTF_8),
            new ChartAnswers(
                Map.of(),
                Optional.empty(),
                Starter.named("knit-tee").orElseThrow().needs(),
                Optional.of(BodySurvey.Sex.MEN)));
    assertThat(chart.columns()).extracting("name").containsExactly("chest", "hip");
    assertThat(chart.columns().get(0).standard()).contains("chest girth");
    assertThat(chart.estimates())
        .extracting("name")
        .containsExactly(
            "neck_base",
            "shoulder",
            "back_width",
            "scye_depth",
            "upper_arm",
            "back_length",
            "head");
    assertThat(chart.missing()).isEmpty();
    // docs/charts.md: a man's back width is 37.6 + 0.2 (chest - 88) cm.
    assertThat(chart.estimates().get(2).run()).isEqualTo("men");
    assertThat(chart.estimates().get(2).mm().get(0).orElseThrow()).isCloseTo(392, within(0.3));
    assertThat(chart.csv())
        .contains("back_width is an estimate from chest by our own size run for men; no survey");
    assertThat(chart.csv()).contains("size,chest (cm),hip (cm),neck base (cm)");
  }

  /**
   * A bust of 113 cm lies between our women's sizes; one of 140 cm is in the run for plus alone.
   */
  @Test
  void whatNoSurveyHasIsTakenFromOurOwnRuns() {
    BroughtChart chart =
        BroughtChart.of(
            "mine.csv",
            "Size,Bust (cm)\nS,113\nM,140\nL,190\n".getBytes(StandardCharsets.UTF_8),
            new ChartAnswers(
                Map.of(),
                Optional.empty(),
                List.of("bust_span", "elbow"),
                Optional.of(BodySurvey.Sex.WOMEN)));
    BroughtChart.Estimate span = chart.estimates().get(0);
    assertThat(span.run()).isEqualTo("women and plus");
    // docs/charts.md: 16.8 + 0.13 (b - 80), and 20.7 + 0.11 (b - 110), to half a millimetre.
    assertThat(span.mm().get(0).orElseThrow()).isCloseTo(210.9, within(0.5));
    assertThat(span.mm().get(1).orElseThrow()).isCloseTo(240, within(0.5));
    assertThat(span.mm().get(2)).isEmpty();
    assertThat(chart.missing()).containsExactly("elbow");
    BroughtChart children =
        BroughtChart.of(
            "mine.csv",
            "Size,Height (cm)\nS,98\n".getBytes(StandardCharsets.UTF_8),
            new ChartAnswers(
                Map.of(), Optional.empty(), List.of("head"), Optional.empty(), true, true));
    // 49.5 + 0.06 (h - 92).
    assertThat(children.estimates().get(0).mm().get(0).orElseThrow()).isCloseTo(498.6, within(0.5));
    assertThat(children.estimates().get(0).spread()).isEmpty();
  }

  /**
   * Whatever numbers she has, in whatever spelling: what is written reads back as the same lengths,
   * and brought in again it is written alike.
   */
  @Test
  void whatIsWrittenReadsBackAlike() {
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      boolean inches = random.nextBoolean();
      int sizes = 2 + random.nextInt(6);
      StringBuilder text = new StringBuilder("Size;Full bust;My own girth;Inseam\n");
      double[][] truth = new double[sizes][3];
      for (int i = 0; i < sizes; i++) {
        text.append(i);
        for (int k = 0; k < 3; k++) {
          int whole = 20 + random.nextInt(80);
          int parts = random.nextInt(16);
          truth[i][k] = whole + parts / 16.0;
          text.append(';');
          text.append(
              switch (random.nextInt(3)) {
                case 0 -> parts == 0 ? whole : whole + " " + parts + "/16";
                case 1 -> String.format(Locale.ROOT, "%.4f", truth[i][k]);
                default -> String.format(Locale.ROOT, "%.4f", truth[i][k]).replace('.', ',');
              });
        }
        text.append('\n');
      }
      ChartAnswers answers =
          new ChartAnswers(
              Map.of(), Optional.of(inches ? "in" : "cm"), List.of(), Optional.empty());
      byte[] hers = text.toString().getBytes(StandardCharsets.UTF_8);
      BroughtChart chart = BroughtChart.of("mine.csv", hers, answers);
      assertThat(chart.readBack()).isEmpty();
      byte[] written = chart.csv().getBytes(StandardCharsets.UTF_8);
      SizeChart read = ChartReader.read("sizes.csv", written).chart().orElseThrow();
      List<String> names = List.of("bust", "my_own_girth", "inside_leg");
      for (int i = 0; i < sizes; i++) {
        for (int k = 0; k < 3; k++) {
          assertThat(read.column(names.get(k)).orElseThrow().cells().get(i).value().orElseThrow())
              .as(text.toString())
              .isCloseTo(truth[i][k] * (inches ? 25.4 : 10), within(1e-9));
        }
      }
      BroughtChart again = BroughtChart.of("mine.csv", written, answers);
      assertThat(again.csv()).isEqualTo(chart.csv());
    }
  }
}
