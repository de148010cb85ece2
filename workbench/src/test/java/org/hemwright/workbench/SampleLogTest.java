package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.report.CheckReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sample log beside the eddy skirt, answered as its document changes. */
class SampleLogTest {
  private static final Path SKIRT = Path.of("..", "examples", "eddy-skirt");
  private static final String HEADINGS =
      "date,size,fabric,where,pinned out (cm),let out (cm),drafted (cm),note\n";

  @TempDir Path folder;

  private Evaluated with(String log, String was, String is) throws IOException {
    String text = Files.readString(SKIRT.resolve("pattern.hem"));
    assertThat(text).contains(was);
    Files.writeString(folder.resolve("pattern.hem"), text.replace(was, is));
    Files.copy(
        SKIRT.resolve("sizes.csv"),
        folder.resolve("sizes.csv"),
        StandardCopyOption.REPLACE_EXISTING);
    Files.writeString(folder.resolve("samples.csv"), log);
    return Workbench.evaluate(new DiskFolder(folder));
  }

  private List<String> standings(String log, String was, String is) throws IOException {
    Evaluated evaluated = with(log, was, is);
    return Workbench.samples(evaluated, evaluated.run().orElseThrow()).stream()
        .map(SampleAnswer::standing)
        .map(Enum::name)
        .toList();
  }

  @Test
  void aLineTellsWhetherItsPlaceHasChangedAndWhichWay() throws IOException {
    String log =
        HEADINGS
            + "2026-10-02,16,ponte,short panel.side,2,,48,\n"
            + "2026-10-02,16,ponte,short_panel.side,4,,48,\n"
            + "2026-10-02,16,ponte,short_panel.side,0.5,,48,\n"
            + "2026-10-02,16,ponte,short_panel.side,,2,48,\n"
            + "2026-10-02,16,ponte,short_panel.side,,,48,\n"
            + "2026-10-02,16,ponte,short_panel.side,2,,,\n"
            + "2026-10-02,16,ponte,long_panel.side,1,,68,\n"
            + "2026-10-02,16,ponte,short_length,2,,48,\n"
            + "2026-10-02,16,ponte,short_panel.hem allowance,,1,1.5,\n";

    assertThat(standings(log, "dial short_length  = 48 cm", "dial short_length  = 46 cm"))
        .containsExactly(
            "AS_ASKED",
            "LESS",
            "MORE",
            "OTHER_WAY",
            "CHANGED",
            "NOT_KNOWN",
            "AS_IT_WAS",
            "AS_ASKED",
            "AS_IT_WAS");
  }

  @Test
  void girthsAndElasticsArePlacesToo() throws IOException {
    String log =
        HEADINGS
            + "2026-10-02,16,ponte,A.hip,,1,149.46,\n"
            + "2026-10-02,16,ponte,waist_elastic,3,,77.4,\n";

    assertThat(standings(log, "length 90% of waist", "length 86.5% of waist"))
        .containsExactly("AS_IT_WAS", "AS_ASKED");
  }

  @Test
  void whatIsNotThereIsToldWithItsLineAndColumnAndFailsNothing() throws IOException {
    Evaluated evaluated =
        with(
            HEADINGS
                + "2026-10-02,17,ponte,short_panel.side,1,,48,\n"
                + "2026-10-02,16,ponte,short_panel.sied,1,,48,\n"
                + "yesterday,16,ponte,short_panel.side,1,,48,\n",
            "version 1.0",
            "version 1.1");
    SizeRun run = evaluated.run().orElseThrow();
    List<CheckAnswer> answers = Workbench.check(evaluated, run);
    CheckAnswer log = answers.get(answers.size() - 1);

    assertThat(log.id()).isEqualTo("sample-log");
    assertThat(log.fails()).isFalse();
    assertThat(log.findings())
        .extracting(Finding::code, found -> found.origin().orElseThrow().toString())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("sample-size-unknown", "samples.csv:2:12"),
            org.assertj.core.groups.Tuple.tuple("sample-place-unknown", "samples.csv:3:21"),
            org.assertj.core.groups.Tuple.tuple("sample-date", "samples.csv:4:1"));
    assertThat(Workbench.wording(evaluated.run()).mend(log.findings().get(1)))
        .contains("short_panel.side");
  }

  @Test
  void theReportsHaveItAndAFolderWithoutALogDoesNot() throws IOException {
    Evaluated evaluated =
        with(
            HEADINGS + "2026-10-02,16,<b>ponte</b>,short_panel.side,1,,49,too long\n",
            "version 1.0",
            "version 1.1");
    SizeRun run = evaluated.run().orElseThrow();
    List<CheckAnswer> answers = Workbench.check(evaluated, run);

    assertThat(
            CheckReport.json(
                run,
                answers,
                evaluated.problems(),
                Workbench.samples(evaluated, run),
                Workbench.wording(evaluated.run())))
        .contains("\"since\" : \"as-asked\"", "\"asked_mm\" : -10", "\"changed_mm\" : -10");
    assertThat(Workbench.page(run, answers, evaluated, Optional.empty()))
        .contains("Changed since, as asked: it was 49 cm and is 48 cm", "too long")
        .doesNotContain("<b>ponte");

    Evaluated without = Workbench.evaluate(new DiskFolder(SKIRT));
    assertThat(Workbench.check(without, run))
        .extracting(CheckAnswer::id)
        .doesNotContain("sample-log");
    assertThat(Workbench.samples(without, run)).isEmpty();
  }
}
