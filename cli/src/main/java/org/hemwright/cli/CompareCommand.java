package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.hemwright.paper.PaperOptions;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.compare.Compared;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.CheckReport;
import org.hemwright.workbench.report.CompareReport;
import org.hemwright.workbench.report.CompareText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changed between two versions of a pattern. */
@Command(
    name = "compare",
    description = {
      "Tell what changed between two versions of a pattern, and which pages to print again.",
      "Pieces, edges, notches and sizes are told, and by how much they differ, in the units of NEW."
    },
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "Examples:",
      "  hemwright compare my-skirt-1.0 my-skirt              in words",
      "  hemwright compare my-skirt-1.0 my-skirt --on a4      only the pages of the A4 file",
      "  hemwright compare my-skirt-1.0 my-skirt --out seen   with drawings, old line against new",
      "  hemwright compare my-skirt-1.0 my-skirt --json       for a program",
      "",
      "A new piece is laid on the old one where most of its stitch line stays; a piece that only",
      "lies elsewhere in its drawing has not changed. Exit code 0, whatever changed."
    })
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "OLD", description = "The folder of the old version.")
  private Path old = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The folder of the new version.")
  private Path now = Path.of("");

  @Option(
      names = "--size",
      split = ",",
      paramLabel = "SIZE",
      description = "Only these sizes, as the charts name them: --size 14 or --size 8,10,12.")
  private List<String> sizes = new ArrayList<>();

  @Mixin private PaperSettings paper = new PaperSettings();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to put drawings of the pieces that changed, as SVG and PNG.")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--json", description = "Answer as JSON on standard output, messages apart.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    PrintWriter messages = spec.commandLine().getErr();
    Optional<SizeRun> was = read(old);
    Optional<SizeRun> is = read(now);
    if (was.isEmpty() || is.isEmpty()) {
      return ExitCode.INPUT_WRONG;
    }
    Set<String> problems = new LinkedHashSet<>(paper.problems(was.get()));
    problems.addAll(paper.problems(is.get()));
    if (!problems.isEmpty()) {
      problems.forEach(messages::println);
      return ExitCode.INPUT_WRONG;
    }
    PaperOptions options = paper.options(is.get(), false, Optional.empty());
    Compared compared = Compared.of(was.get(), is.get(), options);
    ChangeWords words = new ChangeWords(Workbench.compareWording(is.get()));
    StringBuilder drawn = new StringBuilder();
    if (out.isPresent()) {
      for (Compared.Picture picture : compared.pictures()) {
        new OutFolder(out.get()).replace(picture.name(), picture.bytes());
        drawn.append("  ").append(picture.name()).append('\n');
      }
    }
    if (json) {
      answer(CompareReport.json(compared, words));
    } else {
      answer(CompareText.of(compared, words));
      if (!drawn.isEmpty()) {
        answer("\nDrawn in " + out.orElseThrow() + "\n" + drawn);
      }
    }
    return ExitCode.ALL_WELL;
  }

  /** The run of a folder in the sizes asked for; nothing where it cannot be worked with. */
  private Optional<SizeRun> read(Path folder) {
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
    Tell tell =
        new Tell(
            spec.commandLine().getErr(), Optional.of(folder), Workbench.wording(evaluated.run()));
    if (!evaluated.sound()) {
      tell.all(evaluated.problems());
      if (json) {
        answer(CheckReport.problems(evaluated.problems(), tell.wording()));
      }
      return Optional.empty();
    }
    SizeRun whole = evaluated.run().orElseThrow();
    if (sizes.isEmpty()) {
      return Optional.of(whole);
    }
    List<String> known = whole.sizes().stream().map(sized -> sized.size().name()).toList();
    for (String size : sizes) {
      if (!known.contains(size.strip())) {
        spec.commandLine()
            .getErr()
            .println("--size " + size + ": in " + folder + " " + SizeMend.of(size.strip(), known));
        return Optional.empty();
      }
    }
    List<SizedPattern> chosen =
        whole.sizes().stream()
            .filter(sized -> sizes.stream().anyMatch(s -> s.strip().equals(sized.size().name())))
            .toList();
    return Optional.of(new SizeRun(whole.pattern(), chosen));
  }

  private void answer(String text) {
    PrintWriter answers = spec.commandLine().getOut();
    answers.print(text);
    answers.flush();
  }
}
