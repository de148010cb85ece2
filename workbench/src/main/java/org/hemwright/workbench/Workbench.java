package org.hemwright.workbench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.post.Feedback;
import org.hemwright.booklet.prose.ProseReader;
import org.hemwright.checks.Acceptances;
import org.hemwright.checks.BodyTable;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageFindings;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.draft.Drafting;
import org.hemwright.draft.plan.Drawn;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.exchange.chart.ReadChart;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.exchange.dxf.DxfWriter;
import org.hemwright.exchange.dxf.RuleFile;
import org.hemwright.exchange.photograph.PhotographReader;
import org.hemwright.exchange.rule.RuleTableReader;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.exchange.sample.ReadSamples;
import org.hemwright.exchange.sample.SampleLogReader;
import org.hemwright.paper.LinesApartCheck;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.paper.Printing;
import org.hemwright.paper.nest.WordsFitCheck;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.pattern.sample.SampleAnswers;
import org.hemwright.pattern.sample.SampleLog;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.workbench.advise.Advice;
import org.hemwright.workbench.advise.Advising;
import org.hemwright.workbench.folder.FolderReading;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.page.Report;
import org.hemwright.workbench.page.ReportPage;
import org.hemwright.workbench.release.Release;
import org.hemwright.workbench.release.ReleaseReading;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.tailor.Tailored;

/**
 * The flow, from a pattern folder to all that is made from it.
 *
 * <pre>
 *   folder ─► document + chart ─► SizeRun ─┬─► checks ─► findings
 *                                          ├─► cloth  ─► layings and what to buy
 *                                          └─► paper  ─► files
 * </pre>
 *
 * <p>It is long because it is the one place where all stages meet: each method is a step of the
 * flow that the command line and the workroom both take, and holds no reckoning of its own.
 */
public final class Workbench {
  /** Every check, in the order in which they are told. A check that is not here does not run. */
  private static final List<Check> CHECKS =
      Stream.concat(
              StandardChecks.with(CheckSettings.HANDBOOK).stream(),
              Stream.of(WordsFitCheck.USUAL, LinesApartCheck.USUAL))
          .toList();

  /** The answer in which bad lines of the sample log are told. */
  private static final String SAMPLES = "sample-log";

  private Workbench() {}

  /**
   * Reads a folder, also what goes into its booklet, and drafts every piece in every size. The
   * folder of a release is not drafted anew: it gives the run that was frozen.
   */
  public static Evaluated evaluate(PatternFolder folder) {
    if (ReleaseReading.isRelease(folder)) {
      return released(folder);
    }
    return withBooklet(draft(folder).evaluated(), folder);
  }

  /**
   * What a folder was drafted to, with what goes into its booklet.
   *
   * @param drafted what the folder's document and chart came to
   */
  public static Evaluated withBooklet(Evaluated drafted, PatternFolder folder) {
    List<Finding> problems = new ArrayList<>(drafted.problems());
    FolderReading reading = new FolderReading(folder, problems);
    reading.forBooklet();
    reading.beside(OwnLayings.FILE);
    Branding.fonts(drafted.sources(), reading);
    SortedMap<String, byte[]> sources = new TreeMap<>(drafted.sources());
    sources.putAll(reading.read());
    problems.addAll(Branding.problems(sources));
    return new Evaluated(drafted.run(), problems, sources);
  }

  private static Evaluated released(PatternFolder folder) {
    List<Finding> problems = new ArrayList<>();
    Optional<Release> release = ReleaseReading.of(folder, problems);
    return new Evaluated(
        release.map(Release::run), problems, release.map(Release::sources).orElseGet(TreeMap::new));
  }

  /** The same, with the plan and its values, so that a number may be changed and drawn again. */
  public static LiveDraft draft(PatternFolder folder) {
    return draft(folder, UnaryOperator.identity());
  }

  /**
   * Drafts a folder for one body: a run of that body alone, under its own name. Of a release, the
   * document and the chart as they were released, evaluated by this program.
   *
   * @param body takes the place of a size that the chart has
   */
  public static Evaluated tailor(PatternFolder folder, Tailored body) {
    Evaluated drafted = draft(folder, body::in).evaluated();
    List<Finding> problems =
        drafted.problems().stream()
            .filter(each -> each.sizes().isEmpty() || each.sizes().contains(body.place()))
            .toList();
    FolderReading reading = new FolderReading(folder, new ArrayList<>());
    reading.forBooklet();
    SortedMap<String, byte[]> sources = new TreeMap<>(drafted.sources());
    sources.putAll(reading.read());
    boolean whole = problems.stream().noneMatch(each -> each.status() == Status.FAIL);
    Optional<SizeRun> run = whole ? drafted.run().map(body::named) : Optional.empty();
    return new Evaluated(run, problems, sources);
  }

