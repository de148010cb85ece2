package org.hemwright.exchange.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.sample.SampleEntry;
import org.junit.jupiter.api.Test;

/** The log as the language guide describes it; every slip with its line and column. */
class SampleLogReaderTest {
  private static final String HEADINGS =
      "date,size,fabric,where,pinned out (cm),let out (cm),drafted (cm),note\n";

  private static ReadSamples read(String text) {
    return SampleLogReader.read("samples.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> told(String text) {
    Wording wording = Wording.of(SampleLogReader.messages());
    return read(text).findings().stream()
        .map(found -> found.origin().orElseThrow() + " " + wording.message(found))
        .toList();
  }

  @Test
  void everyColumnIsRead() {
    ReadSamples read =
        read(
            "# notes\n"
                + HEADINGS
                + "2026-10-02,16,ponte,panel.side,1,,49,\"Long, and wide\"\n\n"
                + "2026-10-03,18,,hip,,1.5,,\n");

    assertThat(read.findings()).isEmpty();
    SampleEntry first = read.log().entries().get(0);
    assertThat(first.date()).isEqualTo(LocalDate.of(2026, 10, 2));
    assertThat(first.asked()).isEqualTo(-10);
    assertThat(first.drafted()).isEqualTo(OptionalDouble.of(490));
    assertThat(first.note()).isEqualTo("Long, and wide");
    assertThat(first.origin().line()).isEqualTo(3);
    assertThat(first.whereAt().column()).isEqualTo(21);
    assertThat(read.log().entries().get(1).asked()).isEqualTo(15);
  }

  @Test
  void inchesWithFractionsAnyOrderSemicolonsAndColumnsOfHerOwn() {
    ReadSamples read =
        read(
            """
            Where;Size;Date;#who;Let out (in);Pinned-out (mm)
            front.hem;14;2026-10-02;Ann;1 1/2;
            hip;14;2026-10-02;Bo;;2,5
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.log().entries())
        .extracting(SampleEntry::asked)
        .allSatisfy(mm -> assertThat(Math.abs(mm)).isIn(1.5 * 25.4, 2.5));
  }

  @Test
  void eachSlipIsToldInItsPlaceAndTheOtherLinesAreRead() {
    ReadSamples read =
        read(HEADINGS + "02.10.2026,16,,hip,1,,,\n2026-10-02,16,,hip,1,,,\n2026-13-02,,,,x,-1,,\n");

    assertThat(read.log().entries()).hasSize(1);
    assertThat(read.findings()).extracting(Finding::status).containsOnly(Status.WARN);
    assertThat(read.findings())
        .extracting(found -> found.code() + " " + found.origin().orElseThrow())
        .containsExactly(
            "sample-date samples.csv:2:1",
            "sample-date samples.csv:4:1",
            "sample-blank samples.csv:4:12",
            "sample-blank samples.csv:4:14",
            "sample-number samples.csv:4:15",
            "sample-negative samples.csv:4:17");
  }

  @Test
  void whatIsAmissIsSaidInWords() {
    assertThat(told("date,size\n2026-10-02,16\n"))
        .containsExactly("samples.csv:1:1 The sample log has no column for where.");
    assertThat(told("date,size,where,pined out (cm),let out\n"))
        .containsExactly(
            "samples.csv:1:17 The sample log has no use for a column “pined out (cm)”.",
            "samples.csv:1:32 The heading “let out” does not say in which unit its lengths are.");
    assertThat(told(HEADINGS + "2026-10-02,16,ponte,hip,1,2,,\n"))
        .containsExactly(
            "samples.csv:2:27 This line says that the place was both pinned out and let out.");
    assertThat(told(HEADINGS + "2026-10-02,16,ponte,hip,1,,,long, and wide\n"))
        .containsExactly("samples.csv:2:35 “and wide” stands below no heading.");
    assertThat(told(HEADINGS + ",16,ponte,hip,1,,,\n"))
        .containsExactly("samples.csv:2:1 This line has no date.");
    assertThat(told(HEADINGS + "2026-10-02,16,\"ponte,hip,1,,,\n"))
        .contains(
            "samples.csv:2:15 A quoted cell that starts here is not closed, and what follows it was"
                + " not read.");
    assertThat(told("date,date,size,where\n"))
        .containsExactly("samples.csv:1:6 The column “date” is there twice.");
    assertThat(SampleLogReader.read("samples.csv", new byte[] {'d', (byte) 0xE4, 't'}).findings())
        .extracting(Finding::code)
        .contains("sample-encoding");
  }

  @Test
  void anEmptyLogHasNothingToTell() {
    assertThat(read("").findings()).isEmpty();
    assertThat(read(HEADINGS).log().entries()).isEmpty();
  }
}
