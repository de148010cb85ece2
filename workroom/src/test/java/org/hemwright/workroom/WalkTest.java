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
      assertThat(page.locator("#sentence").textContent()).contains("5 mm");
      page.keyboard().press("Escape");
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
