package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.post.Posts;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.again.Answer;
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
      "  hemwright publish my-skirt --release       freeze this version in my-skirt/releases as"
          + " well",
      "",
      "Each publication stands in a folder of its own, named for its version and its contents,"
          + " with",
      "manifest.json; current.txt names the newest, and the .zip in it is ready to upload. What"
          + " was",
      "released under a version is never published otherwise under it: give changes a new version.",
      "Exit code 1: a check fails, nothing was changed."
    })
final class PublishCommand extends FolderCommand {
  @Mixin private PaperSettings paper = new PaperSettings();

  @Option(names = "--out", paramLabel = "DIR", description = "Where to publish.")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--proof", description = "Publish though a check fails, every page marked.")
  private boolean proof;

  @Option(
      names = "--release",
      description = "Freeze this version in the folder’s releases, to be asked later.")
  private boolean release;

  /**
   * A release stands in the pattern's folder too, so that it is frozen each time it is asked for.
   */
  @Override
  Optional<Makes> makes() {
    return release
        ? Optional.empty()
        : Optional.of(new Makes(out.orElseGet(this::defaultOut), false));
  }

  @Override
  int work(Job job) throws IOException {
    List<String> problems = new ArrayList<>(paper.problems(job.run()));
    if (release && shelf().isEmpty()) {
      problems.add("--release: the demo is not yours to release; name your pattern’s folder");
    }
    if (release && (proof || sizesChosen() || !paper.isWhole())) {
      problems.add(
          "--release: a release is the whole pattern; leave out --proof, --size, --view and --on");
    }
    if (!problems.isEmpty()) {
      problems.forEach(messages()::println);
      return ExitCode.INPUT_WRONG;
    }
    PaperOptions options =
        paper
            .options(
                job.run(),
                sizesChosen(),
                proof ? Optional.of("Proof, not for sale") : Optional.empty())
            .withPictures();
    OutFolder folder = new OutFolder(out.orElseGet(this::defaultOut));
    SizeRun whole = job.evaluated().run().orElseThrow();
    List<String> sizes =
        sizesChosen()
            ? job.run().sizes().stream().map(sized -> sized.size().name()).toList()
            : List.of();
    YardageRequest request = YardageRequest.everything().inSizes(sizes).ofViews(options.views());
    Publication publication;
    try (LayingKeeper kept = new LayingKeeper(keptFolder())) {
      publication =
          ProgressLine.during(
              "Publishing",
              json(),
              progress ->
                  Publication.of(
                      job.evaluated(),
                      job.run(),
                      new PublishOrder(
                          options,
                          laid ->
                              Workbench.yardage(
                                  job.evaluated(), whole, request, kept.layings(), laid),
                          folder,
                          shelf(),
                          release),
                      progress));
    }
    List<PrintedFile> files = publication.printed().map(PrintedPattern::files).orElse(List.of());
    if (json()) {
      Map<String, Optional<String>> also = new LinkedHashMap<>();
      also.put("zip", publication.zip());
      also.put("release", publication.release().map(Path::toString));
      answer(
          PrintReport.json(
              publication.folder().map(Path::toString),
              files,
              publication.findings(),
              job.tell().wording(),
              also));
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
    publication.manifest().map(OutFolder::published).map(Answer::hashes).ifPresent(this::made);
    if (!json()) {
      list(publication.folder().orElseThrow(), files);
      publication.zip().ifPresent(zip -> answer("  " + zip + "  all that makers download\n"));
      publication.release().ifPresent(frozen -> answer("Released as " + frozen + "\n"));
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
      if (!Posts.isHers(file.name())) {
        text.append(PrintedLine.of(file)).append("\n");
      }
    }
    answer(text.toString());
  }
}
