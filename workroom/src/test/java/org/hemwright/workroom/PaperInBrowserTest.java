package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The preview shows the pages that the files then have. */
class PaperInBrowserTest {
  @TempDir Path folder;

  @Test
  void asManyPagesAreShownAsAreThenPrinted() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      Page page = table.page();
      new Hands(page).job("Paper");
      page.waitForSelector(".paper-leaf img");
      int either = page.locator(".paper-leaf").count();
      page.getByLabel("A4", new Page.GetByLabelOptions().setExact(true)).check();
      page.waitForSelector(".sheet h2:text-matches('for A4$')");
      int shown = page.locator(".paper-leaf").count();
      assertThat(shown).isLessThan(either).isGreaterThan(20);
      int needed = page.locator(".paper-leaf.pieces:not(.spare)").count();
      assertThat(needed).isPositive().isLessThan(page.locator(".paper-leaf.pieces").count());
      page.locator(".paper-leaf.pieces").first().click();
      page.waitForSelector(".near-page[src]");
      page.locator(".near-acts .after").click();
      assertThat(page.locator(".near-acts h2").textContent()).startsWith("Page ");
      page.locator(".near-acts button").first().click();
      page.locator(".paper-acts .chief").click();
      page.waitForSelector(".made li");
      assertThat(page.locator(".made li").count()).isEqualTo(1);
      Path file;
      try (var made = Files.list(folder.resolve("out/paper"))) {
        file = made.findFirst().orElseThrow();
      }
      try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
        assertThat(document.getNumberOfPages()).isEqualTo(shown);
      }
      Download saved = page.waitForDownload(() -> page.locator(".made li button").first().click());
      assertThat(Files.readAllBytes(saved.path())).isEqualTo(Files.readAllBytes(file));
      page.locator("input[name='sizes'][value='one']").check();
      page.waitForFunction("most => document.querySelectorAll('.paper-leaf').length < most", shown);
      Locator titles = page.locator(".sheet h3");
      assertThat(titles.allTextContents()).isEqualTo(List.of("Before the pieces", "Size 16"));
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
