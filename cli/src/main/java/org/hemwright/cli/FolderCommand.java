package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.again.Answer;
import org.hemwright.workbench.again.Answers;
import org.hemwright.workbench.again.Question;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workbench.report.CheckAnswer;
import org.hemwright.workbench.report.CheckReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * A command that works on a pattern folder: it reads the folder, tells what is wrong with it, and
 * otherwise goes on to the command's own work.
 */
@Command(mixinStandardHelpOptions = true, sortOptions = false)
abstract class FolderCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "The pattern folder; the embedded demo when it is left out.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--size",
      split = ",",
      paramLabel = "SIZE",
      description = "Only these sizes, as the chart names them: --size 14 or --size 8,10,12.")
  private List<String> sizes = new ArrayList<>();

  @Option(
      names = "--released",
      paramLabel = "VERSION",
      description = "The pattern as it was when this version was released: --released 1.0.")
  private Optional<String> released = Optional.empty();

  @Option(names = "--json", description = "Answer as JSON on standard output, messages apart.")
  private boolean json;

  private Optional<PatternFolder> asked = Optional.empty();
  private Optional<CopiedText> told = Optional.empty();
  private Optional<CopiedText> said = Optional.empty();
  private final SortedMap<String, String> made = new TreeMap<>();

  @Override
  public final Integer call() throws IOException {
    return makes().isPresent() ? answeredOnce(makes().get()) : answered();
  }

  /**
   * Answers as the last time where the same is asked of the same folder and all that was made still
   * stands. What has not changed is not even read as a pattern, since to start, read, draft and
   * draw takes seconds even where every laying is kept.
   */
  private int answeredOnce(Makes makes) throws IOException {
    Answers kept = new Answers(keptFolder());
    String command = spec.name();
    Optional<Question> question = question();
    Optional<Answer> before = question.flatMap(asks -> kept.to(asks, command));
    if (before.isPresent() && before.get().stands(makes.folder(), makes.alone())) {
      messages().print(before.get().told());
      messages().flush();
      answer(before.get().said());
      return ExitCode.ALL_WELL;
    }
    told = Optional.of(new CopiedText(spec.commandLine().getErr()));
    said = Optional.of(new CopiedText(spec.commandLine().getOut()));
    int code = answered();
    // A folder that was changed meanwhile may have been read before or after.
    if (code == ExitCode.ALL_WELL && question.isPresent() && question.equals(question())) {
      Answer answer = new Answer(told.get().copy(), said.get().copy(), made);
      kept.keep(question.get(), command, answer);
    }
    return code;
  }

  private Optional<Question> question() {
    return Question.of(folder, spec.root().commandLine().getParseResult().expandedArgs());
  }

  /**
   * Where a command puts all that it makes.
   *
   * @param alone whether nothing else may stand there
   */
  record Makes(Path folder, boolean alone) {}

  /**
   * Where the command puts all that it makes, for one whose answer is kept for the next time;
   * absent for one that answers soon enough or does more than make files there.
   */
  Optional<Makes> makes() {
    return Optional.empty();
  }

  /** Says which files the command made in that folder, with their hashes. */
  final void made(SortedMap<String, String> files) {
    made.putAll(files);
  }

  private int answered() throws IOException {
    asked = source();
    if (asked.isEmpty()) {
      return ExitCode.INPUT_WRONG;
    }
    PatternFolder source = asked.get();
    Evaluated evaluated = Workbench.evaluate(source);
    Tell tell = new Tell(messages(), folder, Workbench.wording(evaluated.run()));
    tell.all(evaluated.problems());
    if (!evaluated.sound()) {
      if (json) {
        answer(CheckReport.problems(evaluated.problems(), tell.wording()));
      }
      return ExitCode.INPUT_WRONG;
    }
    SizeRun whole = evaluated.run().orElseThrow();
    Optional<SizeRun> run = chosen(whole);
    return run.isEmpty() ? ExitCode.INPUT_WRONG : work(new Job(evaluated, run.get(), tell));
  }

  /** The folder, the demo, or the folder of a release; nothing where there is no such release. */
  private Optional<PatternFolder> source() {
    if (released.isEmpty()) {
      return Optional.of(folder.isPresent() ? new DiskFolder(folder.get()) : PackedFolder.DEMO);
    }
    List<String> known = shelf().map(ReleaseShelf::versions).orElse(List.of());
    Optional<PatternFolder> there =
        shelf().flatMap(shelf -> shelf.folder(released.get().strip())).map(each -> each);
    if (there.isEmpty()) {
      messages()
          .println(
              "--released %s: %s"
                  .formatted(
                      released.get(),
                      known.isEmpty()
                          ? "nothing of this pattern was released; publish --release does that"
                          : "there is no such release; there is " + String.join(", ", known)));
    }
    return there;
  }

  /** The folder that is worked on; present while a command does its work. */
  final Optional<PatternFolder> patternFolder() {
    return asked;
  }

  /** The releases of the pattern; the demo has none. */
  final Optional<ReleaseShelf> shelf() {
    return folder.map(ReleaseShelf::of);
  }

  /** What a command works on: sound input, in the sizes asked for. */
  record Job(Evaluated evaluated, SizeRun run, Tell tell) {}

  /** The command's own work; its exit code. */
  abstract int work(Job job) throws IOException;

  /** Whether the answer is for a program. */
  final boolean json() {
    return json;
  }

  /** Whether some sizes were asked for, rather than all. */
  final boolean sizesChosen() {
    return !sizes.isEmpty();
  }

  /** The folder that output goes to where none is named: beside the pattern; here for the demo. */
  final Path defaultOut() {
    return folder.map(path -> path.resolve("out")).orElse(Path.of("out"));
  }

  /**
   * Where layings are kept between runs: in the pattern's folder; beside the output for the demo.
   */
  final Path keptFolder() {
    return folder.map(path -> path.resolve(".hemwright")).orElseGet(() -> Path.of("out"));
  }

  final PrintWriter messages() {
    PrintWriter err = spec.commandLine().getErr();
    return told.map(copied -> new PrintWriter(copied, true)).orElse(err);
  }

  /** Puts text on standard output. */
  final void answer(String text) {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter answers = said.map(PrintWriter::new).orElse(out);
    answers.print(text);
    answers.flush();
  }

  static int exitCode(List<CheckAnswer> answers) {
    return answers.stream().anyMatch(CheckAnswer::fails) ? ExitCode.CHECK_FAILS : ExitCode.ALL_WELL;
  }

  private Optional<SizeRun> chosen(SizeRun whole) {
    if (sizes.isEmpty()) {
      return Optional.of(whole);
    }
    List<String> known = whole.sizes().stream().map(sized -> sized.size().name()).toList();
    Set<String> wanted = new LinkedHashSet<>();
    boolean all = true;
    for (String size : sizes) {
      if (known.contains(size.strip())) {
        wanted.add(size.strip());
      } else {
        messages().println("--size " + size + ": " + SizeMend.of(size.strip(), known));
        all = false;
      }
    }
    return all
        ? Optional.of(
            new SizeRun(
                whole.pattern(),
                whole.sizes().stream()
                    .filter(sized -> wanted.contains(sized.size().name()))
                    .toList()))
        : Optional.empty();
  }
}
