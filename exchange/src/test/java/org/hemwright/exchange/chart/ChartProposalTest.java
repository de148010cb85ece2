package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

/** Charts as designers have them; names as ISO 8559 and handbook section 1 list them. */
class ChartProposalTest {
  private static ChartProposal of(String text) {
    return ChartProposal.of("mine.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> names(ChartProposal chart) {
    return chart.columns().stream().map(ChartProposal.Column::name).toList();
  }

  private static List<Double> values(ChartProposal chart, int column) {
    return chart.columns().get(column).values().stream()
        .map(value -> value.orElse(Double.NaN))
        .toList();
  }

  @Test
  void titlesBlankColumnsMergedHeadingsAndFractionsAreUnderstood() {
    ChartProposal chart =
        of(
            """
            Tern Cove Patterns,,,,,
            "all measurements in inches",,,,,
            ,Girths,,,Lengths,
            ,Full Bust,Natural Waist,Hips,,Back waist length
            XS,32 1/2,25½,35-1/4,,15 3/4
            S,34,27,37,,16
            M,36.5,29.5",n/a,,16 1/4
            """);
    assertThat(chart.sizes()).containsExactly("XS", "S", "M");
    assertThat(names(chart)).containsExactly("bust", "waist", "hip", "back_length");
    assertThat(values(chart, 0)).containsExactly(32.5, 34.0, 36.5);
    assertThat(values(chart, 1)).containsExactly(25.5, 27.0, 29.5);
    assertThat(chart.columns().get(2).values())
        .containsExactly(OptionalDouble.of(35.25), OptionalDouble.of(37), OptionalDouble.empty());
    assertThat(chart.columns()).allMatch(column -> column.unit().orElse("").equals("in"));
    assertThat(chart.unread()).containsExactly("Hips, M: n/a");
    assertThat(chart.leftOut()).contains("Tern Cove Patterns", "all measurements in inches");
  }

  @Test
  void sizesMayRunAcrossAndEachHeadingSayItsUnit() {
    ChartProposal chart =
        of(
            """
            Measurement;8;10;12
            Seat (cm);92,5;96;100
            Inseam (in);30;30 1/4;30 1/2
            My own height of pocket (mm);60;61;62
            """);
    assertThat(chart.sizes()).containsExactly("8", "10", "12");
    assertThat(names(chart)).containsExactly("hip", "inside_leg", "my_own_height_of_pocket");
    assertThat(values(chart, 0)).containsExactly(92.5, 96.0, 100.0);
    assertThat(chart.columns().stream().map(c -> c.unit().orElse("?")))
        .containsExactly("cm", "in", "mm");
    assertThat(chart.columns().get(2).meant()).isEmpty();
    assertThat(chart.columns().get(1).meant().orElseThrow().standard())
        .isEqualTo("inside leg length");
  }

  @Test
  void aUnitThatIsNotWrittenIsNotGuessed() {
    ChartProposal chart = of("size,bust,waist\n8,84,66\n10,88,70\n");
    assertThat(chart.columns()).allMatch(column -> column.unit().isEmpty());
  }

  @Test
  void theSameMeasurementTwiceIsTakenOnce() {
    ChartProposal chart = of("size,Bust,Bust\n,cm,in\n8,84,33\n10,88,34 5/8\n");
    assertThat(names(chart)).containsExactly("bust");
    assertThat(chart.columns().get(0).unit()).contains("cm");
    assertThat(chart.leftOut()).contains("Bust in (the same as Bust cm)");
  }

  @Test
  void aSpreadsheetIsReadAlike() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("Sizes");
      sheet.value(0, 0, "Sizes in cm");
      sheet.value(2, 1, "Hips");
      sheet.value(2, 3, "Bicep");
      sheet.value(3, 0, "S");
      sheet.value(3, 1, 92.5);
      sheet.value(3, 3, 27);
      sheet.value(4, 0, "M");
      sheet.value(4, 1, 98);
      sheet.value(4, 3, 29);
    }
    ChartProposal chart = ChartProposal.of("mine.xlsx", bytes.toByteArray());
    assertThat(chart.findings()).isEmpty();
    assertThat(chart.sizes()).containsExactly("S", "M");
    assertThat(names(chart)).containsExactly("hip", "upper_arm");
    assertThat(values(chart, 0)).containsExactly(92.5, 98.0);
    assertThat(chart.columns()).allMatch(column -> column.unit().orElse("").equals("cm"));
  }

  @Test
  void whatIsNoChartIsTold() {
    assertThat(of("").findings()).isNotEmpty();
    assertThat(of("just words\nand more\n").findings()).isNotEmpty();
    assertThat(of("a,\"b\n1,2\n").findings()).isNotEmpty();
  }
}
