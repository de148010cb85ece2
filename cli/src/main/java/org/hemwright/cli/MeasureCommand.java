package org.hemwright.cli;

import java.util.List;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.report.MeasureReport;
import org.hemwright.workbench.report.MeasureTable;
import picocli.CommandLine.Command;

/** Lengths and areas in every size. */
@Command(
    name = "measure",
    description =
        "Measure every edge, piece, seam and elastic, and how the garment goes round the body.",
    footer = {
      "",
      "Examples:",
      "  hemwright measure                          the demo, as tables",
      "  hemwright measure my-skirt --size 14       one size",
      "  hemwright measure my-skirt --json          millimetres, for a program",
      "",
      "Edges are measured as drawn, at the stitch line; areas are those of one copy, opened.",
      "Thread comes from the steps, from the least that any method gives to the most, with waste."
    })
final class MeasureCommand extends FolderCommand {
  @Override
  int work(Job job) {
    Measurements measured = Measurements.of(job.run());
    BodyTable body = Workbench.body(job.run());
    List<Notions> notions = Workbench.notions(job.run());
    answer(
        json()
            ? MeasureReport.json(measured, body, notions)
            : MeasureTable.of(measured, body, notions, job.run().pattern().details().units()));
    return ExitCode.ALL_WELL;
  }
}
