package org.hemwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;

/**
 * Lays the whole table of an example from nothing, and some of its sizes again with much more work.
 * Started by {@code bench/yardage}.
 */
public final class YardageBench {
  private static final List<String> EXAMPLES =
      List.of("eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt");
  private static final int CORES = 2;
  private static final double NANOS = 1e9;
  private static final double CLOSE = 0.01;

  private YardageBench() {}

  /** Arguments: how many times the work for the sample; names of examples, or --cells. */
  public static void main(String[] args) {
    long times = args.length > 0 ? Long.parseLong(args[0]) : 20;
    if (args.length > 1 && args[1].equals("--cells")) {
      cells(times);
      return;
    }
    List<String> names = args.length > 1 ? List.of(args).subList(1, args.length) : EXAMPLES;
    System.out.println(
        "| example | layings | fold and single | every fold | sample | within 1 % | worst |");
    System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
    for (String name : names) {
      System.out.println(row(name, times));
    }
  }

  private static String row(String name, long times) {
    Example example = Example.named(name);
    SizeRun run =
        Drafting.draft("pattern.hem", example.text(), example.chart()).run().orElseThrow();
    YardageRequest everything = YardageRequest.everything();
    double two = seconds(run, with(everything, EnumSet.of(Fold.LENGTHWISE, Fold.SINGLE), 1));
    double start = processor();
    YardageTable table = lay(run, everything);
    double all = (processor() - start) / CORES;
    List<String> sizes = sample(run);
    Map<List<Object>, Double> usual = lengths(table, sizes);
    Map<List<Object>, Double> best =
        lengths(lay(run, with(everything.inSizes(sizes), EnumSet.allOf(Fold.class), times)), sizes);
    int close = 0;
    double worst = 0;
    for (Map.Entry<List<Object>, Double> each : best.entrySet()) {
      double more = usual.getOrDefault(each.getKey(), 0.0) / each.getValue() - 1;
      close += more <= CLOSE ? 1 : 0;
      worst = Math.max(worst, more);
    }
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.1f s | %.1f s | %d | %d | %.2f %% |",
        name,
        table.rows().size(),
        two,
        all,
        best.size(),
        close,
        100 * worst);
  }

  /** One cell of each of three tables, the middle size, with the usual work and with much more. */
  private static void cells(long times) {
    System.out.println(
        "| cell | usual work | length | processor | more work | length | processor |");
    System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
    for (String name : EXAMPLES.subList(0, 3)) {
      Example example = Example.named(name);
      SizeRun run =
          Drafting.draft("pattern.hem", example.text(), example.chart()).run().orElseThrow();
      String size = run.sizes().get(run.sizes().size() / 2).size().name();
      YardageRequest usual =
          with(YardageRequest.everything().inSizes(List.of(size)), EnumSet.of(Fold.LENGTHWISE), 1);
      YardageRow first = needed(lay(run, usual));
      YardageRequest cell =
          usual
              .ofViews(List.of(first.view().name()))
              .ofFabrics(List.of(first.fabric().name()))
              .onWidths(List.of(first.width()));
      StringBuilder figures = new StringBuilder();
      for (long each : new long[] {1, times}) {
        double start = processor();
        YardageRow row = needed(lay(run, with(cell, cell.folds(), each)));
        figures.append(
            String.format(
                Locale.ROOT,
                " %.1f million | %.2f mm | %.0f s |",
                cell.work() * each / 1e6,
                row.need().orElseThrow().length(),
                processor() - start));
      }
      System.out.println("| " + name + ", size " + size + ", " + first.width() + " mm |" + figures);
    }
  }

  private static YardageRow needed(YardageTable table) {
    return table.rows().stream().filter(row -> row.need().isPresent()).findFirst().orElseThrow();
  }

  /** A small, a middle and a large size. */
  private static List<String> sample(SizeRun run) {
    List<String> names = new ArrayList<>();
    for (SizedPattern sized : run.sizes()) {
      names.add(sized.size().name());
    }
    int count = names.size();
    return List.of(names.get(count / 6), names.get(count / 2), names.get(count - 2));
  }

  private static YardageRequest with(YardageRequest request, Set<Fold> folds, long times) {
    return request.inFolds(folds).working(request.work() * times);
  }

  private static Map<List<Object>, Double> lengths(YardageTable table, List<String> sizes) {
    Map<List<Object>, Double> lengths = new LinkedHashMap<>();
    for (YardageRow row : table.rows()) {
      if (sizes.contains(row.size().name())) {
        row.need()
            .map(Need::length)
            .ifPresent(
                length ->
                    lengths.put(
                        List.of(
                            row.view().name(),
                            row.fabric().name(),
                            row.nap(),
                            row.size().name(),
                            row.width(),
                            row.fold()),
                        length));
      }
    }
    return lengths;
  }

  private static YardageTable lay(SizeRun run, YardageRequest request) {
    return YardageTable.of(run, request, LayingStore.NONE, YardageTable.Watcher.SILENT);
  }

  /** How long it takes on two cores that do nothing else. */
  private static double seconds(SizeRun run, YardageRequest request) {
    double start = processor();
    lay(run, request);
    return (processor() - start) / CORES;
  }

  private static double processor() {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return system.getProcessCpuTime() / NANOS;
  }
}
