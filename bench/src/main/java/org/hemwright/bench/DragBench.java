package org.hemwright.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workroom.Workroom;

/**
 * Drags a point of an example in the workroom, twenty sizes on the table, in headless Chromium, and
 * prints rows for docs/performance.md: how long it is from the pointer's event to the end of the
 * drawing that follows it, and after how many frames it is shown; how soon there is something to be
 * seen; the processor's time that each picture takes, in the page, the rest of the browser and the
 * server; and how much memory page and server have in use while it is edited over and over. The
 * load of the machine is told beside them. Started by {@code bench/drag}.
 */
public final class DragBench {
  private static final double MEGABYTE = 1 << 20;

  /** A frame at 60 Hz (ms). */
  private static final double FRAME = 1000.0 / 60;

  /** With the way to the browser and back this makes about 60 moves in a second (ms). */
  private static final int BETWEEN_MOVES = 12;

  private static final int SIZES = 20;

  private DragBench() {}

  /** Where the point lies, and sizes of the page in use (pixels). */
  private static final String LOOK =
      """
      async ({ piece, point, sizes }) => {
        const { looked } = await import('./table/table.js');
        const { put, select } = await import('./state.js');
        const { drawing } = await import('./table/pieces.js');
        const { onScreen } = await import('./table/canvas.js');
        select({ kind: 'piece', piece, name: piece });
        put({ from: 0, to: sizes - 1 });
        const view = looked();
        window.drags = [];
        view.followed = (since) => {
          const done = performance.now();
          requestAnimationFrame((frame) => window.drags.push([done - since, frame - since]));
        };
        const drawn = drawing(piece, view.size);
        const part = drawn.part('point', point);
        const box = document.querySelector('#table canvas').getBoundingClientRect();
        const n = drawn.numbers;
        const [x, y] = onScreen(view, view.places.get(piece), drawn, n[part.at], n[part.at + 1]);
        return [x + box.left, y + box.top];
      }
      """;

  /** Arguments: an example, a piece, a point on it, how many moves, how many edits. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("hemwright-drag");
    PackedFolder example = new PackedFolder(args[0]);
    for (String file : example.names()) {
      if (example.file(file) instanceof FolderFile.Content content) {
        Files.write(folder.resolve(file), content.bytes());
      }
    }
    List<String> log = new ArrayList<>();
    long start = System.nanoTime();
    try (BrowserDoor.Opened opened = new Workroom().open(Optional.of(folder), 0, log::add);
        Playwright playwright =
            Playwright.create(
                new Playwright.CreateOptions()
                    .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser =
            playwright
                .chromium()
                .launch(
                    new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setChromiumSandbox(false)
                        .setArgs(
                            List.of(
                                "--disable-gpu",
                                "--no-first-run",
                                "--enable-precise-memory-info",
                                "--js-flags=--expose-gc")))) {
      double served = (System.nanoTime() - start) / 1e6;
      Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(1280, 800));
      views(page, opened.address());
      int moves = Integer.parseInt(args[3]);
      System.out.printf(Locale.ROOT, "server ready after %.0f ms%n", served);
      drag(page, args, moves / 4);
      Processor before = Processor.now();
      List<double[]> drags = drag(page, args, moves);
      row(args, drags);
      Processor.now().since(before).tell(drags.size());
      memory(page, Integer.parseInt(args[4]));
      log.forEach(System.out::println);
    }
  }

  /** How soon pieces lie on the table: of five openings. */
  private static void views(Page page, String address) {
    double[] seen = new double[5];
    for (int i = 0; i < seen.length; i++) {
      page.navigate(address);
      page.waitForSelector(".tape-slide span");
      seen[i] =
          ((Number)
                  page.evaluate(
                      "() => new Promise((done) => requestAnimationFrame(() =>"
                          + " done(performance.now())))"))
              .doubleValue();
      page.waitForSelector(".cm-line");
    }
    System.out.printf(
        Locale.ROOT,
        "pieces on the table: first opening %.0f ms, median of five %.0f ms; load %.2f%n",
        seen[0],
        quantile(seen, 0.5),
        load());
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }

  private static double quantile(double[] numbers, double share) {
    double[] sorted = numbers.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }

  /** For each picture that followed the pointer: until it was drawn, until its frame (ms). */
  private static List<double[]> drag(Page page, String[] args, int moves)
      throws InterruptedException {
    List<?> at =
        (List<?>) page.evaluate(LOOK, Map.of("piece", args[1], "point", args[2], "sizes", SIZES));
    double x = ((Number) at.get(0)).doubleValue();
    double y = ((Number) at.get(1)).doubleValue();
    page.keyboard().down("Alt");
    page.mouse().move(x, y);
    page.mouse().down();
    for (int i = 0; i < moves; i++) {
      double turn = 2 * Math.PI * i / 90;
      page.mouse().move(x + 14 * Math.sin(turn), y + 14 * Math.sin(2 * turn));
      Thread.sleep(BETWEEN_MOVES);
    }
    page.waitForTimeout(200);
    page.keyboard().press("Escape");
    page.mouse().up();
    page.keyboard().up("Alt");
    page.waitForTimeout(200);
    List<double[]> drags = new ArrayList<>();
    for (Object each : (List<?>) page.evaluate("() => window.drags")) {
      List<?> pair = (List<?>) each;
      drags.add(pair.stream().mapToDouble(n -> ((Number) n).doubleValue()).toArray());
    }
    return drags;
  }

  private static void row(String[] args, List<double[]> drags) {
    double[] drawn = drags.stream().mapToDouble(each -> each[0]).toArray();
    double[] shown = drags.stream().mapToDouble(each -> each[1] / FRAME).toArray();
    System.out.println(
        "| dragged | pictures | median | 90 % | 99 % | frames, median | frames, 99 % | load |");
    System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
    System.out.printf(
        Locale.ROOT,
        "| %s, %s %s, %d sizes | %d | %.1f ms | %.1f ms | %.1f ms | %.1f | %.1f | %.2f |%n",
        args[0],
        args[1],
        args[2],
        SIZES,
        drags.size(),
        quantile(drawn, 0.5),
        quantile(drawn, 0.9),
        quantile(drawn, 0.99),
        quantile(shown, 0.5),
        quantile(shown, 0.99),
        load());
  }

  /** Writes a digit and takes it back, over and over, and tells what is in use between. */
  private static void memory(Page page, int edits) {
    page.evaluate(
        """
        async () => {
          const { EditorView } = await import('@codemirror/view');
          const { ask } = await import('./line.js');
          const editor = EditorView.findFromDOM(document.querySelector('.cm-editor'));
          window.editOver = async (times) => {
            for (let i = 0; i < times; i++) {
              const end = editor.state.doc.line(1).to;
              if (i % 2) editor.dispatch({ changes: { from: end - 1, to: end } });
              else editor.dispatch({ changes: { from: end, insert: 'x' } });
              await ask('text', { file: 'pattern.hem' });
            }
          };
        }
        """);
    System.out.println("| edits | page | server |");
    System.out.println("| --- | --- | --- |");
    int part = Math.max(2, edits / 10);
    for (int done = 0; done <= edits; done += part) {
      page.evaluate("() => { gc(); gc(); }");
      double used =
          ((Number) page.evaluate("() => performance.memory.usedJSHeapSize")).doubleValue();
      System.gc();
      double server = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / MEGABYTE;
      System.out.printf(Locale.ROOT, "| %d | %.1f MB | %.1f MB |%n", done, used / MEGABYTE, server);
      page.evaluate("(times) => window.editOver(times)", part);
    }
  }
}
