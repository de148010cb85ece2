package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Things are added by pointing, in the ways that the language has; the line is shown before it is
 * written, and all other bytes stay.
 */
class AddTest {
  @TempDir Path folder;

  private static List<String> added(String before, String after) {
    List<String> old = before.lines().toList();
    List<String> lines = after.lines().toList();
    int next = 0;
    java.util.ArrayList<String> more = new java.util.ArrayList<>();
    for (String line : lines) {
      if (next < old.size() && line.equals(old.get(next))) {
        next++;
      } else {
        more.add(line);
      }
    }
    assertThat(next).as("every line that stood there stands there still").isEqualTo(old.size());
    return more;
  }

  private static void start(Page page, String what) {
    page.locator("[data-add='" + what + "']").click();
    page.waitForSelector("#sentence:not([hidden])");
  }

  private static void write(Page page) {
    page.locator("#sentence .chief:not([disabled])").click();
  }

  @Test
  void byPointingWithTheMouse() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address()).choose("Back");
      Page page = table.page();
      start(page, "point");
      double[] nape = table.at("point", "back", "nape");
      page.mouse().move(nape[0] + 60 * nape[2], nape[1] + 300 * nape[2]);
      page.mouse().click(nape[0] + 60 * nape[2], nape[1] + 300 * nape[2]);
      page.waitForSelector(".add-way input");
      assertThat(page.locator(".add-way code").first().textContent())
          .matches(
              "point new_point +from \\w+ (left|right) [\\d.]+ cm( then (up|down) [\\d.]+ cm)?");
      page.locator("#sentence .number-field").fill("pocket corner");
      page.waitForSelector(".add-way code:has-text('pocket_corner')");
      page.screenshot(
          new Page.ScreenshotOptions().setPath(pictures.resolve("adding-1280-day.png")));
      write(page);
      String first = open.documentOnce(text -> !text.equals(before));
      assertThat(added(before, first))
          .singleElement()
          .asString()
          .startsWith("  point pocket_corner ");
      page.waitForSelector(".ledger-page h2:has-text('pocket corner')");

      // A notch where the side is pointed at.
      start(page, "notch");
      double[] side = table.at("notch", "back", "1");
      page.mouse().click(side[0], side[1] + 60);
      page.waitForSelector(".add-way code:has-text('notch side at ')");
      write(page);
      String second = open.documentOnce(text -> !text.equals(first));
      assertThat(added(first, second))
          .singleElement()
          .asString()
          .matches("  notch side at [\\d.]+ cm from (start|end)");

      // A curve from a point through a place that becomes a point to another point.
      start(page, "curve");
      double[] tip = table.at("point", "back", "shoulder_tip");
      page.mouse().click(nape[0], nape[1]);
      page.mouse().click((nape[0] + tip[0]) / 2, nape[1] + 80);
      double[] hem = table.at("point", "back", "hem_side");
      page.mouse().click(hem[0], hem[1]);
      page.waitForSelector(".add-way code:has-text('through new_curve_point to hem_side')");
      page.locator(".add-way input").nth(1).check();
      page.waitForSelector(".add-way input:checked");
      write(page);
      String third = open.documentOnce(text -> !text.equals(second));
      assertThat(added(second, third))
          .hasSize(2)
          .last()
          .asString()
          .matches("  curve new_curve +from nape leaving .* through new_curve_point to hem_side.*");

      // A new piece on the bare table.
      start(page, "piece");
      page.mouse().click(700, 300);
      page.mouse().click(790, 360);
      page.waitForSelector(".add-way code:has-text('rectangle')");
      page.screenshot(
          new Page.ScreenshotOptions().setPath(pictures.resolve("adding-piece-1280-day.png")));
      write(page);
      String fourth = open.documentOnce(text -> !text.equals(third));
      assertThat(added(third, fourth))
          .anyMatch(line -> line.startsWith("piece new_piece \"New piece\" number 5"))
          .anyMatch(line -> line.startsWith("  rectangle "));
      page.waitForSelector(".ledger-page h2:has-text('New piece')");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void byKeysAlone() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Page page = chromium.window(open.address()).choose("Back").page();
      page.locator("[data-add='line']").focus();
      page.keyboard().press("Enter");
      for (String name : List.of("nape", "underarm")) {
        page.locator(".members button", new Page.LocatorOptions().setHasText(name)).first().focus();
        page.keyboard().press("Enter");
        page.waitForSelector(".ledger-page h2:has-text('" + name + "')");
        page.locator(".ledger-path button").last().focus();
        page.keyboard().press("Enter");
        page.waitForSelector(".members");
      }
      page.waitForSelector(".add-way code:has-text('line new_line from nape to underarm')");
      page.locator("#table canvas").focus();
      page.keyboard().press("Enter");
      String after = open.documentOnce(text -> !text.equals(before));
      assertThat(added(before, after))
          .singleElement()
          .asString()
          .matches("  line new_line +from nape to underarm");

      page.locator("[data-add='point']").focus();
      page.keyboard().press("Enter");
      page.keyboard().press("ArrowRight");
      page.keyboard().press("ArrowDown");
      page.keyboard().press("Enter");
      page.waitForSelector(".add-way input");
      page.keyboard().press("2");
      page.waitForSelector(".add-way:nth-child(2) input:checked");
      page.keyboard().press("Enter");
      String second = open.documentOnce(text -> !text.equals(after));
      assertThat(added(after, second)).singleElement().asString().startsWith("  point new_point");
      page.locator("[data-add='seam']").focus();
      page.keyboard().press("Enter");
      page.keyboard().press("Escape");
      assertThat(page.locator("#sentence").isHidden()).isTrue();
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void aViewIsMadeOfThePiecesThatAreChosen() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Page page = chromium.window(open.address()).page();
      page.locator("[data-add='view']").press("Enter");
      for (String title : List.of("Front", "Back", "Sleeve", "Neckband")) {
        page.locator(".ledger-list button", new Page.LocatorOptions().setHasText(title))
            .first()
            .press("Enter");
        page.waitForSelector(".ledger-page h2:has-text('" + title + "')");
        page.locator(".ledger-path button").first().press("Enter");
        page.waitForSelector(".ledger-list");
      }
      page.waitForSelector(".add-way code:has-text('pieces front, back, sleeve, neckband')");
      page.locator("#table canvas").press("Enter");
      String after = open.documentOnce(text -> !text.equals(before));
      assertThat(after).contains("\n\nview A \"View A\"\n  pieces front, back, sleeve, neckband\n");
      page.keyboard().press("Control+z");
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void whatIsPointedAtIsMeasuredInEverySize() throws Exception {
    Path pictures = Files.createDirectories(Path.of("target/views"));
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address()).choose("Back");
      Page page = table.page();
      start(page, "measure");
      double[] nape = table.at("point", "back", "nape");
      double[] waist = table.at("point", "back", "waist_centre");
      page.mouse().click(nape[0], nape[1]);
      page.mouse().click(waist[0], waist[1]);
      page.waitForSelector(".add-way code:has-text('let measured = distance from')");
      // The back of size 10 is as long as the chart says: waist_centre lies back_length below.
      String length =
          Files.readAllLines(folder.resolve("sizes.csv")).stream()
              .filter(line -> line.startsWith("10,"))
              .findFirst()
              .orElseThrow();
      String said = page.locator(".add-said").first().textContent();
      assertThat(length.split(",")).contains(said.substring(0, said.indexOf(" cm")));
      page.waitForSelector(".ledger-page h2:has-text('Measured')");
      assertThat(page.locator(".ledger-sizes tr").count()).isEqualTo(24);
      page.screenshot(
          new Page.ScreenshotOptions().setPath(pictures.resolve("measure-1280-day.png")));
      page.keyboard().press("Escape");
      page.waitForSelector(".ledger-page h2:has-text('Back')");
      assertThat(open.document()).isEqualTo(before);
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
