package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as a browser shows it: narrow and wide, light and dark. */
class ReportInBrowserTest {
  /** For every text the contrast with what lies behind it (WCAG 2.2), those below the norm told. */
  private static final String FAINT =
      """
      () => {
        const part = v => { v /= 255; return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; };
        const light = c => 0.2126 * part(c[0]) + 0.7152 * part(c[1]) + 0.0722 * part(c[2]);
        const rgb = s => s.match(/[0-9.]+/g).map(Number);
        const behind = e => {
          for (; e; e = e.parentElement) {
            const c = rgb(getComputedStyle(e).backgroundColor);
            if (c.length < 4 || c[3] > 0) return c;
          }
          return [255, 255, 255];
        };
        const faint = [];
        for (const e of document.querySelectorAll('body *:not(svg *):not(style)')) {
          if (![...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim())) continue;
          const a = light(rgb(getComputedStyle(e).color)), b = light(behind(e));
          const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
          if (ratio < 4.5) faint.push(e.tagName + ' ' + e.className + ' ' + ratio.toFixed(2));
        }
        return faint;
      }
      """;

  @TempDir Path folder;

  @Test
  void itFitsAndCanBeReadInLightAndDark() throws IOException {
    Path tee = Path.of("..", "examples", "inlet-tee");
    Files.copy(tee.resolve("sizes.csv"), folder.resolve("sizes.csv"));
    Files.writeString(
        folder.resolve("pattern.hem"),
        Files.readString(tee.resolve("pattern.hem"))
                .replaceFirst("notch armhole at 45% from end", "notch armhole at 43% from end")
            + "accept cap-ease on \"seam armholes\" because \"Meant\"\n");
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
    var run = evaluated.run().orElseThrow();
    String html = Workbench.page(run, Workbench.check(run), evaluated, Optional.empty());

    try (Browser browser = Browser.open()) {
      Page page = browser.page();
      for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        for (int width : new int[] {820, 1280}) {
          page.setViewportSize(width, 900);
          page.setContent(html);
          String where = scheme + " at " + width;
          assertThat(page.evaluate("() => document.documentElement.scrollWidth"))
              .as(where)
              .isEqualTo(width);
          assertThat(page.evaluate(FAINT)).as(where).isEqualTo(List.of());
          assertThat(page.evaluate("() => document.scripts.length")).isEqualTo(0);
          assertThat(page.evaluate("() => document.querySelectorAll('a.pin').length"))
              .isNotEqualTo(0);
        }
      }
    }
  }
}
