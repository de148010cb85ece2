package org.hemwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The time that this program and the browser it started have had of the processor (ms), as Linux
 * tells it of each thread; all of it 0 elsewhere.
 *
 * @param page the main threads of the browser's pages
 * @param browser all else of the browser
 * @param server this program's threads that serve a room
 * @param compiler this program's threads that compile
 */
record Processor(double page, double browser, double server, double compiler) {
  private static final double NANOS = 1e6;

  static Processor now() {
    Processor all = new Processor(0, 0, 0, 0);
    List<ProcessHandle> processes =
        Stream.concat(Stream.of(ProcessHandle.current()), ProcessHandle.current().descendants())
            .toList();
    for (ProcessHandle each : processes) {
      Path process = Path.of("/proc", Long.toString(each.pid()));
      try (Stream<Path> threads = Files.list(process.resolve("task"))) {
        boolean own = each.equals(ProcessHandle.current());
        String command = Files.readString(process.resolve("cmdline"));
        for (Path thread : threads.toList()) {
          String name = Files.readString(thread.resolve("comm")).strip();
          double time =
              Double.parseDouble(Files.readString(thread.resolve("schedstat")).split(" ")[0]);
          boolean main = thread.getFileName().toString().equals(Long.toString(each.pid()));
          all = all.with(time / NANOS, own, command, main, name);
        }
      } catch (IOException gone) {
        // It ended meanwhile, or this is another system.
      }
    }
    return all;
  }

  private Processor with(double time, boolean own, String command, boolean main, String name) {
    if (own && name.contains("Compile")) {
      return new Processor(page, browser, server, compiler + time);
    }
    if (own && (name.startsWith("room") || name.startsWith("ForkJoin"))) {
      return new Processor(page, browser, server + time, compiler);
    }
    if (command.contains("--type=renderer") && main) {
      return new Processor(page + time, browser, server, compiler);
    }
    return command.contains("chromium") && !command.contains("playwright/driver")
        ? new Processor(page, browser + time, server, compiler)
        : this;
  }

  /** What came since. */
  Processor since(Processor before) {
    return new Processor(
        page - before.page,
        browser - before.browser,
        server - before.server,
        compiler - before.compiler);
  }

  /** Prints a row of what each of so many pictures took. */
  void tell(int pictures) {
    System.out.println(
        "| processor for each picture | page | rest of browser | server | compiler |");
    System.out.println("| --- | --- | --- | --- | --- |");
    System.out.printf(
        Locale.ROOT,
        "| | %.1f ms | %.1f ms | %.1f ms | %.1f ms |%n",
        page / pictures,
        browser / pictures,
        server / pictures,
        compiler / pictures);
  }
}
