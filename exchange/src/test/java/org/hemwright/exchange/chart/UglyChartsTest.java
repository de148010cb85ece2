package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

/**
 * Ten charts as people keep them: pasted, merged, with blank columns, notes, ranges, two units,
 * letters before the headings. Each holds the same numbers as a tidy one would; they are written
 * beside each by hand.
 */
class UglyChartsTest {
  private static ChartProposal of(String text) {
    ChartProposal chart = ChartProposal.of("pasted", text.getBytes(StandardCharsets.UTF_8));
    assertThat(chart.findings()).isEmpty();
    return chart;
  }

  /** Each column as {@code bust in 33.0 34.0}. */
  private static List<String> columns(ChartProposal chart) {
    return chart.columns().stream()
        .map(
            column -> {
              StringBuilder line = new StringBuilder(column.name());
              line.append(' ').append(column.unit().orElse("?"));
              column
                  .values()
                  .forEach(
                      value ->
                          line.append(' ').append(value.isPresent() ? value.getAsDouble() : "-"));
              return line.toString();
            })
        .toList();
  }

  @Test
  void pastedFromAPageSizesAcrossWithRanges() {
    ChartProposal chart =
        of(
            """
            Size\tXS\tS\tM
            Bust\t31–32\t33-34\t35 to 37
            Hips\t34–35\t36–37\t38 1/2 - 40
            All measurements are body measurements in inches
            """);
    assertThat(chart.sizes()).containsExactly("XS", "S", "M");
    assertThat(columns(chart)).containsExactly("bust in 31.5 33.5 36.0", "hip in 34.5 36.5 39.25");
    assertThat(chart.ranges()).hasSize(6).contains("Bust, XS: 31–32");
  }

  @Test
  void inchesAndCentimetresSideBySideUnderMergedHeadings() {
    ChartProposal chart =
        of("Size,Bust,,Hip,\n,in,cm,in,cm\n8,33,84,36 1/4,92\n10,34 5/8,88,37 3/4,96\n");
    assertThat(columns(chart)).containsExactly("bust in 33.0 34.625", "hip in 36.25 37.75");
    assertThat(chart.leftOut()).hasSize(2);
  }

  @Test
  void blankColumnsAndRowsWithNotesAboveAndBelow() {
    ChartProposal chart =
        of(
            """
            Tern Cove size chart 2026,,,,,
            ,,,,,
            ,Size,,Bust,Waist,
            ,,,,,
            ,6,,80,64,
            ,8,,84,68,
            Note: measure over underwear,,,,,
            * between sizes take the larger,,,,,
            """);
    assertThat(chart.sizes()).containsExactly("6", "8");
    assertThat(columns(chart)).containsExactly("bust ? 80.0 84.0", "waist ? 64.0 68.0");
    assertThat(chart.leftOut()).hasSize(3);
  }

  @Test
  void semicolonsDecimalCommasAndGermanHeadings() {
    ChartProposal chart =
        of("Größe;Oberweite (cm);Hüfte (cm);Rückenlänge (cm)\n36;84,0;92,5;40,5\n38;88;96;41\n");
    assertThat(columns(chart))
        .containsExactly("bust cm 84.0 88.0", "hip cm 92.5 96.0", "back_length cm 40.5 41.0");
  }

  @Test
  void inchesInEverySpelling() {
    ChartProposal chart =
        of(
            "SIZE,BUST GIRTH,WAIST GIRTH,SEAT\n"
                + "2,\"33 ½\"\"\",26¼″,\"36-3/8\"\"\"\n"
                + "4,\"34½\"\"\",27 1/4″,37 3/8 in.\n"
                + "6,35 ½ inches,28¼in,\"38⅜\"\"\"\n");
    assertThat(columns(chart))
        .containsExactly(
            "bust in 33.5 34.5 35.5", "waist in 26.25 27.25 28.25", "hip in 36.375 37.375 38.375");
    assertThat(chart.unread()).isEmpty();
  }

  @Test
  void namesOfSizesInThreeCountriesAreNoMeasurements() {
    ChartProposal chart =
        of("US size,UK size,EU size,Bust (in),Hips (in)\n4,8,36,33,36\n6,10,38,34,37\n");
    assertThat(chart.sizes()).containsExactly("4", "6");
    assertThat(columns(chart)).containsExactly("bust in 33.0 34.0", "hip in 36.0 37.0");
    assertThat(chart.leftOut()).contains("UK size", "EU size");
  }

  @Test
  void sizesAcrossWithARowForEachUnit() {
    ChartProposal chart =
        of(
            """
            ,8,10,12
            Bust (in),33,34 5/8,36 1/4
            Bust (cm),84,88,92
            Across back (cm),34,35,36
            """);
    assertThat(columns(chart))
        .containsExactly("bust in 33.0 34.625 36.25", "back_width cm 34.0 35.0 36.0");
  }

  @Test
  void aSpreadsheetWithMergedCells() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("Sheet1");
      sheet.value(0, 0, "Women (body, inches)");
      sheet.range(0, 0, 0, 5).merge();
      sheet.value(2, 1, "Girths");
      sheet.range(2, 1, 2, 2).merge();
      sheet.value(2, 3, "Lengths");
      sheet.range(2, 3, 2, 4).merge();
      List<String> headings = List.of("Size", "Bust", "Hip", "Nape to waist", "Sleeve length");
      for (int x = 0; x < headings.size(); x++) {
        sheet.value(3, x, headings.get(x));
      }
      sheet.value(4, 0, "S");
      sheet.value(4, 1, 34);
      sheet.value(4, 2, 37);
      sheet.value(4, 3, "16 1/4");
      sheet.value(4, 4, 23.25);
      sheet.value(5, 0, "M");
      sheet.value(5, 1, 36);
      sheet.value(5, 2, 39);
      sheet.value(5, 3, 16.5);
      sheet.value(5, 4, "23 1/2");
    }
    ChartProposal chart = ChartProposal.of("mine.xlsx", bytes.toByteArray());
    assertThat(chart.findings()).isEmpty();
    assertThat(chart.sizes()).containsExactly("S", "M");
    assertThat(columns(chart))
        .containsExactly(
            "bust in 34.0 36.0",
            "hip in 37.0 39.0",
            "back_length in 16.25 16.5",
            "arm_length in 23.25 23.5");
  }

  @Test
  void numberedRowsAndUnitsInTheCells() {
    ChartProposal chart =
        of("#,Size,Chest,Height\n1,4Y,56 cm,104 cm\n2,5Y,58 cm,110 cm\n3,6Y,60.5 cm,116 cm\n");
    assertThat(chart.sizes()).containsExactly("4Y", "5Y", "6Y");
    assertThat(columns(chart))
        .containsExactly("bust cm 56.0 58.0 60.5", "height cm 104.0 110.0 116.0");
  }

  @Test
  void lettersBeforeTheHeadings() {
    ChartProposal chart =
        of(
            """
            Measurement chart (cm)
            ,Small,Medium
            A. Bust,84,92
            B: Waist,66,74
            C – Hips,92,100
            D) Back neck to waist,40.5,41
            E = Upper arm (fullest part),27,29.5
            """);
    assertThat(chart.sizes()).containsExactly("Small", "Medium");
    assertThat(columns(chart))
        .containsExactly(
            "bust cm 84.0 92.0",
            "waist cm 66.0 74.0",
            "hip cm 92.0 100.0",
            "back_length cm 40.5 41.0",
            "upper_arm cm 27.0 29.5");
  }
}
