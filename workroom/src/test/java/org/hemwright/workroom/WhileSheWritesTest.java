package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What comes late from the workroom leaves the field that she is writing in, and what she presses.
 */
class WhileSheWritesTest {
  @TempDir Path folder;

  private OpenFolder open;
  private Chromium chromium;
  private HeldLine line;

  @SuppressWarnings("NullAway.Init")
  private Table table;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  @BeforeEach
  void open() throws Exception {
    open = OpenFolder.example(folder, "eddy-skirt");
    chromium = Chromium.start();
    line = new HeldLine();
    table = chromium.window(open.address(), line);
    page = table.page();
  }

  @AfterEach
  void close() {
    chromium.close();
    open.close();
  }

  /** Something is written in another window, and has come to this one. */
  private void elsewhere() {
    Table other = chromium.window(open.address());
    other.caretAfter("# A flared skirt").page().keyboard().type(" other");
    line.until(() -> table.text().contains(" other"));
  }

  @Test
  void theNumberOfTheNextCellStandsWhenTheChartComesLate() throws Exception {
    new Hands(page).job("Bodies");
    page.locator("[data-cell='2 1']").fill("78");
    line.keepBack("answer to chart");
    page.keyboard().press("Enter");
    line.untilKept("answer to chart");
    Locator next = page.locator("[data-cell='3 1']");
    page.keyboard().type("8");
    line.letGo();
    page.waitForFunction(
        "() => document.querySelector('[data-cell=\"2 1\"]').defaultValue === '78'");
    page.keyboard().type("3.5");
    assertThat(next.inputValue()).isEqualTo("83.5");
    page.keyboard().press("Enter");
    OnDisk chart = new OnDisk(folder.resolve("sizes.csv"));
    line.until(() -> chart.text().contains(",83.5"));
    assertThat(chart.text()).contains(",78", ",83.5");
    assertThat(chromium.complaints()).isEmpty();
  }

  @Test
  void theNameOfAMomentIsWrittenOn() {
    page.locator("#moments").click();
    Locator name = page.locator("#moment-name");
    name.click();
    page.keyboard().type("Beforesample");
    for (int i = 0; i < "sample".length(); i++) {
      page.keyboard().press("ArrowLeft");
    }
    line.keepBack("answer to moments");
    elsewhere();
    line.untilKept("answer to moments");
    line.letGo();
    page.waitForSelector(".moment-keep");
    page.keyboard().type(" the ");
    assertThat(name.inputValue()).isEqualTo("Before the sample");
    page.keyboard().press("Enter");
    page.waitForSelector(".moment:has-text('Before the sample')");
    assertThat(name.inputValue()).isEmpty();
    assertThat(chromium.complaints()).isEmpty();
  }

  @Test
  void anotherNameIsWrittenOn() {
    table.choose("Waistband");
    page.locator("[data-rename]").click();
    page.keyboard().type("wa");
    elsewhere();
    page.waitForFunction("() => document.querySelector('.renaming input')");
    page.keyboard().type("ist");
    assertThat(page.locator(".renaming input").inputValue()).isEqualTo("waist");
    page.keyboard().press("Escape");
    page.waitForFunction("() => document.activeElement.dataset.rename");
    assertThat(chromium.complaints()).isEmpty();
  }

  @Test
  void aPressIsNotLostWhereTheColumnIsDrawnAnewUnderIt() {
    line.keepBack("checks");
    elsewhere();
    line.untilKept("checks");
    BoundingBox cloth =
        page.locator("#jobs button", new Page.LocatorOptions().setHasText("Cloth")).boundingBox();
    page.mouse().move(cloth.x + 20, cloth.y + 10);
    page.mouse().down();
    line.letGo();
    page.waitForFunction("() => document.querySelector('#jobs button:active, #jobs')");
    page.mouse().up();
    page.waitForSelector("#jobs [aria-current='page']:has-text('Cloth')");
    assertThat(chromium.complaints()).isEmpty();
  }
}
