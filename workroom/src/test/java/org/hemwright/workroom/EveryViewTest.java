package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every view at two sizes of window, by day and by night: axe-core finds nothing against the rules
 * of WCAG 2.2, levels A and AA, and the console stays empty. The pictures are kept in {@code
 * target/views} to be looked at.
 */
class EveryViewTest {
  /** What stands there once a job is drawn; the sheets are {@link EverySheetTest}'s. */
  private static final Map<String, String> DRAWN =
      new java.util.TreeMap<>(
          Map.of(
              "Bodies", ".grid input",
              "Draft", ".ledger-list button",
              "Proof", ".findings .finding",
              "Release", ".in-the-way button"));

  @TempDir Path folder;

  @Test
  void nothingStandsInAnybodysWay() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee")) {
      Files.writeString(
          folder.resolve("pattern.hem"),
          open.document()
              .replaceFirst("allowance 1 cm, hem 2.5", "allowance 1.5 cm, hem 2.5")
              .replaceFirst("spelling American", "speling American"));
      open.restart();
      try (Chromium chromium = Chromium.start()) {
        for (boolean dark : List.of(false, true)) {
          for (int width : List.of(1280, 820)) {
            Table table = chromium.window(open.address(), width, Axe.high(width), dark);
            Page page = table.page();
            Axe axe = Axe.in(page, width, dark);
            for (Map.Entry<String, String> job : DRAWN.entrySet()) {
              new Hands(page).job(job.getKey());
              page.waitForSelector(job.getValue());
              page.waitForTimeout(300);
              axe.look(job.getKey().toLowerCase(java.util.Locale.ROOT));
            }
            page.locator("#moments").click();
            page.waitForTimeout(400);
            axe.look("moments");
            new Hands(page).job("Draft");
            table.choose("Sleeve");
            page.waitForTimeout(300);
            axe.look("piece");
            page.locator(".members button").first().click();
            page.locator(".tape-end").click();
            page.waitForTimeout(300);
            axe.look("edge");
            page.locator("[data-add='point']").click();
            double[] top = table.at("point", "sleeve", "cap_top");
            page.mouse().click(top[0] + 20, top[1] + 60);
            page.waitForSelector(".add-way input");
            axe.look("adding");
            page.keyboard().press("Escape");
            page.locator("[data-walk]").first().click();
            page.waitForSelector("#sentence input[type=range]");
            page.waitForTimeout(400);
            axe.look("walk");
            page.locator("#sentence button").last().click();
            page.close();
          }
        }
        assertThat(chromium.complaints()).isEmpty();
      }
    }
  }

  @Test
  void norOnTheStartPageOrWhileShownRound() throws Exception {
    try (OpenFolder before =
            OpenFolder.example(Files.createDirectory(folder.resolve("tee")), "inlet-tee");
        Chromium chromium = Chromium.start()) {
      assertThat(before.log()).isEmpty();
      for (boolean dark : List.of(false, true)) {
        for (int width : List.of(1280, 820)) {
          try (BrowserDoor.Opened opened =
              new Workroom(Remembered.in(folder.resolve("new " + width + dark)), folder)
                  .open(Optional.empty(), 0, sentence -> {})) {
            Page page = chromium.page(opened.address(), width, Axe.high(width), dark);
            page.waitForSelector(".start-cards img");
            Axe axe = Axe.in(page, width, dark);
            page.locator(".start-card").last().scrollIntoViewIfNeeded();
            page.waitForTimeout(2500);
            page.evaluate("scrollTo(0, 0)");
            axe.look("start");
            page.locator("button.start-card").first().click();
            page.waitForSelector(".guide .chief");
            axe = Axe.in(page, width, dark);
            axe.look("offer");
            for (int station = 0; station < 7; station++) {
              page.locator(".guide .chief").click();
              page.waitForTimeout(200);
              axe.look("round" + "abcdefg".charAt(station));
            }
            page.close();
          }
        }
      }
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
