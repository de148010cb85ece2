package org.hemwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.out.OutFolder;

/**
 * Makes whole packages again and again in one warm program, and prints a row for
 * docs/performance.md: the clock's time, the processor's, and the most memory that was in use. The
 * machine may be shared, so the processor's time says more than the clock's. Started by {@code
 * bench/package}.
 */
public final class PackageBench {
  private static final double NANOS = 1e9;
  private static final double MEGABYTE = 1 << 20;

  private PackageBench() {}

  /** What is made. */
  private enum Made {
    /** The printable pattern alone: read, draft, check, print. */
    PATTERN,
    /** The whole package, every cloth laid anew. */
    WHOLE
  }

  /** Arguments: how often; "pattern" or "whole"; names of examples. */
  public static void main(String[] args) throws IOException {
    int times = Integer.parseInt(args[0]);
    Made made = Made.valueOf(args[1].toUpperCase(Locale.ROOT));
    System.out.println("| package | sizes | clock | processor | most memory |");
    System.out.println("| --- | --- | --- | --- | --- |");
    for (String name : List.of(args).subList(2, args.length)) {
      System.out.println(row(name, made, times));
    }
  }

  private static String row(String name, Made made, int times) throws IOException {
    double[] clock = new double[times];
    double[] processor = new double[times];
    int sizes = 0;
    publish(name, made);
    heaps().forEach(MemoryPoolMXBean::resetPeakUsage);
    for (int i = 0; i < times; i++) {
      long start = System.nanoTime();
      long used = processor();
      sizes = publish(name, made);
      clock[i] = (System.nanoTime() - start) / NANOS;
      processor[i] = (processor() - used) / NANOS;
    }
    double memory = heaps().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / MEGABYTE;
    Arrays.sort(clock);
    Arrays.sort(processor);
    return String.format(
        Locale.ROOT,
        "| %s, %s | %d | %.1f s | %.1f s | %.0f MB |",
        name,
        made == Made.WHOLE ? "whole package" : "pattern files",
        sizes,
        clock[times / 2],
        processor[times / 2],
        memory);
  }

  private static long processor() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static Stream<MemoryPoolMXBean> heaps() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP);
  }

  private static int publish(String name, Made made) throws IOException {
    Path out = Files.createTempDirectory("hemwright-package");
    try {
      Evaluated evaluated = Workbench.evaluate(new PackedFolder(name));
      SizeRun run = evaluated.run().orElseThrow();
      PaperOptions options = PaperOptions.everything().withPictures();
      if (made == Made.PATTERN) {
        Workbench.check(run);
        for (PrintedFile file : Workbench.print(evaluated, run, options, Progress.SILENT).files()) {
          new OutFolder(out).replace(file.name(), file.bytes());
        }
      } else {
        Publication.of(
            evaluated,
            run,
            new PublishOrder(
                options,
                progress ->
                    Workbench.yardage(run, YardageRequest.everything(), LayingStore.NONE, progress),
                new OutFolder(out),
                Optional.empty(),
                false),
            Progress.SILENT);
      }
      return run.sizes().size();
    } finally {
      List<Path> all;
      try (Stream<Path> files = Files.walk(out)) {
        all = files.sorted(Comparator.reverseOrder()).toList();
      }
      for (Path each : all) {
        Files.delete(each);
      }
    }
  }
}
