package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every view at two sizes of window, by day and by night: axe-core finds nothing against the rules
 * of WCAG 2.2, levels A and AA, and the console stays empty. The pictures are kept in {@code
 * target/views} to be looked at.
 */
class EveryViewTest {
  @TempDir Path folder;

  private static final String RULES =
      """
      async () => {
        const found = await axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa',
          'wcag22aa', 'best-practice'] });
        return found.violations.map((v) => v.id + ': ' + v.nodes.map((n) => n.html.slice(0, 160) + ' '
          + n.failureSummary.replaceAll('\\n', ' ')).slice(0, 3).join(' | '));
      }
      """;

  private static String axe() throws Exception {
    try (InputStream script = EveryViewTest.class.getResourceAsStream("/axe.min.js")) {
      assertThat(script).isNotNull();
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void nothingStandsInAnybodysWay() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    String axe = axe();
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee")) {
      Files.writeString(
          folder.resolve("pattern.hem"),
          open.document()
              .replaceFirst("allowance 1 cm, hem 2.5", "allowance 1.5 cm, hem 2.5")
              .replaceFirst("spelling American", "speling American"));
      open.restart();
      try (Chromium chromium = Chromium.start()) {
        for (boolean dark : List.of(false, true)) {
          for (int width : List.of(1280, 820)) {
            Table table = chromium.window(open.address(), width, width == 1280 ? 800 : 1180, dark);
            Page page = table.page();
            page.evaluate(axe);
            int jobs = page.locator("#jobs button").count();
            for (int job = 0; job < jobs; job++) {
              page.locator("#jobs button").nth(job).click();
              page.waitForTimeout(400);
              look(
                  page, pictures, page.locator("#jobs button").nth(job).textContent(), width, dark);
            }
            page.locator("#moments").click();
            page.waitForTimeout(400);
            look(page, pictures, "moments", width, dark);
            page.locator("#jobs button", new Page.LocatorOptions().setHasText("Draft")).click();
            table.choose("Sleeve");
            page.waitForTimeout(300);
            look(page, pictures, "piece", width, dark);
            page.locator(".members button").first().click();
            page.locator(".tape-end").click();
            page.waitForTimeout(300);
            look(page, pictures, "edge", width, dark);
            page.locator("[data-add='point']").click();
            double[] top = table.at("point", "sleeve", "cap_top");
            page.mouse().click(top[0] + 20, top[1] + 60);
            page.waitForSelector(".add-way input");
            look(page, pictures, "adding", width, dark);
            page.keyboard().press("Escape");
            page.locator("[data-walk]").first().click();
            page.waitForSelector("#sentence input[type=range]");
            page.waitForTimeout(400);
            look(page, pictures, "walk", width, dark);
            page.locator("#sentence button").last().click();
            page.close();
          }
        }
        assertThat(chromium.complaints()).isEmpty();
      }
    }
  }

  @Test
  void norOnTheStartPageOrWhileShownRound() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    String axe = axe();
    try (OpenFolder before =
            OpenFolder.example(Files.createDirectory(folder.resolve("tee")), "inlet-tee");
        Chromium chromium = Chromium.start()) {
      assertThat(before.log()).isEmpty();
      for (boolean dark : List.of(false, true)) {
        for (int width : List.of(1280, 820)) {
          try (BrowserDoor.Opened opened =
              new Workroom(Remembered.in(folder.resolve("new " + width + dark)), folder)
                  .open(Optional.empty(), 0, sentence -> {})) {
            Page page = chromium.page(opened.address(), width, width == 1280 ? 800 : 1180, dark);
            page.waitForSelector(".start-cards img");
            page.evaluate(axe);
            page.locator(".start-card").last().scrollIntoViewIfNeeded();
            page.waitForTimeout(2500);
            page.evaluate("scrollTo(0, 0)");
            look(page, pictures, "start", width, dark);
            page.locator("button.start-card").first().click();
            page.waitForSelector(".guide .chief");
            page.evaluate(axe);
            look(page, pictures, "offer", width, dark);
            for (int station = 0; station < 7; station++) {
              page.locator(".guide .chief").click();
              page.waitForTimeout(200);
              look(page, pictures, "round" + "abcdefg".charAt(station), width, dark);
            }
            page.close();
          }
        }
      }
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static void look(Page page, Path pictures, String view, int width, boolean dark) {
    String name = view.replaceAll("[^A-Za-z].*", "").toLowerCase(java.util.Locale.ROOT);
    page.screenshot(
        new Page.ScreenshotOptions()
            .setPath(pictures.resolve(name + "-" + width + (dark ? "-night" : "-day") + ".png")));
    List<?> found = (List<?>) page.evaluate(RULES);
    assertThat(found).as(name + " at " + width + (dark ? " by night" : " by day")).isEmpty();
  }
}
