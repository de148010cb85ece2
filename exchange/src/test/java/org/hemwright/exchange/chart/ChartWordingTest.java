package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/** Every problem of a chart with its exact sentence and mend. */
class ChartWordingTest {
  private final Wording wording = Wording.of(ChartReader.messages());
  private final Set<String> worded = new TreeSet<>();

  @Test
  void everyProblemSaysWhatIsSoAndWhatWouldMendIt() {
    told(
        "",
        "The chart holds nothing.",
        "Start with a row of headings, such as: size, waist (cm), hip (cm).");
    told(
        "size,hip (cm)\n",
        "The chart has headings and no sizes.",
        "Add a row for each size, its name first.");
    told(
        "x".repeat(ChartReader.MOST_BYTES + 1),
        "The chart is larger than 4 MB, and was not read.",
        "Save the sizes alone in a file of their own, without pictures or other sheets.");
    told(
        "size" + ",x (cm)".repeat(3000) + "\n",
        "The chart has far more rows or columns than any size chart; 400 of each are read at"
            + " most.",
        "Save the sizes alone in a file of their own.");
    told(
        "size,hip (cm)\n8,\"92\n",
        "A quoted cell that starts here is not closed before the next one.",
        "Put a closing quote after the cell's last word, and write a quote inside a cell twice.");
    told(
        "size,waist\n8,73\n",
        "The heading “waist” does not say which unit its numbers are in.",
        "Write the unit after it: waist (cm), waist (in) or waist (mm). For a column of notes,"
            + " start the heading with #.");
    told(
        "size,waist (inches)\n8,29\n",
        "The heading “waist (inches)” names a unit that charts do not use: inches.",
        "Write waist (in). The units are cm, mm, in, deg, % and number.");
    told(
        "size,2nd hip (cm)\n8,29\n",
        "The heading “2nd hip (cm)” cannot be a name in the document, which is a letter and then"
            + " letters, digits and blanks.",
        "Call it hip_2nd (cm), say.");
    told(
        "size,High hip (cm),high-hip (in)\n8,92,36\n",
        "Two headings come to the name high_hip: this one and the one at sizes.csv:1:6.",
        "Rename one of them, or take it out.");
    told(
        "size,hip (cm)\n,92\n8,96\n",
        "This row has no size.",
        "Write the size's name in its first cell, or start the row with # if it is a note.");
    told(
        "size,hip (cm)\n8,92\n8,96\n",
        "The size 8 is in the chart twice: here and at sizes.csv:2:1.",
        "Take one of the two out, or give it a name of its own.");
    told(
        "size,hip (cm)\n8,92,5\n",
        "“5”, in size 8, stands below no heading.",
        "Give the column a heading with its unit; or, if a decimal comma has parted one number in"
            + " two, write a point.");
    told(
        "size,hip (cm)\n14,ninety\n16,96\n",
        "hip in size 14 reads “ninety”, which is no number.",
        "Write it as 96.5 or 38 1/4, in centimetres; leave the cell blank where there is no"
            + " measurement.");
    told(
        "size,hip (cm)\n14,\"92,5\"\n",
        "hip in size 14 reads “92,5”, with a comma where the decimal point belongs.",
        "Write 92.5.");
    told(
        "size,hip (in)\n14,36-1/2\n",
        "hip in size 14 reads “36-1/2”, a fraction written in a way that is not read here.",
        "Write 36 1/2, with a blank before the fraction and a bar in it.");
    told(
        "size,hip (cm)\n14,-92\n",
        "hip in size 14 reads “-92”, and no body measures less than nothing.",
        "Write 92; a change from size to size belongs in the document, as a stepped “let”.");
    told(
        "size,hip (in)\n14,92 cm\n",
        "hip in size 14 reads “92 cm”, while its heading says in.",
        "Write the number in inches, without a unit of its own.");
    told(
        "size,hip (in)\n14,36 1/61\n",
        "hip in size 14 reads “36 1/61”, a fraction that no tape has.",
        "Write halves, quarters, eighths or sixteenths, less than one: are two digits exchanged?");
    told(
        "size,hip (cm)\n14,9200\n",
        "hip in size 14 reads “9200” cm, which is more than any body measures.",
        "Look for a digit too many, a point that is missing, or the wrong unit in the heading.");
    toldOf(
        "sizes.xlsx",
        "size,hip (cm)\n8,92\n".getBytes(StandardCharsets.UTF_8),
        "sizes.xlsx cannot be read as a spreadsheet, or is made in a way that is not safe to"
            + " unpack.",
        "Open it in the spreadsheet program and save it again as .xlsx, or as .csv.");
    toldOf(
        "sizes.csv",
        "size,hip (cm)\nÄ,92\n".getBytes(StandardCharsets.ISO_8859_1),
        "From here on the chart holds letters that are not in UTF-8.",
        "Save it again, and choose “UTF-8” or “CSV UTF-8” as its encoding.");
    worded.addAll(List.of("chart-formula", "chart-date", "chart-more"));

    assertThat(ChartReader.messages().sentences().keySet())
        .as("every sentence is seen here, but for three that SpreadsheetTest and the next test see")
        .isEqualTo(
            worded.stream()
                .flatMap(code -> Stream.of(code + ".message", code + ".mend"))
                .collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void aTableOfTheWrongSortIsToldInAHundredLinesAndACount() {
    String text = "size,hip (cm),waist (cm)\n" + rows(1, 60);

    List<Finding> findings =
        ChartReader.read("sizes.csv", text.getBytes(StandardCharsets.UTF_8)).findings();

    assertThat(findings).hasSize(101);
    assertThat(wording.message(findings.get(100)))
        .isEqualTo("20 more problems of this chart are not listed here.");
    assertThat(wording.mend(findings.get(100)))
        .isEqualTo("Mend the ones above first; one cause often makes many.");
  }

  private static String rows(int from, int upTo) {
    return IntStream.range(from, upTo + 1)
        .mapToObj(size -> "s" + size + ",x,y\n")
        .collect(Collectors.joining());
  }

  private void told(String text, String message, String mend) {
    toldOf("sizes.csv", text.getBytes(StandardCharsets.UTF_8), message, mend);
  }

  private void toldOf(String file, byte[] content, String message, String mend) {
    Finding finding = ChartReader.read(file, content).findings().get(0);
    assertThat(List.of(wording.message(finding), wording.mend(finding)))
        .containsExactly(message, mend);
    worded.add(finding.code());
  }
}
