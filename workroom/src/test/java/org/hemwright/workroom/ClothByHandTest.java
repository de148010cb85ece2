package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
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
  private static final String LET_GO = "() => !document.querySelector('.board-piece.held')";

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
      new Hands(page).job("Cloth");
      page.waitForSelector(".laying-figure", new Page.WaitForSelectorOptions().setTimeout(600_000));
      press(page, "Arrange by hand");
      page.waitForSelector(".board-piece");
      Locator pocket =
          page.locator(".board-piece", new Page.LocatorOptions().setHasText("3")).first();
      BoundingBox leg = page.locator(".board-piece").first().boundingBox();
      String before = page.locator(".board-takes").textContent();
      BoundingBox box = pocket.boundingBox();
      page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
      page.mouse().down();
      page.mouse().move(leg.x + leg.width / 3, leg.y + leg.height / 2);
      page.mouse().move(leg.x + leg.width / 2, leg.y + leg.height / 2);
      // While it is held it slides along the leg; where it was meant to lie is told at once.
      page.waitForSelector(".board-meant.refused");
      page.waitForSelector(".board-said.refused:has-text('it would lie on')");
      BoundingBox held = pocket.boundingBox();
      assertThat(Math.abs(held.x + held.width / 2 - leg.x - leg.width / 2)).isGreaterThan(3);
      page.mouse().up();
      page.waitForFunction(LET_GO);
      page.waitForSelector(".board-said:has-text('cannot lie there: it would lie on')");
      assertThat(page.locator(".board-takes").textContent()).isEqualTo(before);
      BoundingBox end = page.locator(".board-end").boundingBox();
      drag(page, pocket, end.x + 60, leg.y + leg.height / 2);
      page.waitForFunction(
          "before => document.querySelector('.board-takes').textContent !== before", before);
      page.waitForFunction(LET_GO);
      byKeys(page);
      press(page, "Keep this laying");
      page.waitForSelector(".cloth-row:has-text('kept by you')");
      page.waitForSelector(".board-said:not(.refused):has-text('Kept in layings.csv')");
      OnDisk.await(() -> Files.exists(folder.resolve("layings.csv")));
      String kept = Files.readString(folder.resolve("layings.csv"));
      assertThat(kept).contains("view,fabric,nap,size").contains(",14,");
      press(page, "Lay it anew");
      page.waitForFunction("() => !document.body.textContent.includes('kept by you')");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  /** On a tablet a piece is moved by a finger, and the page does not scroll meanwhile. */
  @Test
  void aFingerMovesAPiece() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "marram-trousers");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(open.address(), 820, 1180, false);
      page.waitForSelector(".cm-line");
      new Hands(page).job("Cloth");
      page.waitForSelector(".laying-figure", new Page.WaitForSelectorOptions().setTimeout(600_000));
      press(page, "Arrange by hand");
      page.waitForSelector(".board-piece");
      page.locator(".board-cloth").scrollIntoViewIfNeeded();
      Locator pocket =
          page.locator(".board-piece", new Page.LocatorOptions().setHasText("3")).first();
      BoundingBox box = pocket.boundingBox();
      BoundingBox end = page.locator(".board-end").boundingBox();
      String before = page.locator(".board-takes").textContent();
      double lay = along(pocket);
      CDPSession touch = page.context().newCDPSession(page);
      double x = box.x + box.width / 2;
      double y = box.y + box.height / 2;
      touch(touch, "touchStart", x, y);
      for (int step = 1; step <= 8; step++) {
        touch(touch, "touchMove", x + (end.x + 40 - x) * step / 8, y);
        page.waitForTimeout(40);
      }
      touch(touch, "touchEnd", 0, 0);
      page.waitForFunction(LET_GO);
      page.waitForFunction(
          "before => document.querySelector('.board-takes').textContent !== before", before);
      // on the cloth, since the board is drawn smaller as it becomes longer
      assertThat(along(pocket)).isGreaterThan(lay + 20);
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static void touch(CDPSession session, String kind, double x, double y) {
    JsonObject event = new JsonObject();
    event.addProperty("type", kind);
    JsonArray points = new JsonArray();
    if (!kind.equals("touchEnd")) {
      JsonObject point = new JsonObject();
      point.addProperty("x", x);
      point.addProperty("y", y);
      points.add(point);
    }
    event.add("touchPoints", points);
    session.send("Input.dispatchTouchEvent", event);
  }

  /** On checks the board shows the bars, and a piece that is matched goes from bar to bar. */
  @Test
  void onChecksAPieceMovesFromBarToBar() throws Exception {
    Files.writeString(
        folder.resolve("pattern.hem"),
        """
        language 1
        pattern "Check top"
        version 1.0
        dated 2026-11-27
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base S
        units centimetres

        fabric plaid woven "Cotton check"
          widths 150 cm
          repeat along 9 cm
          repeat across 7 cm, uneven
          match side_match

        piece front "Front" number 1
          cut 1 of plaid
          rectangle wide by 40 cm, edges hem, side, top, centre
          allowance 1 cm
          notch side at 12 cm from start as side_match
          grain along centre

        piece back "Back" number 2
          cut 1 of plaid
          rectangle wide by 42 cm, edges hem, side, top, centre
          allowance 1 cm
          notch side at 12 cm from start as side_match
          grain along centre
        """);
    Files.writeString(folder.resolve("sizes.csv"), "size,wide (cm)\nS,24\n");
    try (OpenFolder open = OpenFolder.at(folder);
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).page();
      new Hands(page).job("Cloth");
      page.waitForSelector(".laying-figure", new Page.WaitForSelectorOptions().setTimeout(600_000));
      press(page, "Arrange by hand");
      page.waitForSelector(".board-piece");
      assertThat(page.locator(".board-bars line").count()).isGreaterThan(10);
      Locator front =
          page.locator(".board-piece", new Page.LocatorOptions().setHasText("1")).first();
      front.focus();
      double before = along(front);
      page.keyboard().press("ArrowRight");
      page.waitForFunction(
          "before => !document.activeElement.style.transform.includes(`(${before}px`)", before);
      assertThat(along(front) - before).isCloseTo(90, within(0.02));
      // dragged far to the right it comes to lie on a bar again
      BoundingBox end = page.locator(".board-end").boundingBox();
      BoundingBox box = front.boundingBox();
      drag(page, front, end.x + 40, box.y + box.height / 2);
      page.waitForFunction(LET_GO);
      double repeats = (along(front) - before) / 90;
      assertThat(repeats).isCloseTo(Math.rint(repeats), within(0.001));
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static double along(Locator piece) {
    String style = piece.getAttribute("style");
    return Double.parseDouble(style.replaceAll(".*translate\\(([-0-9.]+)px.*", "$1"));
  }

  /** Each piece is reached by Tab, pushed by the arrow keys, turned by R. */
  private static void byKeys(Page page) {
    String around = "() => document.activeElement.getAttribute('aria-label')";
    page.locator(".board-piece:has-text('3')").first().focus();
    String before = (String) page.evaluate(around);
    assertThat(before).contains("cm along").contains("cm across");
    page.keyboard().press("ArrowRight");
    page.waitForFunction("before => document.activeElement.ariaLabel !== before", before);
    assertThat((String) page.evaluate(around)).startsWith(before.substring(0, before.indexOf(',')));
    String moved = (String) page.evaluate(around);
    page.keyboard().press("r");
    page.waitForFunction("moved => document.activeElement.ariaLabel !== moved", moved);
    assertThat(page.locator(".board-said").textContent()).isNotBlank();
    assertThat(page.locator(".board-acts .turn").textContent()).startsWith("Turn Back pocket");
  }

  @Test
  void aShorterLayingIsLookedForAndAnotherWidthLaid() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "marram-trousers");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).page();
      new Hands(page).job("Cloth");
      Page.WaitForSelectorOptions patient = new Page.WaitForSelectorOptions().setTimeout(600_000);
      page.waitForSelector(".watching .board-piece, .laying-figure", patient);
      page.waitForSelector(".further:not([disabled])", patient);
      Locator chosen = page.locator(".cloth-row[aria-pressed='true'] .need");
      String length = chosen.textContent();
      press(page, "Look longer");
      page.waitForSelector(".watched .board-piece", patient);
      page.waitForTimeout(3000);
      // A search that can find nothing shorter has ended by itself.
      page.evaluate("() => document.querySelector('.enough')?.click()");
      page.waitForSelector(
          ".laying:has-text('shorter; kept in layings.csv'), .laying:has-text('Nothing shorter')",
          patient);
      boolean kept = page.locator(".laying").textContent().contains("kept in layings.csv");
      OnDisk.await(() -> kept == Files.exists(folder.resolve("layings.csv")));
      assertThat(Files.exists(folder.resolve("layings.csv"))).isEqualTo(kept);
      assertThat(chosen.textContent().equals(length)).isEqualTo(!kept);

      page.locator("#also-unit").selectOption("cm");
      page.locator("#also-width").fill("160");
      page.keyboard().press("Enter");
      page.waitForSelector(".cloth-row:has-text('63 in')", patient);
      assertThat(page.locator(".cloth-row:has-text('63 in')").count()).isGreaterThan(3);
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
