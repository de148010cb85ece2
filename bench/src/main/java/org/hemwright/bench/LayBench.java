package org.hemwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.hemwright.cloth.laying.LayBudget;
import org.hemwright.cloth.laying.LayFile;
import org.hemwright.cloth.laying.LayFileRefused;
import org.hemwright.cloth.laying.LayResult;
import org.hemwright.cloth.laying.LayWatcher;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.laying.LayoutChecker;
import org.hemwright.cloth.laying.StripProblem;

/**
 * Lays the published instances in ../shared/data/strip-packing for a given time of the processor, a
 * peer beside it, and prints rows for docs/performance.md. Started by {@code bench/lay}.
 */
public final class LayBench {
  private static final Path FOLDER = folder();
  private static final int CORES = 2;
  private static final double EXPLORED = 0.8;
  private static final double NANOS = 1e9;

  private LayBench() {}

  /** Arguments: the peer's program or "none"; seconds; names of instances, or --random COUNT. */
  public static void main(String[] args) throws IOException, InterruptedException {
    double seconds = Double.parseDouble(args[1]);
    if (args.length > 2 && args[2].equals("--random")) {
      RandomInstances.lay(Integer.parseInt(args[3]));
      return;
    }
    List<String> names = args.length > 2 ? List.of(args).subList(2, args.length) : every();
    System.out.println("| instance | density | places | time, two cores | libnest2d | passes |");
    System.out.println("| --- | --- | --- | --- | --- | --- |");
    for (String name : names) {
      StripProblem problem = problem(name);
      String peer =
          args[0].equals("none") ? "| |" : LayPeer.row(Path.of(args[0]), problem, seconds);
      System.out.println("| " + name + " | " + own(problem, seconds) + " " + peer);
    }
  }

  /** The nearest shared/data/strip-packing above the working directory. */
  private static Path folder() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path folder = at.resolve("shared/data/strip-packing");
      if (Files.isDirectory(folder)) {
        return folder;
      }
    }
    throw new IllegalStateException("there is no ../shared/data/strip-packing here");
  }

  private static List<String> every() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.replace(".json", ""))
          .sorted()
          .toList();
    }
  }

  private static StripProblem problem(String name) throws IOException {
    try {
      Path file = FOLDER.resolve(name + ".json");
      return LayFile.read(file.toString(), Files.readString(file)).problem();
    } catch (LayFileRefused refused) {
      throw new IllegalArgumentException(name + " cannot be laid", refused);
    }
  }

  private static String own(StripProblem problem, double seconds) {
    double start = processorSeconds();
    LayResult result =
        new Laying(problem)
            .lay(
                new LayBudget(Long.MAX_VALUE / 4, 1),
                progress -> {
                  double used = (processorSeconds() - start) / CORES;
                  if (used >= seconds) {
                    return LayWatcher.Wish.STOP;
                  }
                  return used >= EXPLORED * seconds
                      ? LayWatcher.Wish.COME_TO_AN_END
                      : LayWatcher.Wish.GO_ON;
                });
    if (!new LayoutChecker(problem).accepts(result.layout())) {
      return "refused | | |";
    }
    return String.format(
        Locale.ROOT,
        "%.2f %% | %.0f million | %.0f s |",
        100 * result.layout().density(problem),
        result.work() / 1e6,
        (processorSeconds() - start) / CORES);
  }

  private static double processorSeconds() {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return system.getProcessCpuTime() / NANOS;
  }
}
