package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;

class SpreadsheetTest {
  private static final Object GAP = new Object();

  @Test
  void readsNumbersTextsAndGapsAsASpreadsheetSavesThem() {
    byte[] file =
        saved(
            sheet -> {
              row(sheet, 0, "# Tern Cove Patterns");
              row(sheet, 2, "size", "hip (cm)", "waist (in)", "stretch (%)");
              row(sheet, 3, 8, 92.5, "29 1/4", 0.35);
              row(sheet, 4, "2T", GAP, 31.375, 0.4);
              sheet.style(3, 3).format("0%").set();
              sheet.style(4, 3).format("0.0%").set();
            });

    SizeChart chart = chart(file);
    assertThat(chart.sizes()).containsExactly(new Size(0, "8"), new Size(1, "2T"));
    assertThat(values(chart, "hip")).containsExactly(925, Double.NaN);
    assertThat(values(chart, "waist")[0]).isCloseTo(29.25 * 25.4, within(1e-9));
    assertThat(values(chart, "waist")[1]).isCloseTo(31.375 * 25.4, within(1e-9));
    assertThat(values(chart, "stretch")).containsExactly(0.35, 0.4);
    assertThat(chart.column("hip").orElseThrow().cells().get(0).origin())
        .hasToString("sizes.xlsx:4:2");
  }

