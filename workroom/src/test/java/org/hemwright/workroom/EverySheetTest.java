package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cloth, Paper, Making and Release once they are drawn, in two sizes of window, by day and by
 * night: nothing against the rules of WCAG 2.2, nothing wider than its window, no word in the
 * console. Together with {@link EveryViewTest} every view is looked at.
 */
class EverySheetTest {
  private static final Page.WaitForSelectorOptions PATIENT =
      new Page.WaitForSelectorOptions().setTimeout(600_000);

  @TempDir static Path folder;

  @SuppressWarnings("NullAway.Init")
  private static OpenFolder open;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  @SuppressWarnings("NullAway.Init")
  private Axe axe;

  @BeforeAll
  static void open() throws Exception {
    open = OpenFolder.example(folder, "inlet-tee");
    Files.writeString(
        folder.resolve("pattern.hem"),
        open.document()
            .replaceFirst("notch side at 50% from start", "notch side at 20% from start"));
    open.restart();
  }

  @AfterAll
  static void close() {
    open.close();
  }

  private void press(String name) {
    page.locator(".sheet button", new Page.LocatorOptions().setHasText(name)).first().click();
  }

  @ParameterizedTest
  @CsvSource({"1280,false", "1280,true", "820,false", "820,true"})
  void clothAndPaperOnceTheyAreDrawn(int width, boolean dark) throws Exception {
    try (Chromium chromium = Chromium.start()) {
      page = chromium.window(open.address(), width, Axe.high(width), dark).page();
      axe = Axe.in(page, width, dark);
      cloth();
      paper();
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"1280,false", "1280,true", "820,false", "820,true"})
  void makingAndReleaseOnceTheyAreDrawn(int width, boolean dark) throws Exception {
    try (Chromium chromium = Chromium.start()) {
      page = chromium.window(open.address(), width, Axe.high(width), dark).page();
      axe = Axe.in(page, width, dark);
      making();
      release();
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private void cloth() throws Exception {
    new Hands(page).job("Cloth");
    page.waitForSelector(".watching .board-piece, .laying-figure img", PATIENT);
    axe.look("cloth-being-laid");
    page.waitForSelector(".laying-figure img", PATIENT);
    page.waitForSelector(".further:not([disabled])", PATIENT);
    axe.look("cloth");
    press("Look longer");
    page.waitForSelector(".watched .board-piece", PATIENT);
    page.waitForTimeout(1500);
    axe.look("cloth-looking");
    // A search that can find nothing shorter ends by itself.
    page.waitForFunction(
        """
        () => {
          document.querySelector('.enough')?.click();
          return document.querySelector('.further:not([disabled])') !== null;
        }
        """);
    press("Arrange by hand");
    page.locator(".board-piece").first().focus();
    axe.look("board");
    page.keyboard().press("ArrowLeft");
    page.waitForFunction("() => document.querySelector('.board-said').textContent.length > 0");
    axe.look("board-moved");
    press("As it was laid");
  }

  private void paper() throws Exception {
    new Hands(page).job("Paper");
    page.waitForSelector(".paper-leaf.pieces img", PATIENT);
    page.waitForTimeout(1500);
    assertThat(page.locator(".sheet section:not(:has(.paper-leaf))").count()).isZero();
    axe.look("paper");
    page.locator(".paper-leaf.pieces").first().click();
    page.waitForSelector(".near-page[src]", PATIENT);
    page.waitForTimeout(400);
    axe.look("paper-near");
    page.locator(".near-acts button").first().click();
  }

  private void making() throws Exception {
    new Hands(page).job("Making");
    page.waitForSelector(".step-card img", PATIENT);
    page.waitForSelector(".words-place .cm-line", PATIENT);
    page.waitForTimeout(500);
    axe.look("making");
    Locator card = page.locator("[data-step='fold_neckband']");
    card.getByText("Write beside this step").click();
    page.waitForFunction("() => document.activeElement.closest('.words-place')");
    page.keyboard().type("It is {number band_widht} wide.");
    page.waitForSelector(".words-amiss", PATIENT);
    page.keyboard().type(" And {");
    page.waitForSelector(".cm-tooltip-autocomplete", PATIENT);
    // The list is the editor library's own: arrow keys go through it while the focus stays in the
    // text, which axe, wherever the list is cut short, takes for out of reach.
    axe.picture("making-proposals");
    page.keyboard().press("Escape");
    axe.look("making-words");
    for (int i = 0; i < 60; i++) {
      page.keyboard().press("Backspace");
    }
    page.locator(".parts button").first().click();
    page.waitForSelector(".leaf[data-part='cover']");
    page.waitForTimeout(300);
    axe.look("making-cover");
  }

  private void release() throws Exception {
    new Hands(page).job("Release");
    page.waitForSelector(".release-acts", PATIENT);
    axe.look("release");
    page.locator(".release-acts > button").last().click();
    page.waitForSelector(".publishing progress", PATIENT);
    axe.look("release-publishing");
    page.waitForSelector(
        ".outcome, .sheet li.grid-problem", new Page.WaitForSelectorOptions().setTimeout(600_000));
    axe.look("release-published");
  }
}
