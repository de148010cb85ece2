package org.hemwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.out.OutFolder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A whole publication, from the folder to the last file, with half a gigabyte of memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
    value = 1,
    jvmArgs = {"-Xmx512m"})
public class PublishBenchmark {
  /** Which example. */
  @Param({"inlet-tee", "marram-trousers", "eddy-skirt", "brackish-skirt", "shingle-shirt"})
  public String example = "";

  private Path out = Path.of("");

  /** A folder that is empty at each publication. */
  @Setup(Level.Iteration)
  public void makeRoom() throws IOException {
    out = Files.createTempDirectory("hemwright-bench");
  }

  /** Leaves nothing behind. */
  @TearDown(Level.Iteration)
  public void clear() throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.walk(out)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : all) {
      Files.delete(each);
    }
  }

  /** The goal: at most 10 s. */
  @Benchmark
  public Publication publish() throws IOException {
    return publish(PaperOptions.everything());
  }

  /** The pages that print on A4 and on Letter alone. */
  @Benchmark
  public Publication publishPages() throws IOException {
    return publish(PaperOptions.everything().on(PageFormat.EITHER));
  }

  private Publication publish(PaperOptions options) throws IOException {
    Evaluated evaluated = Workbench.evaluate(new PackedFolder(example));
    return Publication.of(
        evaluated,
        evaluated.run().orElseThrow(),
        new PublishOrder(
            options,
            progress -> new YardageTable(List.of()),
            new OutFolder(out),
            Optional.empty(),
            false),
        Progress.SILENT);
  }
}
