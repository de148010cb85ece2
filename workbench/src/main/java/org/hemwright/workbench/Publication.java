package org.hemwright.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.hemwright.cloth.yardage.YardageFindings;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.CuttingLayouts;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.workbench.out.Manifest;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.page.ReportPage;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.report.CheckReport;
import org.hemwright.workbench.report.MeasureReport;
import org.hemwright.workbench.report.YardageCsv;
import org.hemwright.workbench.report.YardageHtml;
import org.hemwright.workbench.report.YardageReport;

/**
 * A whole pattern as it is given out: checked, then every file, then the pointer that makes it the
 * current one. Refused while a check fails, unless every page says that it is a proof.
 *
 * @param answers what the checks said
 * @param printed the printable files; none where publishing was refused
 * @param folder where it all stands; absent where publishing was refused
 */
public record Publication(
    List<CheckAnswer> answers, Optional<PrintedPattern> printed, Optional<Path> folder) {
  /** The checks' report beside the printable files. */
  public static final String CHECKS = "checks.json";

  /** The measurements beside the printable files. */
  public static final String MEASUREMENTS = "measurements.json";

  /** What cloth to buy, beside the printable files. */
  public static final String YARDAGE = "yardage";

  public Publication {
    answers = List.copyOf(answers);
  }

  /**
   * Checks and publishes.
   *
   * @param evaluated sound input
   * @param options which files
   * @param yardage lays the pattern on its cloths, once the checks have passed
   * @param out where publications go
   * @throws IOException where the folder cannot be written; what was current stays current
   */
  public static Publication of(
      Evaluated evaluated,
      PaperOptions options,
      Function<Progress, YardageTable> yardage,
      OutFolder out,
      Progress progress)
      throws IOException {
    SizeRun run = evaluated.run().orElseThrow();
    List<CheckAnswer> answers = new ArrayList<>(Workbench.check(evaluated, run));
    if (options.proof().isEmpty() && answers.stream().anyMatch(CheckAnswer::fails)) {
      return new Publication(answers, Optional.empty(), Optional.empty());
    }
    PrintedPattern printed = Workbench.print(run, options, progress);
    boolean broken =
        printed.findings().stream().anyMatch(finding -> finding.status() == Status.FAIL);
    answers.add(new CheckAnswer("paper", printed.findings()));
    if (options.proof().isEmpty() && broken) {
      return new Publication(answers, Optional.empty(), Optional.empty());
    }
    YardageTable table = yardage.apply(progress);
    answers.add(new CheckAnswer("cloth", YardageFindings.of(run, table)));
    List<PrintedFile> files = new ArrayList<>(printed.files());
    files.addAll(CuttingLayouts.pages(run, table));
    PrintedPattern whole = new PrintedPattern(files, printed.findings());
    Path folder = out.publish(manifest(evaluated, run, answers, whole, table));
    return new Publication(answers, Optional.of(whole), Optional.of(folder));
  }

  /** Whether anything was published. */
  public boolean published() {
    return folder.isPresent();
  }

  /** All that the checks found, in their order. */
  public List<Finding> findings() {
    return answers.stream().flatMap(answer -> answer.findings().stream()).toList();
  }

  private static Manifest manifest(
      Evaluated evaluated,
      SizeRun run,
      List<CheckAnswer> answers,
      PrintedPattern printed,
      YardageTable table) {
    SortedMap<String, byte[]> made = new TreeMap<>();
    for (PrintedFile file : printed.files()) {
      made.put(file.name(), file.bytes());
    }
    Wording wording = Workbench.wording(Optional.of(run));
    made.put(
        CHECKS,
        utf8(
            CheckReport.json(
                run, answers, evaluated.problems(), Workbench.samples(evaluated, run), wording)));
    made.put(ReportPage.FILE, utf8(Workbench.page(run, answers, evaluated)));
    made.put(MEASUREMENTS, utf8(MeasureReport.json(Measurements.of(run), Workbench.body(run))));
    made.put(
        YARDAGE + ".json",
        utf8(
            YardageReport.json(
                table, YardageFindings.of(run, table), OptionalDouble.empty(), wording)));
    made.put(YARDAGE + ".csv", utf8(YardageCsv.of(table)));
    made.put(YARDAGE + ".html", utf8(YardageHtml.of(run, table)));
    Details details = run.pattern().details();
    return new Manifest(
        details.title(), details.version(), details.dated().toString(), made, evaluated.sources());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
