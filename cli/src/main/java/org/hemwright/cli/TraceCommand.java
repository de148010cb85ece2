package org.hemwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.GivenFile;
import org.hemwright.workbench.report.TraceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a drawing holds. */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "List what a drawing holds, to name its lines in a document.",
    footer = {
      "",
      "Examples:",
      "  hemwright trace traced/front.svg    its names, closed lines with their corners, the rest",
      "  hemwright trace traced/tee.dxf      the same of a DXF"
    })
final class TraceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing, .svg or .dxf.")
  private Path file = Path.of("");

  @Override
  public Integer call() {
    Tell tell =
        new Tell(
            spec.commandLine().getErr(), Optional.empty(), Workbench.wording(Optional.empty()));
    List<Finding> problems = new ArrayList<>();
    Optional<byte[]> bytes = new GivenFile(file).bytes(problems);
    if (bytes.isEmpty()) {
      tell.all(problems);
      return ExitCode.INPUT_WRONG;
    }
    TraceReport report = TraceReport.of(file.toString(), bytes.get());
    tell.all(report.findings());
    PrintWriter answer = spec.commandLine().getOut();
    answer.print(report.text());
    answer.flush();
    return report.text().isEmpty() ? ExitCode.INPUT_WRONG : ExitCode.ALL_WELL;
  }
}
