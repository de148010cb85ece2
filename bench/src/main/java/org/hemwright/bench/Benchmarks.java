package org.hemwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Workbench;

/** Times the main job on an example folder and prints the rows of docs/performance.md. */
public final class Benchmarks {
  private static final int SIZES = 20;

  private Benchmarks() {}

  /** Runs all benchmarks on the example folders given. */
  public static void main(String[] folders) throws IOException {
    System.out.println("| what | goal | measured |");
    System.out.println("| --- | --- | --- |");
    for (String folder : folders) {
      measure(Path.of(folder));
    }
    System.err.println("kept: " + Median.kept());
  }

  private static void measure(Path folder) throws IOException {
    String name = folder.getFileName().toString();
    SizeChart chart =
        ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
            .chart()
            .orElseThrow();
    String text = Files.readString(folder.resolve("pattern.hem"));
    List<Size> sizes = chart.sizes().subList(0, Math.min(SIZES, chart.sizes().size()));
    Document document = DocumentReader.read("pattern.hem", text);
    Plan plan = Plan.of(document, chart).plan();
    Median.of(30, 100, () -> Plan.of(DocumentReader.read("pattern.hem", text), chart))
        .print(name + ": read and plan", "");
    Median.of(60, 200, () -> plan.evaluate(sizes, DialSettings.NONE))
        .print(name + ": evaluate every piece in 20 sizes", "8 ms");
    int literal = firstDial(plan);
    double value = plan.literals().get(literal).value();
    Evaluation before = plan.evaluate(sizes, DialSettings.NONE);
    int[] turn = {0};
    Median.of(60, 200, () -> before.withLiteral(literal, value * (1 + 0.001 * (1 + turn[0]++ % 7))))
        .print(name + ": the same after one changed dial", "5 ms");
    SizeRun run = before.drawn().run();
    Median.of(20, 60, () -> Workbench.check(run)).print(name + ": every check", "");
    PaperOptions everything = PaperOptions.everything();
    Median.of(1, 3, () -> Workbench.print(run, everything, Progress.SILENT))
        .print(name + ": all printable files", "10 s");
    Median.of(1, 3, () -> Workbench.print(run, everything.on(PageFormat.EITHER), Progress.SILENT))
        .print(name + ": the pages for A4 and Letter", "");
  }

  /** A dial's own number: the first literal that is a length. */
  private static int firstDial(Plan plan) {
    List<Expression.Literal> literals = plan.literals();
    for (int i = 0; i < literals.size(); i++) {
      int start = literals.get(i).span().start();
      String before = plan.document().text().substring(Math.max(0, start - 40), start);
      if (before.contains("dial ") && before.stripTrailing().endsWith("=")) {
        return i;
      }
    }
    throw new IllegalArgumentException("the example has no dial");
  }
}
