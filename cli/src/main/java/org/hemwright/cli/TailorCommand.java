package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.CheckReport;
import org.hemwright.workbench.report.PrintReport;
import org.hemwright.workbench.tailor.Tailored;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The pattern for one body. */
@Command(
    name = "tailor",
    description = "Draw the pattern for one body, or for a blend of sizes, ready to print.",
    footer = {
      "",
      "Examples:",
      "  hemwright tailor my-skirt --body ada.csv             for the body in that file",
      "  hemwright tailor my-skirt --body ada.csv --rest 16   what the file lacks is as in size 16",
      "  hemwright tailor my-skirt --blend 14,18 --share 40%%  nearer to 14 than to 18",
      "  hemwright tailor my-skirt --take waist=14,hip=18 --rest 16 --on a4",
      "",
      "A body’s file is a chart with one row:  size,waist (cm),hip (cm)  and below it  Ada,84,102.",
      "The body takes the place of the size that is nearest, or of --size 16: what the document"
          + " steps",
      "by size is as in that one. Exit code 1: a check fails for this body, and nothing was made."
    })
final class TailorCommand extends FolderCommand {
  @Mixin private TailorQuestions questions = new TailorQuestions();

  @Mixin private PaperSettings paper = new PaperSettings();

  @Option(names = "--out", paramLabel = "DIR", description = "Where to put the files.")
  private Optional<Path> out = Optional.empty();

  @Override
  int work(Job job) throws IOException {
    List<String> problems = new ArrayList<>(paper.problems(job.run()));
    SizeChart chart = job.run().pattern().chart();
    Optional<String> place = Optional.empty();
    if (sizesChosen()) {
      place = Optional.of(job.run().sizes().get(0).size().name());
      if (job.run().sizes().size() > 1) {
        problems.add("--size: a body takes the place of one size");
      }
    }
    Optional<Tailored> body = questions.tailored(chart, place, problems);
    if (body.isEmpty() || !problems.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    Evaluated evaluated = Workbench.tailor(patternFolder().orElseThrow(), body.get());
    if (!evaluated.sound()) {
      return refused(job, body.get(), evaluated, chart);
    }
    SizeRun run = evaluated.run().orElseThrow();
    List<Finding> found = Workbench.checkTailored(run);
    PaperOptions options = paper.options(run, true, Optional.empty());
    boolean fails = found.stream().anyMatch(each -> each.status() == Status.FAIL);
    Path folder = out.orElseGet(() -> defaultOut().resolve("tailored"));
    PrintedPattern printed = new PrintedPattern(List.of(), List.of());
    if (!fails) {
      printed =
          ProgressLine.during(
              "Drawing", json(), progress -> Workbench.print(evaluated, run, options, progress));
    }
    List<Finding> told = new ArrayList<>(found);
    told.addAll(printed.findings());
    for (PrintedFile file : printed.files()) {
      new OutFolder(folder).replace(file.name(), file.bytes());
    }
    Tell tell = new Tell(messages(), job.tell().folder(), Workbench.wording(Optional.of(run)));
    if (json()) {
      Map<String, Optional<String>> also = new LinkedHashMap<>();
      also.put("name", Optional.of(body.get().name()));
      also.put("in_place_of", Optional.of(body.get().place()));
      answer(
          PrintReport.json(
              fails ? Optional.empty() : Optional.of(folder.toString()),
              printed.files(),
              told,
              tell.wording(),
              also));
    } else {
      tell.all(told);
      answer(told(body.get(), fails, folder, printed.files()));
    }
    return fails ? ExitCode.CHECK_FAILS : ExitCode.ALL_WELL;
  }

  private static String told(Tailored body, boolean fails, Path folder, List<PrintedFile> files) {
    StringBuilder text = new StringBuilder();
    text.append("Drawn for ").append(body.name());
    text.append(", in the place of size ").append(body.place()).append('\n');
    if (fails) {
      return text.append("Not made: a check fails for this body.\n").toString();
    }
    text.append("Written to ").append(folder).append('\n');
    files.forEach(file -> text.append(PrintedLine.of(file)).append('\n'));
    return text.toString();
  }

  /** What the document asks of the body in vain is most often what its file lacks. */
  private int refused(Job job, Tailored body, Evaluated evaluated, SizeChart chart) {
    job.tell().all(evaluated.problems());
    List<String> lacking =
        chart.columns().stream()
            .filter(column -> !body.measures().containsKey(column.name()))
            .map(SizeChart.Column::heading)
            .toList();
    if (!lacking.isEmpty()) {
      messages()
          .printf(
              "%s stands in the place of size %s and lacks %s; measure it, or take it from a size"
                  + " with --rest %s%n",
              body.name(), body.place(), String.join(", ", lacking), body.place());
    }
    if (json()) {
      answer(CheckReport.problems(evaluated.problems(), job.tell().wording()));
    }
    return ExitCode.INPUT_WRONG;
  }
}
