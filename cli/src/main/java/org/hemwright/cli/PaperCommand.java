package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.PrintReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The printable files alone, without the checks. */
@Command(
    name = "paper",
    description = "Make the printable files alone, to look at while the pattern grows.",
    footer = {
      "",
      "Examples:",
      "  hemwright paper my-skirt                   every paper, all groups, in my-skirt/out/paper",
      "  hemwright paper my-skirt --on a4,a0        on these papers",
      "  hemwright paper my-skirt --size 14         one size, drawn with unbroken lines",
      "  hemwright paper my-skirt --view A          the pieces of one view alone",
      "  hemwright paper my-skirt --overlap 15      pages that overlap by 15 mm",
      "  hemwright paper my-skirt --cut-apart band.halves   the parts of a piece that is split"
    })
final class PaperCommand extends FolderCommand {
  @Mixin private PaperSettings paper = new PaperSettings();

  @Option(names = "--out", paramLabel = "DIR", description = "Where to put the files.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--cut-apart",
      split = ",",
      paramLabel = "PIECE.SPLIT",
      description = "Print the parts of a piece in its place, for cloth that is too narrow for it.")
  private List<String> cutApart = new ArrayList<>();

  @Override
  int work(Job job) throws IOException {
    List<SplitChoice> declared = SplitChoice.declared(job.run());
    List<String> problems = new ArrayList<>(paper.problems(job.run()));
    List<SplitChoice> chosen = new ArrayList<>();
    for (String name : cutApart) {
      declared.stream()
          .filter(choice -> choice.text().equals(name))
          .findFirst()
          .ifPresentOrElse(chosen::add, () -> problems.add(unknown(name, declared)));
    }
    if (!problems.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    SizeRun run = SplitRun.of(job.run(), chosen);
    PaperOptions options = paper.options(run, sizesChosen(), Optional.empty());
    Path folder = out.orElseGet(() -> defaultOut().resolve("paper"));
    PrintedPattern printed =
        ProgressLine.during(
            "Drawing pages",
            json(),
            progress -> Workbench.print(job.evaluated(), run, options, progress));
    StringBuilder list = new StringBuilder();
    for (PrintedFile file : printed.files()) {
      new OutFolder(folder).replace(file.name(), file.bytes());
      list.append(PrintedLine.of(file)).append("\n");
    }
    if (json()) {
      answer(
          PrintReport.json(
              Optional.of(folder.toString()),
              printed.files(),
              printed.findings(),
              job.tell().wording()));
    } else {
      job.tell().all(printed.findings());
      answer("Written to " + folder + "\n" + list);
    }
    return ExitCode.ALL_WELL;
  }

  private static String unknown(String name, List<SplitChoice> declared) {
    return "--cut-apart "
        + name
        + (declared.isEmpty()
            ? ": no piece of this pattern has a split"
            : ": the pattern has "
                + String.join(", ", declared.stream().map(SplitChoice::text).toList()));
  }
}
