package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cloth, Paper, Making and Release by the keyboard alone. */
class SheetsByKeysTest {
  private static final Page.WaitForSelectorOptions PATIENT =
      new Page.WaitForSelectorOptions().setTimeout(600_000);

  @TempDir Path folder;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  /** Goes on by Tab until something is reached; fails where it cannot be. */
  private void tabTo(String selector) {
    page.waitForSelector(selector, PATIENT);
    for (int i = 0; i < 250; i++) {
      if ((Boolean) page.evaluate("() => Boolean(document.activeElement?.closest('.cm-editor'))")) {
        // In the document Tab sets a line in; Escape lets it go on, as the editor says of itself.
        page.keyboard().press("Escape");
      }
      page.keyboard().press("Tab");
      if ((Boolean) page.evaluate("at => Boolean(document.activeElement?.matches(at))", selector)) {
        return;
      }
    }
    assertThat(selector).as("is not reached by Tab").isEmpty();
  }

  private void enter(String selector) {
    tabTo(selector);
    page.keyboard().press("Enter");
  }

  private void job(int place) {
    enter("#jobs li:nth-child(" + place + ") button");
  }

  private int placeOf(String job) {
    Locator all = page.locator("#jobs li");
    for (int i = 0; i < all.count(); i++) {
      if (all.nth(i).textContent().startsWith(job)) {
        return i + 1;
      }
    }
    throw new AssertionError(job);
  }

  @Test
  void everythingIsReachedByTheKeyboard() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "brackish-skirt");
        Chromium chromium = Chromium.start()) {
      page = chromium.window(open.address()).page();
      job(placeOf("Cloth"));
      page.waitForSelector(".further:not([disabled])", PATIENT);
      enter(".cloth-row:not(.best)[aria-pressed='false']");
      tabTo("#also-width");
      enter(".board-piece");
      String lay = page.locator(".board-piece:focus").getAttribute("aria-label");
      page.keyboard().press("Shift+ArrowRight");
      page.waitForFunction(
          "lay => document.activeElement.ariaLabel !== lay"
              + " || document.querySelector('.board-said.refused')",
          lay);
      enter(".board .chief");
      page.waitForSelector(".cloth-row:has-text('kept by you')", PATIENT);
      assertThat(folder.resolve("layings.csv")).exists();

      job(placeOf("Paper"));
      page.waitForSelector(".paper-leaf img", PATIENT);
      tabTo("input[name='paper']");
      page.keyboard().press("ArrowDown");
      page.waitForSelector(".sheet h2:text-matches('for A4$')", PATIENT);
      page.waitForSelector(".paper-leaf.pieces img", PATIENT);
      enter(".paper-leaf.pieces");
      page.waitForSelector(".near-page[src]", PATIENT);
      enter(".near-acts .after");
      enter(".near-acts button:first-child");
      page.waitForSelector(".paper-leaf:focus", PATIENT);

      job(placeOf("Making"));
      page.waitForSelector(".step-card img", PATIENT);
      enter(".parts [data-part='care']");
      page.waitForSelector(".leaf[data-part='care']");
      enter(".leaf-head button");
      page.waitForFunction("() => document.activeElement.closest('.words-place')");
      page.keyboard().type("Hang it to dry.");
      page.waitForSelector(".leaf:has-text('Hang it to dry.')", PATIENT);
      page.keyboard().press("Tab");
      assertThat((Boolean) page.evaluate("() => !document.activeElement.closest('.words-place')"))
          .as("Tab leaves the words")
          .isTrue();
      new OnDisk(folder.resolve("booklet.md")).once("Hang it to dry.");

      job(placeOf("Release"));
      tabTo("#freeze");
      tabTo(".release-acts > button:last-child");
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
