package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.KeptLayings;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.PrintReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks, then every file. */
@Command(
    name = "publish",
    description = "Check the pattern in every size, then make every file of it.",
    footer = {
      "",
      "Examples:",
      "  hemwright publish                          the demo, into ./out",
      "  hemwright publish my-skirt                 into my-skirt/out",
      "  hemwright publish my-skirt --on a4         for A4 printers alone",
      "  hemwright publish my-skirt --size 14       one size, drawn with unbroken lines",
      "  hemwright publish my-skirt --proof         although a check fails; every page says so",
      "",
      "Each publication stands in a folder of its own, named for its version and its contents, with",
      "manifest.json; current.txt names the newest. Exit code 1: a check fails, nothing was changed."
    })
final class PublishCommand extends FolderCommand {
  @Mixin private PaperSettings paper = new PaperSettings();

  @Option(names = "--out", paramLabel = "DIR", description = "Where to publish.")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--proof", description = "Publish though a check fails, every page marked.")
  private boolean proof;

  @Override
  int work(Job job) throws IOException {
    List<String> problems = paper.problems(job.run());
    if (!problems.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    PaperOptions options =
        paper
            .options(job.run(), sizesChosen(), proof ? Optional.of("Proof") : Optional.empty())
            .withPictures();
    OutFolder folder = new OutFolder(out.orElseGet(this::defaultOut));
    Evaluated input =
        new Evaluated(
            Optional.of(job.run()), job.evaluated().problems(), job.evaluated().sources());
    SizeRun whole = job.evaluated().run().orElseThrow();
    List<String> sizes =
        sizesChosen()
            ? job.run().sizes().stream().map(sized -> sized.size().name()).toList()
            : List.of();
    YardageRequest request = YardageRequest.everything().inSizes(sizes).ofViews(options.views());
    KeptLayings kept = KeptLayings.in(keptFolder());
    Publication publication =
        ProgressLine.during(
            "Publishing",
            json(),
            progress ->
                Publication.of(
                    input,
                    options,
                    laid -> Workbench.yardage(whole, request, kept, laid),
                    folder,
                    progress));
    kept.keep();
    List<PrintedFile> files = publication.printed().map(PrintedPattern::files).orElse(List.of());
    if (json()) {
      answer(
          PrintReport.json(
              publication.folder().map(Path::toString),
              files,
              publication.findings(),
              job.tell().wording()));
    } else {
      job.tell().all(publication.findings());
    }
    long failing = failing(publication.findings());
    if (!publication.published()) {
      messages()
          .printf(
              "Not published: %d to mend. --proof publishes all the same, every page marked.%n",
              failing);
      return ExitCode.CHECK_FAILS;
    }
    if (!json()) {
      list(publication.folder().orElseThrow(), files);
    }
    return failing == 0 ? ExitCode.ALL_WELL : ExitCode.CHECK_FAILS;
  }

  private static long failing(List<Finding> findings) {
    return findings.stream().filter(finding -> finding.status() == Status.FAIL).count();
  }

  private void list(Path folder, List<PrintedFile> files) {
    StringBuilder text = new StringBuilder();
    text.append("Published in ").append(folder).append("\n");
    for (PrintedFile file : files) {
      text.append(PrintedLine.of(file)).append("\n");
    }
    answer(text.toString());
  }
}
