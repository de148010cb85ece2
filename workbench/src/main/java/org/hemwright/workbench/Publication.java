package org.hemwright.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.BookletOptions;
import org.hemwright.booklet.post.Posts;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageFindings;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.CuttingLayouts;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.workbench.out.MadeFile;
import org.hemwright.workbench.out.MadeFile.Reader;
import org.hemwright.workbench.out.Manifest;
import org.hemwright.workbench.out.Upload;
import org.hemwright.workbench.page.ReportPage;
import org.hemwright.workbench.page.YardagePage;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.report.CheckReport;
import org.hemwright.workbench.report.MeasureReport;
import org.hemwright.workbench.report.YardageCsv;
import org.hemwright.workbench.report.YardageReport;

/**
 * A whole pattern as it is given out: checked, then every file, then the pointer that makes it the
 * current one, and where it is a release the frozen version. Refused while a check fails, unless
 * every page says that it is a proof.
 *
 * @param answers what the checks said
 * @param printed the printable files; none where publishing was refused
 * @param manifest what it consists of; absent where publishing was refused
 * @param folder where it all stands; absent where publishing was refused
 * @param zip the name in there of what makers download; absent for a proof
 * @param release the folder of the frozen version; absent unless one was asked for
 */
public record Publication(
    List<CheckAnswer> answers,
    Optional<PrintedPattern> printed,
    Optional<Manifest> manifest,
    Optional<Path> folder,
    Optional<String> zip,
    Optional<Path> release) {
  /** The checks' report beside the printable files. */
  public static final String CHECKS = "checks.json";

  /** The measurements beside the printable files. */
  public static final String MEASUREMENTS = "measurements.json";

  /** What cloth to buy, beside the printable files. */
  public static final String YARDAGE = "yardage";

  /** What changed since the last release, for those who own it; the old version follows. */
  public static final String CHANGES = "changes-since-";

  /** The pictures to show, in a folder of their own. */
  private static final String PICTURES = "pictures/";

  /** How the time goes, as shares of the whole. */
  private static final double PRINTED = 0.25;

  private static final double LAID = 0.6;
  private static final double TOLD = 0.95;

  public Publication {
    answers = List.copyOf(answers);
  }

  /**
   * Checks and publishes.
   *
   * @param evaluated sound input, in all sizes
   * @param run the sizes to publish
   * @throws IOException where the folder cannot be written; what was current stays current
   */
  public static Publication of(
      Evaluated evaluated, SizeRun run, PublishOrder order, Progress progress) throws IOException {
    Stages stages = new Stages(progress);
    stages.stage("asking every check", 0, 0).step("", 0, 1);
    List<CheckAnswer> answers = new ArrayList<>(Workbench.check(evaluated, run));
    order
        .shelf()
        .ifPresent(
            shelf -> answers.add(new CheckAnswer("release", Releasing.judge(evaluated, shelf))));
    if (isRefused(order, answers)) {
      return refused(answers);
    }
    PrintedPattern printed =
        Workbench.print(evaluated, run, order.options(), stages.stage("drawing pages", 0, PRINTED));
    answers.add(new CheckAnswer("paper", printed.findings()));
    if (isRefused(order, answers)) {
      return refused(answers);
    }
    YardageTable table = order.yardage().apply(stages.stage("laying on cloth", PRINTED, LAID));
    answers.add(new CheckAnswer("cloth", YardageFindings.of(run, table)));
    if (isRefused(order, answers)) {
      return refused(answers);
    }
    List<PrintedFile> files = new ArrayList<>(printed.files());
    files.addAll(
        CuttingLayouts.pages(
            run, table, order.options().proof(), Branding.house(evaluated).type()));
    stages.stage("writing the booklet", LAID, TOLD).step("", 0, 1);
    BookletMaking booklet = Workbench.booklet(evaluated, run, Optional.of(table), files, "");
    answers.add(new CheckAnswer("booklet", booklet.findings()));
    if (isRefused(order, answers)) {
      return refused(answers);
    }
    files.addAll(booklet.files(BookletOptions.USUAL, order.options().proof()));
    files.addAll(booklet.posts(order.options().proof()));
    PrintedPattern whole = new PrintedPattern(files, printed.findings());
    List<MadeFile> made = made(evaluated, run, answers, whole, table, order.options().proof());
    if (!order.proof()) {
      Progress last = stages.stage("writing", TOLD, 1);
      last.step("comparing with the last release", 0, 1);
      order
          .shelf()
          .filter(shelf -> run.sizes().equals(evaluated.run().orElseThrow().sizes()))
          .flatMap(shelf -> Releasing.changes(run, shelf, order.options()))
          .ifPresent(made::add);
    }
    Optional<MadeFile> zip = order.proof() ? Optional.empty() : Optional.of(zip(run, made));
    zip.ifPresent(made::add);
    Manifest manifest = manifest(evaluated, run, made);
    Path folder = order.out().publish(manifest);
    Optional<Path> release = Optional.empty();
    if (order.release()) {
      release = Optional.of(Releasing.freeze(evaluated, manifest, order.shelf().orElseThrow()));
    }
    return new Publication(
        answers,
        Optional.of(whole),
        Optional.of(manifest),
        Optional.of(folder),
        zip.map(MadeFile::name),
        release);
  }

  private static boolean isRefused(PublishOrder order, List<CheckAnswer> answers) {
    return !order.proof() && answers.stream().anyMatch(CheckAnswer::fails);
  }

  private static Publication refused(List<CheckAnswer> answers) {
    return new Publication(
        answers,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Whether anything was published. */
  public boolean published() {
    return folder.isPresent();
  }

  /** All that the checks found, in their order. */
  public List<Finding> findings() {
    return answers.stream().flatMap(answer -> answer.findings().stream()).toList();
  }

  private static List<MadeFile> made(
      Evaluated evaluated,
      SizeRun run,
      List<CheckAnswer> answers,
      PrintedPattern printed,
      YardageTable table,
      Optional<String> proof) {
    List<MadeFile> made = new ArrayList<>();
    for (PrintedFile file : printed.files()) {
      boolean shown = file.name().startsWith(PICTURES) || Posts.isHers(file.name());
      made.add(
          new MadeFile(
              file.name(),
              shown ? Reader.DESIGNER : Reader.MAKER,
              file.bytes(),
              file.paper().isBlank() ? 0 : file.pages()));
    }
    Wording wording = Workbench.wording(Optional.of(run));
    made.add(
        hers(
            CHECKS,
            CheckReport.json(
                run, answers, evaluated.problems(), Workbench.samples(evaluated, run), wording)));
    made.add(hers(ReportPage.FILE, Workbench.page(run, answers, evaluated, proof)));
    made.add(
        hers(
            MEASUREMENTS,
            MeasureReport.json(Measurements.of(run), Workbench.body(run), Workbench.notions(run))));
    OwnCloth none = OwnCloth.UNSAID;
    LeftOvers left = LeftOvers.of(run, table, none.length());
    List<Finding> narrow = YardageFindings.of(run, table);
    made.add(hers(YARDAGE + ".json", YardageReport.json(table, narrow, none, left, wording)));
    made.add(hers(YARDAGE + ".csv", YardageCsv.of(table, none, left, narrow, wording)));
    made.add(
        hers(YARDAGE + ".html", YardagePage.html(run, table, none, left, narrow, wording, proof)));
    return made;
  }

  private static MadeFile hers(String name, String text) {
    return new MadeFile(name, Reader.DESIGNER, utf8(text), 0);
  }

  private static MadeFile zip(SizeRun run, List<MadeFile> made) {
    Details details = run.pattern().details();
    String stem = Paper.stem(run);
    List<MadeFile> packed = made.stream().filter(file -> file.reader() == Reader.MAKER).toList();
    byte[] bytes = Upload.zip(stem, packed, details.dated());
    return new MadeFile(stem + ".zip", Reader.MAKER, bytes, 0);
  }

  private static Manifest manifest(Evaluated evaluated, SizeRun run, List<MadeFile> made) {
    Details details = run.pattern().details();
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("sizes", run.sizes().size());
    counts.put("pieces", run.pattern().pieces().size());
    counts.put("views", run.pattern().views().size());
    return new Manifest(
        details.title(),
        details.version(),
        details.dated().toString(),
        Program.VERSION,
        counts,
        made,
        evaluated.sources());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
