package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pieces moved on the cloth by hand: refused where they overlap, kept where they hold. What no
 * longer holds is {@code OwnLayingsTest}'s.
 */
class ClothByHandTest {
  @TempDir Path folder;

  private static void press(Page page, String name) {
    page.locator("button", new Page.LocatorOptions().setHasText(name)).first().click();
  }

  /** Drags the middle of one piece to a place of the window. */
  private static void drag(Page page, Locator piece, double x, double y) {
    BoundingBox box = piece.boundingBox();
    page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
    page.mouse().down();
    page.mouse().move((box.x + x) / 2, (box.y + y) / 2);
    page.mouse().move(x, y);
    page.mouse().up();
  }

  @Test
  void whatOverlapsIsRefusedAndWhatHoldsIsKept() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "marram-trousers");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      Page page = table.page();
      page.locator("#jobs button", new Page.LocatorOptions().setHasText("Cloth")).click();
      page.waitForSelector(".laying-figure", new Page.WaitForSelectorOptions().setTimeout(120_000));
      press(page, "Arrange by hand");
      page.waitForSelector(".board-piece");
      Locator pocket =
          page.locator(".board-piece", new Page.LocatorOptions().setHasText("3")).first();
      BoundingBox leg = page.locator(".board-piece").first().boundingBox();
      String before = page.locator(".board-takes").textContent();
      drag(page, pocket, leg.x + leg.width / 2, leg.y + leg.height / 2);
      page.waitForSelector(".board-said:has-text('cannot lie there: it would lie on')");
      assertThat(page.locator(".board-takes").textContent()).isEqualTo(before);
      BoundingBox end = page.locator(".board-end").boundingBox();
      drag(page, pocket, end.x + 60, leg.y + leg.height / 2);
      page.waitForFunction(
          "before => document.querySelector('.board-takes').textContent !== before", before);
      press(page, "Keep this laying");
      page.waitForSelector(".cloth-row:has-text('laid by hand')");
      OpenFolder.await(() -> Files.exists(folder.resolve("layings.csv")));
      String kept = Files.readString(folder.resolve("layings.csv"));
      assertThat(kept).contains("view,fabric,nap,size").contains(",14,");
      press(page, "Lay it anew");
      page.waitForFunction("() => !document.body.textContent.includes('laid by hand')");
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