  /** What the checks find in the pieces of one body; what they say of the chart is left out. */
  public static List<Finding> checkTailored(SizeRun run) {
    String chart = run.pattern().chart().file();
    List<String> sizes = run.sizes().stream().map(sized -> sized.size().name()).toList();
    return check(run).stream()
        .flatMap(answer -> answer.findings().stream())
        .filter(each -> each.origin().filter(at -> at.file().equals(chart)).isEmpty())
        .filter(each -> each.sizes().isEmpty() || each.sizes().equals(sizes))
        .filter(each -> each.status() == Status.FAIL || each.status() == Status.WARN)
        .toList();
  }

  /** Reads a chart that is none of the pattern's. */
  public static Optional<SizeChart> readChart(String file, byte[] bytes, List<Finding> problems) {
    ReadChart read = ChartReader.read(file, bytes);
    problems.addAll(read.findings());
    return read.chart();
  }

  private static LiveDraft draft(PatternFolder folder, UnaryOperator<SizeChart> changed) {
    List<Finding> problems = new ArrayList<>();
    FolderReading reading = new FolderReading(folder, problems);
    Optional<String> text = reading.document();
    if (text.isEmpty()) {
      return new LiveDraft(
          Optional.empty(),
          Optional.empty(),
          new Evaluated(Optional.empty(), problems, reading.read()));
    }
    reading.beside(SampleLog.FILE);
    Document document = DocumentReader.read(PatternFolder.DOCUMENT, text.get());
    Optional<SizeChart> chart = chart(document, reading, problems).map(changed);
    Optional<Evaluation> values = Optional.empty();
    Optional<SizeRun> run = Optional.empty();
    problems.addAll(document.findings());
    if (chart.isPresent()) {
      TracedInputs traced = TracedReading.of(document, reading, problems);
      Planned planned = Plan.of(document, chart.get(), traced);
      problems.addAll(planned.findings());
      Evaluation evaluation = planned.plan().evaluate();
      Drawn drawn = evaluation.drawn();
      problems.addAll(drawn.findings());
      values = Optional.of(evaluation);
      run = Optional.of(drawn.run());
    }
    List<String> sizes =
        chart.stream().flatMap(each -> each.sizes().stream()).map(Size::name).toList();
    List<Finding> told = new FindingOrder(sizes).of(problems);
    return new LiveDraft(Optional.of(document), values, new Evaluated(run, told, reading.read()));
  }

