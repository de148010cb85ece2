package org.hemwright.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.SizeChart;
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
                List.of("hip", "thigh", "scye_depth"),
                Optional.of(BodySurvey.Sex.WOMEN)));
    assertThat(chart.isWhole()).isTrue();
    assertThat(chart.missing()).containsExactly("scye_depth");
    assertThat(chart.estimates()).extracting("name").containsExactly("thigh");
    assertThat(chart.readBack()).isEmpty();
    assertThat(chart.csv())
        .contains(
            "# thigh is an estimate from hip (2012 US Army Anthropometric Survey (ANSUR II));")
        .contains("size,hip (in),waist (in),thigh (cm)\nS,36.5,28,");
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
}
