package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class ChartReaderTest {
  private static final double EXACT = 1e-9;

  @Test
  void readsSizesDownWithUnitsFromTheHeadings() {
    SizeChart chart =
        chart(
            """
            # Tern Cove Patterns, women
            size,hip (cm),waist (in),Hip-depth (mm),lean (deg),stretch (%),age (number)
            8,92.5,29 1/4,200,45,35,7
            10,96.5,31,205,30,40,9
            """);

    assertThat(chart.sizes()).containsExactly(new Size(0, "8"), new Size(1, "10"));
    assertThat(chart.columns())
        .extracting(SizeChart.Column::name)
        .containsExactly("hip", "waist", "hip_depth", "lean", "stretch", "age");
    assertThat(value(chart, "hip", "8")).isCloseTo(925, within(EXACT));
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
    assertThat(value(chart, "waist", "8")).isCloseTo(29.25 * 25.4, within(EXACT));
    assertThat(value(chart, "hip_depth", "10")).isCloseTo(205, within(EXACT));
    assertThat(value(chart, "lean", "8")).isCloseTo(Math.PI / 4, within(EXACT));
    assertThat(value(chart, "stretch", "10")).isEqualTo(0.4);
    assertThat(value(chart, "age", "8")).isEqualTo(7);
    assertThat(chart.column("lean").orElseThrow().kind()).isEqualTo(QuantityKind.ANGLE);
    assertThat(chart.column("stretch").orElseThrow().kind()).isEqualTo(QuantityKind.RATIO);
    assertThat(chart.column("age").orElseThrow().kind()).isEqualTo(QuantityKind.NUMBER);
  }

  @Test
  void readsSizesAcross() {
    SizeChart chart =
        chart(
            """
            size,   8, 10, "S/M"
            hip (cm), 92, 96, 101.5
            waist (in), 29, , 31 3/8
            """);

    assertThat(chart.sizes()).extracting(Size::name).containsExactly("8", "10", "S/M");
    assertThat(value(chart, "hip", "S/M")).isCloseTo(1015, within(EXACT));
    assertThat(chart.column("waist").orElseThrow().cells().get(1).value()).isEmpty();
    assertThat(value(chart, "waist", "S/M")).isCloseTo(31.375 * 25.4, within(EXACT));
  }

  @Test
  void givesEachCellItsLineAndColumn() {
    SizeChart chart =
        chart("# note\r\n\r\nsize,\"hip (cm)\",waist (cm)\r\n8, 92,\"73\"\r\n\"2T\",,54\r\n");

    assertThat(chart.column("hip").orElseThrow().origin()).hasToString("sizes.csv:3:6");
    assertThat(chart.column("waist").orElseThrow().origin()).hasToString("sizes.csv:3:17");
    assertThat(chart.column("hip").orElseThrow().cells().get(0).origin())
        .hasToString("sizes.csv:4:4");
    assertThat(chart.column("waist").orElseThrow().cells().get(0).origin())
        .hasToString("sizes.csv:4:7");
    assertThat(chart.column("waist").orElseThrow().cells().get(1).origin())
        .hasToString("sizes.csv:5:7");
  }

  @Test
  void tellsEveryProblemAtOnceInTheOrderOfTheFile() {
    ReadChart read =
        read(
            """
            size,hip (cm),waist,bust (inches),Hip (mm)
            8,"92,5",73,35,920
            10,9x6,74,36,960
            10,100,75,37,1000
            ,104,76,38,1040
            14,108,77,39,1080,5
            """);

    assertThat(read.findings())
        .extracting(ChartReaderTest::told)
        .containsExactly(
            "1:15 chart-unit-missing",
            "1:21 chart-unit-unknown",
            "1:35 chart-heading-twice",
            "2:3 chart-decimal-comma",
            "3:4 chart-number",
            "4:1 chart-size-twice",
            "5:1 chart-size-blank",
            "6:19 chart-cell-unheaded");
  }

  @Test
  void aBadNumberNamesItsSizeItsColumnAndTheMend() {
    Finding finding = read("size,hip (cm)\n14,\"92,5\"\n").findings().get(0);

    assertThat(finding.code()).isEqualTo("chart-decimal-comma");
    assertThat(finding.subject()).isEqualTo("hip");
    assertThat(finding.sizes()).containsExactly("14");
    assertThat(finding.arguments())
        .containsEntry("measurement", Argument.of("hip"))
        .containsEntry("size", Argument.of("14"))
        .containsEntry("read", Argument.of("92,5"))
        .containsEntry("better", Argument.of("92.5"));
  }

  @Test
  void aBadNumberIsAGapInAChartThatIsStillRead() {
    ReadChart read = read("size,hip (cm),waist (cm)\n8,?,70\n10,96,74\n");

    SizeChart chart = read.chart().orElseThrow();
    assertThat(read.findings()).hasSize(1);
    assertThat(chart.column("hip").orElseThrow().cells().get(0).value()).isEmpty();
    assertThat(value(chart, "hip", "10")).isCloseTo(960, within(EXACT));
  }

  @Test
  void anUnknownUnitIsMendedByTheNearest() {
    assertThat(better("size,bust (inches)\n8,35\n")).isEqualTo("bust (in)");
    assertThat(better("size,bust (\")\n8,35\n")).isEqualTo("bust (in)");
    assertThat(better("size,bust (centimetres)\n8,35\n")).isEqualTo("bust (cm)");
    assertThat(better("size,bust (millimeters)\n8,35\n")).isEqualTo("bust (mm)");
    assertThat(better("size,bust (degrees)\n8,35\n")).isEqualTo("bust (deg)");
  }

  @Test
  void aHeadingThatIsNoNameIsMendedByOne() {
    assertThat(better("size,waist/belly (cm)\n8,35\n")).isEqualTo("waistbelly (cm)");
    assertThat(better("size,2nd hip (cm)\n8,35\n")).isEqualTo("hip_2nd (cm)");
  }

  @Test
  void fractionsWrittenOtherwiseAreMended() {
    assertThat(better("size,hip (in)\n8,38-1/4\n")).isEqualTo("38 1/4");
    assertThat(better("size,hip (in)\n8,38⅜\n")).isEqualTo("38 3/8");
    assertThat(better("size,hip (in)\n8,½\n")).isEqualTo("1/2");
  }

  @Test
  void aUnitAfterANumberMustBeTheHeadings() {
    assertThat(value(chart("size,hip (in)\n8,38 1/4 in\n"), "hip", "8"))
        .isCloseTo(38.25 * 25.4, within(EXACT));
    assertThat(value(chart("size,hip (in)\n8,\"38 1/4\"\"\"\n"), "hip", "8"))
        .isCloseTo(38.25 * 25.4, within(EXACT));
    assertThat(codes("size,hip (in)\n8,97 cm\n")).containsExactly("chart-cell-unit");
  }

  @Test
  void numbersBelowNothingOrBeyondAnyBodyAreTold() {
    assertThat(codes("size,hip (cm)\n8,-92\n")).containsExactly("chart-negative");
    assertThat(codes("size,hip (cm)\n8,92000\n")).containsExactly("chart-out-of-range");
    assertThat(codes("size,hip (cm)\n8,3/0\n")).containsExactly("chart-number");
    assertThat(codes("size,hip (cm)\n8,1e3\n")).containsExactly("chart-number");
    assertThat(codes("size,hip (cm)\n8,NaN\n")).containsExactly("chart-number");
  }

  @Test
  void semicolonsBringDecimalCommas() {
    SizeChart chart = chart("size;hip (cm);waist (cm)\n8;92,5;73\n10;96.5;74,25\n");

    assertThat(value(chart, "hip", "8")).isCloseTo(925, within(EXACT));
    assertThat(value(chart, "hip", "10")).isCloseTo(965, within(EXACT));
    assertThat(value(chart, "waist", "10")).isCloseTo(742.5, within(EXACT));
  }

  @Test
  void tabsAndALineThatNamesTheSeparatorAreUnderstood() {
    assertThat(value(chart("size\thip (cm)\n8\t92\n"), "hip", "8")).isEqualTo(920);
    SizeChart chart = chart("sep=;\r\nsize;hip (cm)\r\n8;92,5\r\n");
    assertThat(value(chart, "hip", "8")).isEqualTo(925);
    assertThat(chart.column("hip").orElseThrow().cells().get(0).origin())
        .hasToString("sizes.csv:3:3");
  }

  @Test
  void notesInRowsAndColumnsAreLeftOut() {
    SizeChart chart =
        chart("# a \"note, open\nsize,# remarks,hip (cm)\n\"# old, small\",,\n8,snug,92\n,,\n");

    assertThat(chart.sizes()).extracting(Size::name).containsExactly("8");
    assertThat(chart.columns()).extracting(SizeChart.Column::name).containsExactly("hip");
  }

  @Test
  void byteOrderMarksAndWideTextAreRead() {
    String text = "size,hip (cm)\r\nÄ,92\r\n";
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      ReadChart read = ChartReader.read("sizes.csv", ("\uFEFF" + text).getBytes(charset));
      assertThat(read.findings()).isEmpty();
      assertThat(value(read.chart().orElseThrow(), "hip", "Ä")).isEqualTo(920);
    }
  }

  @Test
  void bytesThatAreNoUtf8AreToldWithTheirPlace() {
    ReadChart read =
        ChartReader.read(
            "sizes.csv", "size,hip (cm)\n8,92\nÄ,96\n".getBytes(StandardCharsets.ISO_8859_1));

    assertThat(read.findings())
        .extracting(ChartReaderTest::told)
        .containsExactly("3:1 chart-encoding");
    assertThat(value(read.chart().orElseThrow(), "hip", "8")).isEqualTo(920);
  }

  @Test
  void aQuoteLeftOpenIsToldWhereItOpens() {
    assertThat(read("size,hip (cm)\n8,92\n10,\"96\n12,100\n").findings())
        .extracting(ChartReaderTest::told)
        .containsExactly("3:4 chart-quote");
    assertThat(read("\"size,hip (cm)\n8,92\n").findings())
        .extracting(ChartReaderTest::told)
        .first()
        .isEqualTo("1:1 chart-quote");
  }

  @Test
  void aChartOfNothingIsTold() {
    assertThat(codes("")).containsExactly("chart-empty");
    assertThat(codes("# only a note\n\n")).containsExactly("chart-empty");
    assertThat(codes("size,hip (cm)\n")).containsExactly("chart-no-sizes");
    assertThat(codes("\n,,,\n,,\n")).containsExactly("chart-empty");
  }

  private static ReadChart read(String text) {
    return ChartReader.read("sizes.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static SizeChart chart(String text) {
    ReadChart read = read(text);
    assertThat(read.findings()).isEmpty();
    return read.chart().orElseThrow();
  }

  private static List<String> codes(String text) {
    return read(text).findings().stream().map(Finding::code).toList();
  }

  private static String better(String text) {
    Argument better = read(text).findings().get(0).arguments().get("better");
    return better instanceof Argument.Text said ? said.text() : "no mend";
  }

  private static String told(Finding finding) {
    return finding.origin().map(o -> o.line() + ":" + o.column()).orElse("?")
        + " "
        + finding.code();
  }

  private static double value(SizeChart chart, String measurement, String size) {
    int position = chart.size(size).orElseThrow().position();
    return chart.column(measurement).orElseThrow().cells().get(position).value().orElseThrow();
  }
}