  /** The chart that the document names, read from the folder. */
  private static Optional<SizeChart> chart(
      Document document, FolderReading reading, List<Finding> problems) {
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.SizesFrom sizes) {
        return reading
            .bytes(sizes.file(), Source.of(document).origin(sizes.span()))
            .flatMap(
                bytes -> {
                  ReadChart read = ChartReader.read(sizes.file(), bytes);
                  problems.addAll(read.findings());
                  return read.chart();
                });
      }
    }
    return Optional.empty();
  }

  /**
   * Asks every check of the pattern and, where pieces may be cut apart for narrow cloth, of each
   * way in which they are; what was told of the whole is not told of its parts again. And last,
   * where the document accepts findings, asks whether it does so in vain.
   */
  public static List<CheckAnswer> check(SizeRun run) {
    FindingOrder order = new FindingOrder(sizeNames(run));
    Acceptances accepted = Acceptances.of(run);
    Map<String, Set<Finding>> asked = new LinkedHashMap<>();
    for (Check check : CHECKS) {
      ask(check, run, accepted, Set.of(), asked);
    }
    Set<Cause> told = causes(asked);
    for (SplitChoice choice : SplitChoice.declared(run)) {
      SizeRun parts = SplitRun.of(run, List.of(choice));
      Acceptances judged = Acceptances.of(parts);
      for (Check check : CHECKS) {
        if (check.asksOfParts()) {
          ask(check, parts, judged, told, asked);
        }
      }
    }
    List<CheckAnswer> answers = new ArrayList<>();
    Map<String, List<Finding>> found = new LinkedHashMap<>();
    asked.forEach(
        (id, findings) -> {
          found.put(id, List.copyOf(findings));
          answers.add(new CheckAnswer(id, order.of(found.get(id))));
        });
    if (!run.pattern().acceptances().isEmpty()) {
      answers.add(new CheckAnswer(Acceptances.ID, order.of(accepted.idle(found))));
    }
    return List.copyOf(answers);
  }

  /** What is wrong, at which line, in which sizes: whatever pieces stand for it. */
  private record Cause(String code, Optional<Origin> origin, List<String> sizes) {
    static Cause of(Finding finding) {
      return new Cause(finding.code(), finding.origin(), finding.sizes());
    }
  }

  private static Set<Cause> causes(Map<String, Set<Finding>> asked) {
    Set<Cause> causes = new HashSet<>();
    for (Set<Finding> findings : asked.values()) {
      for (Finding finding : findings) {
        if (finding.origin().isPresent()) {
          causes.add(Cause.of(finding));
        }
      }
    }
    return causes;
  }

  /** Notes what a check finds, but for what was told already. */
  private static void ask(
      Check check,
      SizeRun run,
      Acceptances accepted,
      Set<Cause> told,
      Map<String, Set<Finding>> asked) {
    Set<Finding> found = asked.computeIfAbsent(check.id(), id -> new LinkedHashSet<>());
    for (Finding finding : accepted.judged(check.id(), check.check(run))) {
      if (!told.contains(Cause.of(finding))) {
        found.add(finding);
      }
    }
  }

  /**
   * Asks every check, and after them what the pattern's sample log says, where it has one.
   *
   * @param evaluated what the folder came to
   * @param run all of its sizes, or some
   */
  public static List<CheckAnswer> check(Evaluated evaluated, SizeRun run) {
    List<CheckAnswer> answers = new ArrayList<>(check(run));
    readSamples(evaluated)
        .ifPresent(
            read -> {
              List<Finding> findings = new ArrayList<>(read.findings());
              findings.addAll(SampleAnswers.of(read.log(), run).findings());
              findings.sort(Comparator.comparing(each -> each.origin().orElseThrow()));
              answers.add(new CheckAnswer(SAMPLES, findings));
            });
    return List.copyOf(answers);
  }

  /** What has come of each note of the sample log; none where the pattern has no log. */
  public static List<SampleAnswer> samples(Evaluated evaluated, SizeRun run) {
    return readSamples(evaluated)
        .map(read -> SampleAnswers.of(read.log(), run).answers())
        .orElse(List.of());
  }

  private static Optional<ReadSamples> readSamples(Evaluated evaluated) {
    return Optional.ofNullable(evaluated.sources().get(SampleLog.FILE))
        .map(bytes -> SampleLogReader.read(SampleLog.FILE, bytes));
  }

  /** What every view takes beside the cloth, in every size. */
  public static List<Notions> notions(SizeRun run) {
    return Notions.all(run, NotionSettings.HANDBOOK);
  }

  /** How the garment goes round the body, in every size. */
  public static BodyTable body(SizeRun run) {
    return BodyTable.of(run, CheckSettings.HANDBOOK);
  }

  /**
   * Which size a body takes, how it will fit, and what to change.
   *
   * @param body lengths (mm) by the chart's names, at least one
   */
  public static Advice advise(SizeRun run, Map<String, Double> body) {
    return Advising.of(run, body(run), body);
  }

  /**
   * The report of the checks as one page for the designer.
   *
   * @param proof the word that marks it, if anything does
   */
  public static String page(
      SizeRun run, List<CheckAnswer> answers, Evaluated evaluated, Optional<String> proof) {
    return ReportPage.html(
        new Report(
            run,
            answers,
            evaluated.problems(),
            Coverage.of(run.pattern().chart(), run.pattern().details().wearers()),
            body(run),
            samples(evaluated, run),
            evaluated.sources(),
            wording(Optional.of(run)),
            CheckSettings.HANDBOOK.sewing().seamWarn(),
            CheckSettings.HANDBOOK.sewing().seamFail(),
            proof));
  }

  /**
   * The printable files with the house's logo and fonts, not made yet: their pages can be looked
   * at.
   */
  public static Printing printing(Evaluated evaluated, SizeRun run, PaperOptions options) {
    return Printing.of(run, options.withHouse(Branding.house(evaluated)));
  }

  /**
   * Makes the printable files with the house's logo and fonts; one step of progress for each file.
   */
  public static PrintedPattern print(
      Evaluated evaluated, SizeRun run, PaperOptions options, Progress progress) {
    return print(run, options.withHouse(Branding.house(evaluated)), progress);
  }

  /** Makes the printable files; one step of progress for each file. */
  public static PrintedPattern print(SizeRun run, PaperOptions options, Progress progress) {
    PrintedPattern printed = Printing.of(run, options).make(progress::step);
    progress.step("", printed.files().size(), printed.files().size());
    return printed;
  }

  /**
   * The pieces as DXF with their rule table, for other tools, a warning where rules are left out.
   */
  public static PrintedPattern dxf(SizeRun run) {
    DxfWriter.Written written = DxfWriter.write(run);
    List<PrintedFile> files =
        written.files().stream()
            .map(file -> new PrintedFile(file.name(), "", file.bytes(), 1, List.of()))
            .toList();
    List<Finding> findings = new ArrayList<>();
    if (!written.withoutRules().isEmpty()) {
      findings.add(
          Finding.warn("dxf-rules-left-out", written.files().get(0).name())
              .with("pieces", Argument.of(written.withoutRules()))
              .build());
    }
    return new PrintedPattern(files, findings);
  }

  /**
   * Lays every view on every cloth, and takes the layings that the designer arranged by hand where
   * they still hold; see {@link OwnLayings}.
   */
  public static YardageTable yardage(
      Evaluated evaluated,
      SizeRun run,
      YardageRequest request,
      LayingStore store,
      Progress progress) {
    byte[] kept = evaluated.sources().get(OwnLayings.FILE);
    if (kept == null) {
      return yardage(run, request, store, progress);
    }
    OwnLayings own = OwnLayings.read(new String(kept, StandardCharsets.UTF_8));
    if (request.shrinkAcross() > 0 || request.shrinkAlong() > 0) {
      return own.setAside(yardage(run, request, store, progress));
    }
    YardageTable all = own.applied(yardage(run, withSold(run, request), store, progress));
    return request.widths().isEmpty() ? all : all.on(request.widths());
  }

  /** What is asked about other widths stands beside those sold, whose layings are handed on. */
  private static YardageRequest withSold(SizeRun run, YardageRequest request) {
    if (request.widths().isEmpty()) {
      return request;
    }
    List<Double> widths = new ArrayList<>(request.widths());
    run.pattern().fabrics().forEach(fabric -> widths.addAll(fabric.widths()));
    return request.onWidths(widths);
  }

  /** Lays every view on every cloth; see {@link YardageTable}. */
  public static YardageTable yardage(
      SizeRun run, YardageRequest request, LayingStore store, Progress progress) {
    return YardageTable.of(
        run,
        request,
        store,
        (done, of) -> {
          synchronized (progress) {
            progress.step("", done, of);
          }
        });
  }

  /**
   * Makes the booklet.
   *
   * @param evaluated whose texts and pictures stand in it
   * @param run the sizes that it is for
   * @param yardage what cloth they take, where it was laid
   * @param printed the printed files, where they were made
   * @param language a tag; blank for the document's own spelling
   */
  public static BookletMaking booklet(
      Evaluated evaluated,
      SizeRun run,
      Optional<YardageTable> yardage,
      List<PrintedFile> printed,
      String language) {
    return BookletMaking.of(
        BookletSources.input(
            evaluated.sources(), run, yardage, printed, Branding.house(evaluated).type()),
        language);
  }

  /** Makes sentences of every finding that any stage may give, in the document's units. */
  public static Wording wording(Optional<SizeRun> run) {
    Wording wording =
        Wording.of(
            Wording.patternMessages(),
            ChartReader.messages(),
            SizeRunJson.messages(),
            DrawingReader.messages(),
            PhotographReader.messages(),
            RuleTableReader.messages(),
            RuleFile.messages(),
            SampleLogReader.messages(),
            Drafting.messages(),
            StandardChecks.messages(),
            Laying.messages(),
            YardageFindings.messages(),
            OwnLayings.messages(),
            Paper.messages(),
            ProseReader.messages(),
            Feedback.messages(),
            FolderReading.messages(),
            ReleaseShelf.messages(),
            Advising.messages(),
            Messages.beside(Workbench.class, "workbench.properties"));
    return run.map(
            known ->
                wording.overSizes(sizeNames(known)).showing(known.pattern().details().lengths()))
        .orElse(wording);
  }

  /**
   * Makes sentences of what changed between two versions, over the sizes and in the units of the
   * new.
   */
  public static Wording compareWording(SizeRun now) {
    return Wording.of(Comparison.messages())
        .overSizes(sizeNames(now))
        .showing(now.pattern().details().lengths());
  }

  private static List<String> sizeNames(SizeRun run) {
    return run.pattern().chart().sizes().stream().map(Size::name).toList();
  }
}
