package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Named moments, laid on what is now, and gone back to; after a restart too. */
class MomentsTest {
  @TempDir Path folder;

  @Test
  void aMomentIsNamedComparedAndGoneBackTo() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Page page = chromium.window(open.address()).page();
      page.locator("#moments").click();
      page.getByLabel("What is this moment called?").fill("Before the <b>sample</b>");
      page.keyboard().press("Enter");
      page.waitForSelector(".moment >> text=nothing written since");
      page.waitForSelector("text=Every text stands as it did then.");
      page.waitForSelector("#kept:has-text('Every change is kept.')");
      page.close();
      open.restart();
      Table table = chromium.window(open.address());
      page = table.page();
      table.caretAfter("dial elastic_width = 3");
      page.keyboard().type(".5");
      String after = open.documentOnce(text -> text.contains("elastic_width = 3.5 cm"));
      page.locator("#moments").click();
      page.waitForSelector(".moment-piece img");
      assertThat(page.locator(".sheet h2").textContent())
          .isEqualTo("Since “Before the <b>sample</b>”");
      assertThat(page.locator(".moment-piece img").first().getAttribute("alt"))
          .contains("Waistband", "size 16");
      assertThat(page.locator(".moment-piece li").allTextContents()).isNotEmpty();
      page.locator(".moment-back button").click();
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);
      page.waitForSelector("text=Every text stands as it did then.");
      page.locator("#undo").click();
      assertThat(open.documentOnce(after::equals)).isEqualTo(after);
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
