package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hemwright.workbench.starter.ChartRun;
import org.hemwright.workbench.starter.NewFolder;
import org.hemwright.workbench.starter.Starter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A new pattern folder from a starter. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Start a garment: a new folder with a sound block, its chart and its steps.",
    footer = {
      "",
      "Without --from it lists the starters, and which size runs each is drafted for.",
      "",
      "Examples:",
      "  hemwright new                                       which starters there are",
      "  hemwright new \"Kelp tee\" --from knit-tee            the folder kelp-tee",
      "  hemwright new \"Kelp tee\" --from knit-tee --chart men  for men's sizes",
      "  hemwright new \"Kelp tee\" --from knit-tee --in work  the folder work/kelp-tee"
    })
final class NewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "What the garment is called.")
  private Optional<String> name = Optional.empty();

  @Option(names = "--from", paramLabel = "STARTER", description = "The block to start from.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--chart",
      paramLabel = "RUN",
      description = "The size run: women, plus, men or children; women when it is left out.")
  private Optional<String> chart = Optional.empty();

  @Option(
      names = "--in",
      paramLabel = "DIR",
      description = "Where the folder goes; here when it is left out.")
  private Path in = Path.of("");

  @Override
  public Integer call() throws IOException {
    PrintWriter answer = spec.commandLine().getOut();
    PrintWriter messages = spec.commandLine().getErr();
    if (name.isEmpty() && from.isEmpty()) {
      Starter.all().forEach(each -> answer.println(line(each)));
      answer.flush();
      return ExitCode.ALL_WELL;
    }
    Optional<Starter> starter = from.flatMap(Starter::named);
    if (name.isEmpty() || starter.isEmpty()) {
      messages.println(
          name.isEmpty()
              ? "new: NAME is missing; write what the garment is called"
              : from.isEmpty()
                  ? "new: --from is missing; choose a starter:"
                  : "new: there is no starter " + from.get() + "; choose one of these:");
      Starter.all().forEach(each -> messages.println(line(each)));
      messages.flush();
      return ExitCode.INPUT_WRONG;
    }
    Optional<ChartRun> run = chart.isEmpty() ? Optional.of(ChartRun.WOMEN) : chosen(starter.get());
    if (run.isEmpty()) {
      messages.println(
          "new: %s is not drafted for %s; choose one of these runs:"
              .formatted(starter.get().name(), chart.orElseThrow()));
      starter.get().charts().forEach(each -> messages.println(line(each)));
      messages.flush();
      return ExitCode.INPUT_WRONG;
    }
    NewFolder folder = NewFolder.called(name.get(), in);
    if (folder.isTaken()) {
      messages.println(folder.path() + " is there already; choose another name, or another --in");
      messages.flush();
      return ExitCode.INPUT_WRONG;
    }
    folder.fill(starter.get(), run.get());
    answer.println("Started " + folder.path());
    answer.println("  hemwright check " + folder.path());
    answer.flush();
    return ExitCode.ALL_WELL;
  }

  private Optional<ChartRun> chosen(Starter starter) {
    return chart.flatMap(ChartRun::named).filter(starter.charts()::contains);
  }

  private static String line(Starter starter) {
    String runs = String.join(", ", starter.charts().stream().map(ChartRun::name).toList());
    return "  %-16s %s (%s)".formatted(starter.name(), starter.words(), runs);
  }

  private static String line(ChartRun run) {
    return "  %-16s %s".formatted(run.name(), run.words());
  }
}
