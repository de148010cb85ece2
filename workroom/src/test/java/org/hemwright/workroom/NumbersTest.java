package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A number is typed in the line that says the selected thing, in any unit and fraction; the line is
 * shown before it is written (design, "Edits").
 */
class NumbersTest {
  @TempDir Path folder;

  @Test
  void inAnotherUnitInItsOwnOrAsTyped() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "marram-trousers");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      String line = "  point centre_waist from centre_fork up rise - 1/4 in then left 1/4 in";
      assertThat(before).contains(line);
      Table table = chromium.window(open.address()).choose("Trouser front");
      Page page = table.page();
      page.locator(".members button", new Page.LocatorOptions().setHasText("centre waist"))
          .first()
          .click();
      Locator last = page.locator(".number-field").nth(1);
      last.fill("1 1/4 in");
      page.waitForSelector(".typed-way code:has-text('then left 1 1/4 in')");
      last.press("Enter");
      String first = open.documentOnce(text -> !text.equals(before));
      assertThat(first)
          .isEqualTo(before.replace(line, line.replace("left 1/4 in", "left 1 1/4 in")));

      // 2 cm are 0.787 in; the step of inches is 1/16 in, and 13/16 in are 0.8125 in.
      page.waitForSelector(".number-field[value='1 1/4 in']");
      page.locator(".number-field[value='1 1/4 in']").fill("2 cm");
      page.waitForSelector(".typed-way code:has-text('left 2 cm')");
      assertThat(page.locator(".typed-way").allTextContents())
          .containsExactly(
              "point centre_waist from centre_fork up rise - 1/4 in then left 13/16 in"
                  + " in the unit that stands there",
              "point centre_waist from centre_fork up rise - 1/4 in then left 2 cm"
                  + " as you typed it");
      page.locator(".typed-way input").nth(1).check();
      page.locator(".typed-ways button.chief").click();
      String second = open.documentOnce(text -> !text.equals(first));
      assertThat(second).isEqualTo(before.replace(line, line.replace("left 1/4 in", "left 2 cm")));
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void aStepAsksForItsSizesAndASlipIsReadAsMeant() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address());
      Page page = table.page();
      table.caretAfter("let width = 13 cm");
      page.keyboard().press("ArrowLeft");
      page.waitForSelector(".said-line");
      String was = page.locator(".number-field").first().inputValue();
      page.locator(".number-field").first().fill("2,5 cm");
      page.waitForSelector(".typed-way code:has-text('2.5 cm')");
      assertThat(page.locator(".typed-way").allTextContents())
          .anyMatch(way -> way.endsWith("in this size alone"))
          .anyMatch(way -> way.endsWith("in all sizes, by the same amount"));
      Path pictures = Files.createDirectories(Path.of("target/views"));
      page.screenshot(
          new Page.ScreenshotOptions().setPath(pictures.resolve("number-1280-day.png")));
      page.keyboard().press("Escape");
      assertThat(page.locator(".number-field").first().inputValue()).isEqualTo(was);
      page.locator(".number-field").first().fill("a yard");
      page.waitForSelector(".typed-ways p");
      assertThat(page.locator(".typed-way").count()).isZero();
      page.keyboard().press("Escape");
      assertThat(open.document()).isEqualTo(before);
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void aThingGetsAnotherNameWhereverItIsSaid() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Page page = chromium.window(open.address()).choose("Back").page();
      page.locator(".members button", new Page.LocatorOptions().setHasText("underarm")).click();
      page.locator("[data-rename]").click();
      page.locator(".renaming input").fill("nape");
      page.keyboard().press("Enter");
      page.waitForSelector(".renaming-told:has-text('stands in the document already')");
      page.locator(".renaming input").fill("arm pit");
      page.keyboard().press("Enter");
      page.waitForSelector(".renaming-told:has-text('lines change')");
      assertThat(open.document()).as("what changes is shown first").isEqualTo(before);
      page.keyboard().press("Enter");
      String after = open.documentOnce(text -> !text.equals(before));
      page.waitForSelector(".ledger-page h2:has-text('arm pit')");
      assertThat(after.replace("arm_pit", "underarm")).isEqualTo(before);
      assertThat(after).contains("level bust at arm_pit", "heading down to arm_pit arriving right");
      assertThat(after).as("the front has its own").contains("level bust at underarm");
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
