package org.hemwright.workroom;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A headless Chromium; where there is none, the test is skipped. With {@code -Dhemwright.slower=6}
 * its pages run six times slower than the machine, as on an old laptop.
 */
final class Chromium implements AutoCloseable {
  /**
   * How long a page is waited for at most (ms): what takes seconds here takes minutes elsewhere.
   */
  private static final int PATIENCE = 300_000;

  private static final double SLOWER =
      Double.parseDouble(System.getProperty("hemwright.slower", "1"));

  private final Playwright playwright;
  private final Browser browser;
  private final List<String> complaints = new ArrayList<>();

  private Chromium(Path program) {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(program)
                    .setChromiumSandbox(false)
                    .setArgs(
                        List.of(
                            "--disable-gpu",
                            "--disable-quic",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync")));
  }

  static Chromium start() {
    Optional<Path> program =
        Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .map(Path::of)
            .filter(Files::isExecutable)
            .findFirst();
    assumeTrue(program.isPresent(), "Chromium is not installed");
    return new Chromium(program.orElseThrow());
  }

  /** What pages complained of in their consoles. */
  List<String> complaints() {
    return complaints;
  }

  /** A window of this size on a workroom, once the pieces lie on the table. */
  Table window(String address, int width, int height, boolean dark) {
    return opened(page(address, width, height, dark));
  }

  /** A window whose line to the workroom can be held. */
  Table window(String address, HeldLine line) {
    return opened(page(address, line));
  }

  /** The same, as soon as the page is there. */
  Page page(String address, HeldLine line) {
    Page page = blank(1280, 800, false);
    line.hang(page);
    page.navigate(address);
    return page;
  }

  private static Table opened(Page page) {
    page.waitForSelector(".tape-slide span");
    page.waitForSelector(".cm-line");
    return new Table(page);
  }

  /** A window of this size on a page. */
  Page page(String address, int width, int height, boolean dark) {
    Page page = blank(width, height, dark);
    page.navigate(address);
    return page;
  }

  private Page blank(int width, int height, boolean dark) {
    Page page =
        browser.newPage(
            new Browser.NewPageOptions()
                .setViewportSize(width, height)
                .setColorScheme(dark ? ColorScheme.DARK : ColorScheme.LIGHT));
    page.setDefaultTimeout(PATIENCE);
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(message.text());
          }
        });
    page.onPageError(complaints::add);
    if (SLOWER > 1) {
      JsonObject rate = new JsonObject();
      rate.addProperty("rate", SLOWER);
      page.context().newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
    }
    return page;
  }

  /** The usual window. */
  Table window(String address) {
    return window(address, 1280, 800, false);
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
