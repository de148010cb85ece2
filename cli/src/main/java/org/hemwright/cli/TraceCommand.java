package org.hemwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hemwright.paper.card.CardPage;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.PhotographReport;
import org.hemwright.workbench.report.PhotographWords;
import org.hemwright.workbench.report.TraceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a drawing holds, or a photograph shows. */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "List what a drawing holds, to name its lines in a document;",
      "or draw the outlines of paper pieces in a photograph or scan."
    },
    footer = {
      "",
      "A photograph is straightened by the printed card that lies in it, a scan by two marks of a",
      "ruler. The drawing that comes of it is in true size.",
      "",
      "Examples:",
      "  hemwright trace traced/front.svg    its names, closed lines with their corners, the rest",
      "  hemwright trace traced/tee.dxf      the same of a DXF",
      "  hemwright trace --print-card card.pdf                the card, to print and lay beside",
      "  hemwright trace front.jpg --into traced/front.svg    a photograph with the card in it",
      "  hemwright trace scan.png --ruler 30cm --marks \"118,40 3661,46\" --into traced/cuff.svg"
    })
final class TraceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "The drawing, .svg or .dxf, or the photograph, .jpg or .png.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--into",
      paramLabel = "DRAWING",
      description = "Write what a photograph shows as a drawing in SVG.")
  private Optional<Path> into = Optional.empty();

  @Mixin private PhotographQuestions questions = new PhotographQuestions();

  @Option(
      names = "--print-card",
      paramLabel = "PDF",
      description = "Write the reference card, one page for A4 or Letter.")
  private Optional<Path> card = Optional.empty();

  @Override
  public Integer call() throws IOException {
    PrintWriter messages = spec.commandLine().getErr();
    Tell tell = new Tell(messages, Optional.empty(), Workbench.wording(Optional.empty()));
    if (card.isPresent()) {
      messages.println("Written to " + written(card.get(), CardPage.pdf()));
      messages.flush();
    }
    if (file.isEmpty()) {
      if (card.isEmpty()) {
        messages.println("trace: name a drawing or a photograph, or say --print-card");
        messages.flush();
      }
      return card.isPresent() ? ExitCode.ALL_WELL : ExitCode.INPUT_WRONG;
    }
    PhotographWords words = questions.words();
    List<String> amiss = new ArrayList<>(words.amiss());
    boolean photograph = isPhotograph(file.get());
    if (!photograph && (into.isPresent() || questions.isAsked())) {
      amiss.add("--into, --card, --ruler and --marks are of a photograph, .jpg or .png");
    }
    if (!amiss.isEmpty()) {
      amiss.forEach(line -> messages.println("trace: " + line));
      messages.flush();
      return ExitCode.INPUT_WRONG;
    }
    List<Finding> problems = new ArrayList<>();
    Optional<byte[]> bytes = new GivenFile(file.get()).bytes(problems);
    if (bytes.isEmpty()) {
      tell.all(problems);
      return ExitCode.INPUT_WRONG;
    }
    return photograph ? photograph(tell, bytes.get(), words) : drawing(tell, bytes.get());
  }

  private int drawing(Tell tell, byte[] bytes) {
    TraceReport report = TraceReport.of(file.orElseThrow().toString(), bytes);
    tell.all(report.findings());
    answer(report.text());
    return report.text().isEmpty() ? ExitCode.INPUT_WRONG : ExitCode.ALL_WELL;
  }

  private int photograph(Tell tell, byte[] bytes, PhotographWords words) throws IOException {
    PhotographReport report = PhotographReport.of(file.orElseThrow().toString(), bytes, words);
    tell.all(report.findings());
    answer(report.text());
    if (report.drawing().isEmpty()) {
      return ExitCode.INPUT_WRONG;
    }
    PrintWriter messages = spec.commandLine().getErr();
    messages.println(
        into.isPresent()
            ? "Written to " + written(into.get(), report.drawing().get())
            : "Nothing is written yet. Say --into traced/NAME.svg to keep the drawing.");
    messages.flush();
    return ExitCode.ALL_WELL;
  }

  private void answer(String text) {
    PrintWriter answer = spec.commandLine().getOut();
    answer.print(text);
    answer.flush();
  }

  private static Path written(Path file, byte[] content) throws IOException {
    Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
    new OutFolder(folder).replace(file.getFileName().toString(), content);
    return file;
  }

  private static boolean isPhotograph(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return List.of(".jpg", ".jpeg", ".png", ".heic", ".heif", ".webp", ".tif", ".tiff").stream()
        .anyMatch(name::endsWith);
  }
}
