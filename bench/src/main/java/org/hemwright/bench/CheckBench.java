package org.hemwright.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;

/**
 * Asks every check of runs that are drawn anew each time, and prints rows for docs/performance.md:
 * each example in twenty sizes, then a tube of panels written for the purpose in more and more
 * sizes, then of more and more pieces. Started by {@code bench/checks}.
 */
public final class CheckBench {
  private static final double MILLIS = 1e6;
  private static final int[] STEPS = {5, 10, 20, 40};

  private CheckBench() {}

  /** Arguments: how often; names of examples. */
  public static void main(String[] args) {
    int times = Integer.parseInt(args[0]);
    System.out.println("| checked | sizes | pieces | clock | processor |");
    System.out.println("| --- | --- | --- | --- | --- |");
    for (String name : List.of(args).subList(1, args.length)) {
      Example example = Example.named(name);
      System.out.println(row(name, example.plan(), example.twenty().size(), times));
    }
    for (int sizes : STEPS) {
      System.out.println(row("panels", panels(10, sizes), sizes, times));
    }
    for (int pieces : STEPS) {
      System.out.println(row("panels", panels(pieces, 20), 20, times));
    }
  }

  private static String row(String name, Plan plan, int sizes, int times) {
    double[] clock = new double[times];
    double[] processor = new double[times];
    int pieces = 0;
    for (int i = -times; i < times; i++) {
      SizeRun run =
          plan.evaluate(plan.chart().sizes().subList(0, sizes), DialSettings.NONE).drawn().run();
      pieces = run.pattern().pieces().size();
      long start = System.nanoTime();
      long used = processor();
      Workbench.check(run);
      int round = Math.floorMod(i, times);
      processor[round] = (processor() - used) / MILLIS;
      clock[round] = (System.nanoTime() - start) / MILLIS;
    }
    Arrays.sort(clock);
    Arrays.sort(processor);
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %.1f ms | %.1f ms |",
        name,
        sizes,
        pieces,
        clock[times / 2],
        processor[times / 2]);
  }

  /** What all threads of the program have worked, without the compiler and the collector (ns). */
  private static long processor() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    return Arrays.stream(threads.getAllThreadIds()).map(threads::getThreadCpuTime).sum();
  }

  /** A tube of panels with curved sides, each sewn to the next and the last to the first. */
  private static Plan panels(int pieces, int sizes) {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "language 1",
                "pattern \"Panels\"",
                "version 1.0",
                "dated 2026-11-25",
                "by \"Tern Cove Patterns\"",
                "sizes from \"sizes.csv\" base 5",
                "",
                "fabric main woven",
                "  widths 115 cm, 150 cm",
                "",
                "let part = hip / " + pieces,
                ""));
    for (int i = 1; i <= pieces; i++) {
      lines.addAll(
          List.of(
              "piece panel" + i + " \"Panel " + i + "\" number " + i,
              "  cut 1 of main",
              "  point foot at 0 cm, 0 cm",
              "  point foot_right from foot right part + 2 cm",
              "  point hip_left from foot right 1 cm then up 60 cm",
              "  point hip_right from hip_left right part",
              "  point top_left from hip_left right 5 mm then up 20 cm",
              "  point top_right from hip_right left 5 mm then up 20 cm",
              "  curve right_line from foot_right to hip_right arriving up, then to top_right",
              "  curve left_line from top_left to hip_left arriving down, then to foot",
              "  outline left is left_line, hem is straight, right is right_line, top is straight",
              "  allowance 1 cm, hem 2 cm turned back",
              "  notch right at hip_right",
              "  notch left at hip_left",
              "  grain up",
              ""));
    }
    for (int i = 1; i <= pieces; i++) {
      lines.add(
          "seam seam"
              + i
              + " panel"
              + i
              + ".right with panel"
              + (i % pieces + 1)
              + ".left reversed");
    }
    lines.add("");
    lines.add("make");
    for (int i = 1; i <= pieces; i++) {
      String seam = "seam" + i;
      lines.add("  sew " + seam + " with straight stitch 2.5 mm");
      lines.add("  finish " + seam + " together with overlock, press toward panel" + i);
    }
    for (int i = 1; i <= pieces; i++) {
      String panel = "panel" + i;
      lines.add("  finish " + panel + ".hem with overlock");
      lines.add("  hem " + panel + ".hem with straight stitch 2.5 mm");
      lines.add("  bind " + panel + ".top with straight stitch 2.5 mm");
    }
    StringBuilder rows = new StringBuilder("size,hip (cm),waist (cm)\n");
    for (int i = 1; i <= sizes; i++) {
      rows.append(String.format(Locale.ROOT, "%d,%d,%d%n", i, 80 + 2 * i, 60 + 2 * i));
    }
    SizeChart chart =
        ChartReader.read("sizes.csv", rows.toString().getBytes(UTF_8)).chart().orElseThrow();
    Planned planned =
        Plan.of(
            DocumentReader.read(PatternFolder.DOCUMENT, String.join("\n", lines) + "\n"), chart);
    if (!planned.findings().isEmpty()) {
      throw new IllegalStateException("the panels have problems: " + planned.findings());
    }
    return planned.plan();
  }
}
