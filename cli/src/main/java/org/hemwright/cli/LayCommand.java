package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hemwright.cloth.laying.LayBudget;
import org.hemwright.cloth.laying.LayFile;
import org.hemwright.cloth.laying.LayFileRefused;
import org.hemwright.cloth.laying.LayResult;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.laying.LayoutFile;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.report.CheckReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays loose shapes on a strip, or checks a layout of them. */
@Command(
    name = "lay",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Lay loose shapes on a strip of cloth so that it is as short as can be found.",
    footer = {
      "",
      "FILE is JSON: {name, stripWidth, items:[{id, demand, allowedRotationsDegrees, shape}]},"
          + " with",
      "shape a list of [x, y] corners, x along the strip and y across it, in any unit. The answer"
          + " is",
      "JSON too: {length, density, placements:[{id, rotationDegrees, x, y}]}; each shape is turned",
      "about its own origin, then moved. A shape's holes are filled, and that is told.",
      "",
      "The layout depends on the file, --work and --seed alone, never on the machine. --seconds"
          + " only",
      "ends the search early; \"complete\" is then false. Ctrl-C ends it too, and the best layout"
          + " so",
      "far is written.",
      "",
      "Examples:",
      "  hemwright lay shapes.json                          a good layout",
      "  hemwright lay shapes.json --work 400000000         a better one, in a minute or two",
      "  hemwright lay shapes.json --seconds 600            ten minutes' search",
      "  hemwright lay shapes.json --check layout.json      does anything overlap?"
    })
final class LayCommand implements Callable<Integer> {
  private static final long USUAL_WORK = 60_000_000;

  /** More than two cores look at in a second: with --seconds alone it is the time that ends it. */
  private static final double WORK_PER_SECOND = 50_000_000;

  private static final double MOST_WORK = 1e18;
  private static final int STEPS = 1000;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "FILE", description = "The shapes and the strip, as JSON.")
  private Path file = Path.of("");

  @Option(
      names = "--work",
      paramLabel = "N",
      description =
          "How many places to look at, 60000000 when it is left out;"
              + " where only --seconds is given, as many as the time allows.")
  private Optional<Long> work = Optional.empty();

  @Option(names = "--seed", paramLabel = "K", description = "Where chance starts, 1 when left out.")
  private long seed = 1;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "End after so many seconds, done or not.")
  private Optional<Double> seconds = Optional.empty();

  @Option(
      names = "--check",
      paramLabel = "LAYOUT",
      description =
          "Lay nothing; say whether this layout, in the form of the answer,"
              + " holds all that FILE asks for without overlap.")
  private Optional<Path> layout = Optional.empty();

  @Option(
      names = "--json",
      description = "Answer as JSON on standard output, without a summary beside it.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    List<Finding> problems = new ArrayList<>();
    if (work.isPresent() && work.get() < 1) {
      return refused("--work " + work.get() + ": give at least 1");
    }
    if (seconds.isPresent() && !(seconds.get() > 0)) {
      return refused("--seconds " + seconds.get() + ": give more than 0");
    }
    Optional<LayFile> shapes = read(file, LayFile::read, problems);
    Optional<LayoutFile> given = Optional.empty();
    if (layout.isPresent()) {
      given = read(layout.get(), LayoutFile::read, problems);
    }
    Tell tell = new Tell(messages(), Optional.empty(), Workbench.wording(Optional.empty()));
    tell.all(problems);
    shapes.ifPresent(read -> tell.all(read.notes()));
    if (!problems.isEmpty()) {
      if (json) {
        answer(CheckReport.problems(problems, tell.wording()));
      }
      return ExitCode.INPUT_WRONG;
    }
    return given.isPresent()
        ? check(shapes.orElseThrow(), given.get(), tell)
        : lay(shapes.orElseThrow());
  }

  private interface Reader<T> {
    T read(String name, String text) throws LayFileRefused;
  }

  private static <T> Optional<T> read(Path path, Reader<T> reader, List<Finding> problems) {
    Optional<String> text = new GivenFile(path).text(problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader.read(path.toString(), text.get()));
    } catch (LayFileRefused refused) {
      problems.addAll(refused.problems());
      return Optional.empty();
    }
  }

  private int lay(LayFile shapes) throws IOException {
    long usual =
        seconds.isPresent()
            ? (long) Math.min(MOST_WORK, seconds.get() * WORK_PER_SECOND)
            : USUAL_WORK;
    LayBudget budget = new LayBudget(Math.max(1, work.orElse(usual)), seed);
    try (LayPatience patience = new LayPatience(seconds)) {
      LayResult result =
          ProgressLine.during(
              "Laying",
              json,
              progress ->
                  new Laying(shapes.problem())
                      .lay(
                          budget,
                          at -> {
                            progress.step(
                                percent(at.density()), share(at.work(), at.ofWork()), STEPS);
                            return patience.wish();
                          }));
      answer(shapes.write(result));
      if (!json) {
        messages().println(summary(shapes, result));
        messages().flush();
      }
    }
    return ExitCode.ALL_WELL;
  }

  private static int share(long done, long of) {
    return (int) (STEPS * ((double) done / of));
  }

  private static String percent(double density) {
    return String.format(Locale.ROOT, "%.2f %%", 100 * density);
  }

  private static String summary(LayFile shapes, LayResult result) {
    return String.format(
        Locale.ROOT,
        "%s: %d shapes on a length of %s, density %s, %,d places looked at%s",
        shapes.problem().name().isEmpty() ? "Laid" : shapes.problem().name(),
        shapes.problem().copies(),
        length(result.layout().length()),
        percent(result.layout().density(shapes.problem())),
        result.work(),
        result.complete() ? "" : "; ended early");
  }

  private static String length(double length) {
    return String.format(Locale.ROOT, length < 1 ? "%.5g" : "%.4f", length);
  }

  private int check(LayFile shapes, LayoutFile given, Tell tell) {
    List<Finding> objections = given.objections(shapes.problem());
    tell.all(objections);
    boolean accepted = objections.isEmpty();
    if (json) {
      List<Finding> told =
          accepted
              ? List.of(Finding.ok("lay-checked", shapes.problem().name()).build())
              : objections;
      answer(CheckReport.layout(told, tell.wording()));
    } else if (accepted) {
      answer(
          tell.wording().message(Finding.ok("lay-checked", shapes.problem().name()).build())
              + "\n");
    }
    return accepted ? ExitCode.ALL_WELL : ExitCode.CHECK_FAILS;
  }

  private int refused(String why) {
    messages().println(why);
    messages().flush();
    return ExitCode.INPUT_WRONG;
  }

  private PrintWriter messages() {
    return spec.commandLine().getErr();
  }

  private void answer(String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(text);
    out.flush();
  }
}
