package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A seam is walked as on the table (handbook section 1, "Trueing and walking"): one piece rolls
 * along the other, notches meet, what is left over is told.
 */
class WalkTest {
  @TempDir Path folder;

  @Test
  void onePieceRollsAlongTheOther() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).choose("Front").page();
      page.locator(".members button", new Page.LocatorOptions().setHasText("side")).first().click();
      page.locator("[data-walk='sides']").click();
      Locator along = page.locator("#sentence input[type=range]");
      along.waitFor();
      assertThat(page.locator("#sentence").textContent())
          .contains("They end together.", "meets its mate");
      along.focus();
      page.keyboard().press("Home");
      for (int i = 0; i < 30; i++) {
        page.keyboard().press("ArrowRight");
      }
      page.screenshot(new Page.ScreenshotOptions().setPath(pictures.resolve("walk-1280-day.png")));
      page.keyboard().press("End");
      page.keyboard().press("Escape");
      assertThat(page.locator("#sentence").isHidden()).isTrue();

      // The sleeve's cap is eased by 5 mm onto the armhole: so much is left over.
      page.locator(".ledger-path button").first().click();
      page.locator(".ledger-list button", new Page.LocatorOptions().setHasText("Sleeve")).click();
      page.locator(".members button", new Page.LocatorOptions().setHasText("cap")).first().click();
      page.locator("[data-walk='armholes']").click();
      along.waitFor();
      assertThat(page.locator("#sentence").textContent())
          .contains("5 mm", "from a seam or fold of the other", "meets its mate")
          .doesNotContain("meets none");
      page.keyboard().press("Escape");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  /** The back lies between two yokes: each of the three layers may lie still, each may roll. */
  @Test
  void anyTwoLayersOfASeamAreWalked() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "shingle-shirt");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).choose("Back").page();
      page.locator(".members button", new Page.LocatorOptions().setHasText("yoke")).first().click();
      page.locator("[data-walk='back_yoke_seam']").click();
      page.locator("#sentence input[type=range]").waitFor();
      String first = page.locator("#sentence").textContent();
      assertThat(page.locator("#walk-still option").allTextContents())
          .hasSize(3)
          .anyMatch(each -> each.startsWith("Back, "))
          .anyMatch(each -> each.startsWith("Yoke, ") && each.contains("inner"));
      page.locator("#walk-rolls").focus();
      page.keyboard().press("ArrowDown");
      page.waitForFunction(
          "() => document.activeElement.id === 'walk-rolls'"
              + " && document.activeElement.selectedOptions[0].textContent.includes('inner')");
      page.locator("#walk-still").selectOption("1");
      page.waitForFunction(
          "() => document.querySelector('#walk-still')?.selectedOptions[0].value === '1'");
      assertThat(page.locator("#sentence").textContent()).contains("lie still").isNotEqualTo(first);
      page.keyboard().press("Escape");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void anotherSizeOrHowItWasIsLaidOnTheDrawing() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      Page page = table.page();
      page.locator("[data-dial]").first().focus();
      for (int i = 0; i < 3; i++) {
        page.keyboard().press("PageDown");
      }
      String before = open.document();
      open.documentOnce(text -> !text.equals(before));
      int bare = brass(page);
      page.locator("#underlay").focus();
      page.waitForSelector("#underlay optgroup >> nth=1", ATTACHED);
      page.locator("#underlay").selectOption("moment 0");
      OnDisk.await(() -> brass(page) > bare + 200);
      assertThat(brass(page))
          .as("pixels of brass, where the cut lines lay")
          .isGreaterThan(bare + 200);
      page.screenshot(
          new Page.ScreenshotOptions().setPath(pictures.resolve("laid-on-1280-day.png")));
      page.locator("#underlay").selectOption("size 1");
      OnDisk.await(() -> brass(page) > bare + 200);
      assertThat(brass(page)).isGreaterThan(bare + 200);
      page.locator("#underlay").selectOption("");
      OnDisk.await(() -> brass(page) <= bare);
      assertThat(brass(page)).isLessThanOrEqualTo(bare);
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static final Page.WaitForSelectorOptions ATTACHED =
      new Page.WaitForSelectorOptions()
          .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);

  /** How many pixels of the table are of brass, near enough. */
  private static int brass(Page page) {
    Object count =
        page.evaluate(
            """
            () => {
              const canvas = document.querySelector('#table canvas');
              const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d', { willReadFrequently: true });
              copy.drawImage(canvas, 0, 0);
              const { data } = copy.getImageData(0, 0, canvas.width, canvas.height);
              let count = 0;
              for (let i = 0; i < data.length; i += 4) {
                if (Math.abs(data[i] - 0x7d) < 12 && Math.abs(data[i + 1] - 0x5d) < 12 && Math.abs(data[i + 2] - 0x15) < 14) count++;
              }
              return count;
            }
            """);
    return ((Number) count).intValue();
  }
}
