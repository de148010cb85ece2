package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Holds a page against the rules of WCAG 2.2, levels A and AA, by axe-core, and keeps a picture of
 * it in {@code target/views} to be looked at.
 *
 * @param width of the window (px)
 * @param dark whether by night
 */
record Axe(Page page, int width, boolean dark) {
  private static final String RULES =
      """
      async () => {
        const found = await axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa',
          'wcag22aa', 'best-practice'] });
        return found.violations.map((v) => v.id + ': ' + v.nodes.map((n) => n.html.slice(0, 160) + ' '
          + n.failureSummary.replaceAll('\\n', ' ')).slice(0, 3).join(' | '));
      }
      """;

  /** Puts the rules into a page. */
  static Axe in(Page page, int width, boolean dark) throws IOException {
    try (InputStream script = Axe.class.getResourceAsStream("/axe.min.js")) {
      assertThat(script).isNotNull();
      page.evaluate(new String(script.readAllBytes(), StandardCharsets.UTF_8));
    }
    return new Axe(page, width, dark);
  }

  /** The height of a window of this width (px). */
  static int high(int width) {
    return width == 1280 ? 800 : 1180;
  }

  /** Keeps a picture of the page as it stands, once nothing on it moves but a caret that blinks. */
  String picture(String view) throws IOException {
    page.waitForFunction(
        """
        () => document.getAnimations().every((each) => each.playState !== 'running'
          || each.effect.getComputedTiming().iterations === Infinity)
        """);
    Path pictures = Files.createDirectories(Path.of("target/views"));
    String name = view + "-" + width + (dark ? "-night" : "-day");
    page.screenshot(new Page.ScreenshotOptions().setPath(pictures.resolve(name + ".png")));
    return name;
  }

  /** Looks at the page as it stands. */
  void look(String view) throws IOException {
    String name = picture(view);
    List<?> found = (List<?>) page.evaluate(RULES);
    assertThat(found).as(name).isEmpty();
    Object wide = page.evaluate("() => document.documentElement.scrollWidth - innerWidth");
    assertThat(((Number) wide).intValue()).as(name + " is as wide as its window").isZero();
  }
}
