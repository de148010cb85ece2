package org.hemwright.workbench;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A headless Chromium with one page, offline; where there is none, the test is skipped. */
final class Browser implements AutoCloseable {
  private final Playwright playwright;
  private final com.microsoft.playwright.Browser browser;
  private final Page page;

  private Browser(Path chromium) {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(chromium)
                    .setChromiumSandbox(false)
                    .setArgs(
                        List.of(
                            "--disable-gpu",
                            "--disable-quic",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync")));
    page = browser.newPage();
  }

  static Browser open() {
    Optional<Path> chromium =
        Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .map(Path::of)
            .filter(Files::isExecutable)
            .findFirst();
    assumeTrue(chromium.isPresent(), "Chromium is not installed");
    return new Browser(chromium.orElseThrow());
  }

  /** The one page. */
  Page page() {
    return page;
  }

  /** Shows a picture by itself. */
  Page show(String svg) {
    page.setContent(
        "<!doctype html><link rel=\"icon\" href=\"data:,\"><body>"
            + svg.replaceFirst("<\\?xml[^>]*>", "")
            + "</body>");
    return page;
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
