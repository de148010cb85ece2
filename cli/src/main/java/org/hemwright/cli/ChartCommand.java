package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.chart.BroughtChart;
import org.hemwright.workbench.chart.ChartAnswers;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.ChartReport;
import org.hemwright.workbench.starter.Starter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings in a chart in the shape its owner has it. */
@Command(
    name = "chart",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Bring in your own size chart: what each heading is taken for, then the chart.",
    footer = {
      "",
      "FILE is a spreadsheet (.xlsx) or text (.csv), sizes across or down, with your own headings;",
      "a single - reads what you paste or pipe in, up to its end (Ctrl-D, on Windows Ctrl-Z).",
      "Nothing is written until you confirm the matches.",
      "",
      "Examples:",
      "  hemwright chart mine.xlsx                                 what it is taken for",
      "  hemwright chart mine.csv --unit in --match \"Seat=hip\"     your own answers",
      "  hemwright chart mine.csv --needs thigh,shoulder --for women  what is missing, estimated",
      "  hemwright chart mine.csv --from knit-tee --for women      what a starter needs",
      "  hemwright chart mine.csv --confirm --out my-skirt         writes my-skirt/sizes.csv",
      "  hemwright chart -                                         from the clipboard, pasted"
    })
final class ChartCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "FILE", description = "Your chart.")
  private Path file = Path.of("");

  @Option(
      names = "--match",
      paramLabel = "HEADING=NAME",
      description = "What a heading means; without a name the column is left out. May be repeated.")
  private Map<String, String> matches = new LinkedHashMap<>();

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "cm, in or mm, for columns that do not say it.")
  private Optional<Unit> unit = Optional.empty();

  @Option(
      names = "--needs",
      split = ",",
      paramLabel = "NAME",
      description = "Measurements that you need: --needs thigh,back_length.")
  private List<String> needs = new ArrayList<>();

  @Option(
      names = "--from",
      paramLabel = "STARTER",
      description = "A starter's measurements are what you need.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--for",
      paramLabel = "WHOM",
      description =
          "women, men or children: estimate what is missing, from a survey of grown people or from"
              + " our own size runs.")
  private Optional<Whom> whom = Optional.empty();

  @Option(names = "--confirm", description = "Write the chart with these matches.")
  private boolean confirmed;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The folder that gets sizes.csv; this one when it is left out.")
  private Path out = Path.of(".");

  @Option(names = "--json", description = "Answer as JSON on standard output, messages apart.")
  private boolean json;

  /** The units of charts. */
  enum Unit {
    CM,
    IN,
    MM
  }

  /** Whom a chart is for; a survey is at hand of grown people. */
  enum Whom {
    WOMEN,
    MEN,
    CHILDREN
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter messages = spec.commandLine().getErr();
    Tell tell = new Tell(messages, Optional.empty(), Workbench.wording(Optional.empty()));
    List<Finding> problems = new ArrayList<>();
    if (from.isPresent() && Starter.named(from.get()).isEmpty()) {
      messages.println(
          "chart: there is no starter %s; choose one of these: %s"
              .formatted(
                  from.get(),
                  String.join(", ", Starter.all().stream().map(Starter::name).toList())));
      messages.flush();
      return ExitCode.INPUT_WRONG;
    }
    boolean pasted = file.toString().equals("-");
    Optional<byte[]> bytes =
        pasted
            ? Optional.of(System.in.readNBytes(ChartReader.MOST_BYTES + 1))
            : new GivenFile(file).bytes(problems);
    if (bytes.isEmpty()) {
      tell.all(problems);
      return ExitCode.INPUT_WRONG;
    }
    BroughtChart chart =
        BroughtChart.of(pasted ? "pasted" : file.getFileName().toString(), bytes.get(), answers());
    if (!chart.findings().isEmpty()) {
      tell.all(chart.findings());
      return ExitCode.INPUT_WRONG;
    }
    PrintWriter answer = spec.commandLine().getOut();
    answer.print(json ? ChartReport.json(chart) : ChartReport.text(chart));
    answer.flush();
    if (!chart.isWhole()) {
      return ExitCode.INPUT_WRONG;
    }
    if (confirmed) {
      tell.all(chart.readBack());
      new OutFolder(out).replace("sizes.csv", chart.csv().getBytes(StandardCharsets.UTF_8));
      messages.println("Written to " + out.resolve("sizes.csv"));
    } else if (!json) {
      messages.println("Nothing is written yet. Say --match where a ? is wrong, then --confirm.");
    }
    messages.flush();
    return ExitCode.ALL_WELL;
  }

  private ChartAnswers answers() {
    List<String> needed = new ArrayList<>(needs);
    from.flatMap(Starter::named).map(Starter::needs).ifPresent(needed::addAll);
    return new ChartAnswers(
        matches,
        unit.map(each -> each.name().toLowerCase(java.util.Locale.ROOT)),
        needed.stream().distinct().toList(),
        whom.filter(each -> each != Whom.CHILDREN)
            .map(each -> each == Whom.WOMEN ? BodySurvey.Sex.WOMEN : BodySurvey.Sex.MEN),
        whom.isPresent() && whom.get() != Whom.WOMEN,
        whom.equals(Optional.of(Whom.CHILDREN)));
  }
}