  @Test
  void readsTheSheetNamedSizesWhereverItStands() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "test", "1.0")) {
      row(book.newWorksheet("Notes"), 0, "not", "these");
      Worksheet sizes = book.newWorksheet("Sizes");
      row(sizes, 0, "size", 8, 10);
      row(sizes, 1, "hip (cm)", 92, 96);
    } catch (IOException problem) {
      throw new AssertionError(problem);
    }

    assertThat(values(chart(out.toByteArray()), "hip")).containsExactly(920, 960);
  }

  @Test
  void aNumberSavedToSeventeenDigitsIsTheOneThatWasTyped() {
    byte[] file =
        packed(
            "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>size</t></is></c>"
                + "<c r=\"B1\" t=\"inlineStr\"><is><t>hip (mm)</t></is></c></row>"
                + "<row r=\"2\"><c r=\"A2\"><v>8</v></c>"
                + "<c r=\"B2\"><v>38.299999999999997</v></c></row>");

    assertThat(values(chart(file), "hip")).containsExactly(38.3);
  }

  @Test
  void theResultSavedBesideAFormulaIsReadAndOneThatIsNotSavedIsTold() {
    byte[] file =
        packed(
            "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>size</t></is></c>"
                + "<c r=\"B1\" t=\"inlineStr\"><is><t>hip (cm)</t></is></c></row>"
                + "<row r=\"2\"><c r=\"A2\"><v>8</v></c>"
                + "<c r=\"B2\"><f t=\"shared\" ref=\"B2:B3\" si=\"0\">A2*11.5</f><v>92</v></c></row>"
                + "<row r=\"3\"><c r=\"A3\"><v>10</v></c>"
                + "<c r=\"B3\"><f t=\"shared\" si=\"0\"/></c></row>");

    ReadChart read = ChartReader.read("sizes.xlsx", file);
    assertThat(read.findings())
        .extracting(Finding::code, finding -> finding.origin().orElseThrow().toString())
        .containsExactly(tuple("chart-formula", "sizes.xlsx:3:2"));
    assertThat(values(read.chart().orElseThrow(), "hip")).containsExactly(920, Double.NaN);
  }

  @Test
  void aFractionThatBecameADateIsTold() {
    byte[] file =
        saved(
            sheet -> {
              row(sheet, 0, "size", "ease (in)");
              row(sheet, 1, 8, 45750);
              sheet.style(1, 1).format("d-mmm").set();
            });

    assertThat(codes(file)).containsExactly("chart-date");
  }

  @Test
  void aTableOfTextNamedAsASpreadsheetAndTheOtherWayRound() {
    assertThat(codes("size,hip (cm)\n8,92\n".getBytes(StandardCharsets.UTF_8)))
        .containsExactly("chart-spreadsheet");
    byte[] file =
        saved(
            sheet -> {
              row(sheet, 0, "size", "hip (cm)");
              row(sheet, 1, 8, 92);
            });
    assertThat(values(ChartReader.read("sizes.csv", file).chart().orElseThrow(), "hip"))
        .containsExactly(920);
  }

  @Test
  void aFileThatGrowsWithoutEndIsRefused() {
    StringBuilder blanks = new StringBuilder();
    blanks.append(" ".repeat(40 << 20));
    byte[] bomb = packed(blanks.toString());
    assertThat(bomb.length).isLessThan(ChartReader.MOST_BYTES);
    assertThat(codes(bomb)).containsExactly("chart-spreadsheet");
  }

  @Test
  void whatTheReaderCannotBearIsRefusedBeforeItIsRead() {
    String entities =
        "<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>";
    assertThat(codes(packed(entities + "<row r=\"1\"/>"))).containsExactly("chart-spreadsheet");
    assertThat(codes(packed("<row r=\"1\"><c r=\"FFFFFFF1\"><v>1</v></c></row>")))
        .containsExactly("chart-spreadsheet");
    assertThat(codes(packed("<row r=\"1\"><c r='&#70;FFFFFF1'><v>1</v></c></row>")))
        .containsExactly("chart-spreadsheet");
    assertThat(codes(packed("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>")))
        .containsExactly("chart-too-many");
    assertThat(codes(packed("<row/>".repeat(100_000)))).containsExactly("chart-too-many");
  }

  @Test
  void whateverHappensToAFileItIsReadOrToldOf() {
    SplittableRandom random = new SplittableRandom(11);
    byte[] good =
        saved(
            sheet -> {
              row(sheet, 0, "size", "hip (cm)", "waist (in)");
              row(sheet, 1, 8, 92.5, "29 1/4");
            });
    for (int round = 0; round < 300; round++) {
      byte[] bytes = good.clone();
      for (int change = random.nextInt(1, 4); change > 0; change--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      ReadChart read = ChartReader.read("sizes.xlsx", bytes);
      assertThat(read.chart().isPresent() || !read.findings().isEmpty()).isTrue();
    }
    String rows = "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\"><f>1</f></c></row>";
    for (int round = 0; round < 300; round++) {
      StringBuilder text = new StringBuilder(rows);
      text.setCharAt(random.nextInt(text.length()), (char) random.nextInt(32, 127));
      ReadChart read = ChartReader.read("sizes.xlsx", packed(text.toString()));
      assertThat(read.chart().isPresent() || !read.findings().isEmpty()).isTrue();
    }
  }

  private static SizeChart chart(byte[] file) {
    ReadChart read = ChartReader.read("sizes.xlsx", file);
    assertThat(read.findings()).isEmpty();
    return read.chart().orElseThrow();
  }

  private static List<String> codes(byte[] file) {
    return ChartReader.read("sizes.xlsx", file).findings().stream().map(Finding::code).toList();
  }

  private static double[] values(SizeChart chart, String measurement) {
    return chart.column(measurement).orElseThrow().cells().stream()
        .mapToDouble(cell -> cell.value().orElse(Double.NaN))
        .toArray();
  }

  private static byte[] saved(Consumer<Worksheet> fill) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "test", "1.0")) {
      fill.accept(book.newWorksheet("Sheet1"));
    } catch (IOException problem) {
      throw new AssertionError(problem);
    }
    return out.toByteArray();
  }

  private static void row(Worksheet sheet, int row, Object... cells) {
    for (int x = 0; x < cells.length; x++) {
      if (cells[x] instanceof Number number) {
        sheet.value(row, x, number);
      } else if (cells[x] instanceof String text) {
        sheet.value(row, x, text);
      }
    }
  }

  /** The smallest workbook that holds these rows (ECMA-376 part 1, 18.3 and part 2, 9). */
  private static byte[] packed(String rows) {
    Map<String, String> parts = new LinkedHashMap<>();
    String head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    String relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    String types = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    parts.put(
        "[Content_Types].xml",
        head
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Override PartName=\"/xl/workbook.xml\" ContentType=\""
            + types
            + "sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\""
            + types
            + "styles+xml\"/></Types>");
    parts.put(
        "xl/workbook.xml",
        head
            + "<workbook xmlns=\""
            + main
            + "\" xmlns:r=\""
            + relations
            + "\"><sheets><sheet name=\"Sheet1\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        head
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"rId1\" Type=\""
            + relations
            + "/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>");
    parts.put("xl/styles.xml", head + "<styleSheet xmlns=\"" + main + "\"><cellXfs/></styleSheet>");
    parts.put(
        "xl/worksheets/sheet1.xml",
        head + "<worksheet xmlns=\"" + main + "\"><sheetData>" + rows + "</sheetData></worksheet>");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException problem) {
      throw new AssertionError(problem);
    }
    return out.toByteArray();
  }
}
