package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.starter.ChartRun;
import org.hemwright.workbench.starter.NewFolder;
import org.hemwright.workbench.starter.Starter;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page before a pattern is open, and the tour on her own drawing. */
class StartTest {
  @TempDir Path place;

  private final List<String> log = new CopyOnWriteArrayList<>();

  private BrowserDoor.Opened open() throws Exception {
    Remembered remembered = Remembered.in(place.resolve("remembered.txt"));
    return new Workroom(remembered, place).open(Optional.empty(), 0, log::add);
  }

  @Test
  void anExampleIsCopiedShownRoundAndFoundAgain() throws Exception {
    try (BrowserDoor.Opened opened = open();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(opened.address(), 1280, 800, false);
      page.waitForSelector(".start-cards img");
      assertThat(page.locator(".start-card").count()).isEqualTo(11);
      assertThat(page.locator("body").textContent()).contains("No pattern lies here yet");
      page.locator("button.start-card", new Page.LocatorOptions().setHasText("Inlet tee")).click();
      page.waitForSelector(".guide");
      assertThat(page.locator(".guide").textContent()).contains("New here?", "Inlet tee");
      page.locator(".guide button").first().click();
      assertThat(page.locator(".guide").textContent())
          .contains("1 of 7", "the 4 pieces of Inlet tee", "in size 10");
      page.keyboard().press("Enter");
      page.locator("[aria-label='Size on the table']").focus();
      page.keyboard().press("ArrowRight");
      page.waitForSelector(".guide-ask.done");
      while (page.locator(".guide").count() > 0) {
        page.locator(".guide .chief").click();
      }
      new Hands(page).press("Other patterns");
      page.waitForSelector(".start-folder");
      assertThat(page.locator(".start-folder").textContent())
          .contains("Inlet tee", place.resolve("inlet-tee").toString());
      page.locator(".start-folder").first().click();
      page.waitForSelector(".tape-slide span");
      page.waitForTimeout(300);
      assertThat(page.locator(".guide").count()).isZero();
      new Hands(page).press("Show me round");
      page.keyboard().press("Escape");
      assertThat(page.locator(".guide").count()).isZero();
      assertThat(chromium.complaints()).isEmpty();
    }
    assertThat(Files.readString(place.resolve("inlet-tee/pattern.hem"))).contains("Inlet tee");
  }

  @Test
  void whatCannotBeOpenedIsToldWithItsMend() throws Exception {
    Files.createDirectory(place.resolve("my-tee"));
    try (BrowserDoor.Opened opened = open();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(opened.address(), 1280, 800, false);
      page.waitForSelector(".start-cards");
      page.getByLabel("A pattern that lies elsewhere").fill("nowhere");
      new Hands(page).press("Open it");
      page.waitForSelector(".refusal:not(:empty)");
      assertThat(page.locator(".refusal").textContent())
          .contains("There is no pattern at " + place.resolve("nowhere"));
      new Hands(page).press("Begin");
      assertThat(page.locator(".refusal").textContent()).isEqualTo("Choose a block first.");
      page.locator("input[value='knit-tee']").check();
      page.getByLabel("What is it called?").fill("My tee");
      new Hands(page).press("Begin");
      page.waitForSelector(".refusal:has-text('is there already')");
      assertThat(place.resolve("my-tee")).isEmptyDirectory();
      page.getByLabel("What is it called?").fill("<b>My</b> \"tee\"");
      page.keyboard().press("Enter");
      page.waitForSelector(".tape-slide span");
      assertThat(page.locator("#title").textContent()).isEqualTo("<b>My</b> 'tee'");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void aBlockIsBegunForTheSizeRunThatSheChooses() throws Exception {
    try (BrowserDoor.Opened opened = open();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(opened.address(), 1280, 800, false);
      page.waitForSelector(".start-cards");
      assertThat(page.locator("input[name='run']:checked").getAttribute("value"))
          .isEqualTo("women");
      page.locator("input[value='skirt-block']").check();
      assertThat(page.locator("input[value='men']").isDisabled()).isTrue();
      assertThat(page.locator(".start-runs").textContent())
          .contains("Fitted skirt is not drafted for this run.");
      page.locator("input[value='knit-tee']").check();
      page.locator("input[value='children']").focus();
      page.keyboard().press("Space");
      page.getByLabel("What is it called?").fill("Sand tee");
      page.keyboard().press("Enter");
      page.waitForSelector(".tape-slide span");
      assertThat(page.locator(".tape-slide").textContent()).contains("122");
      assertThat(chromium.complaints()).isEmpty();
    }
    Path begun = place.resolve("sand-tee");
    NewFolder byHand = NewFolder.called("Sand tee", Files.createDirectory(place.resolve("other")));
    byHand.fill(Starter.named("knit-tee").orElseThrow(), ChartRun.named("children").orElseThrow());
    for (String file : List.of("pattern.hem", "sizes.csv")) {
      assertThat(begun.resolve(file)).hasSameBinaryContentAs(byHand.path().resolve(file));
    }
  }

  @Test
  void aFolderThatIsOpenElsewhereIsNotOpenedTwice() throws Exception {
    Path tee = Files.createDirectory(place.resolve("tee"));
    try (OpenFolder elsewhere = OpenFolder.example(tee, "inlet-tee");
        BrowserDoor.Opened opened = open();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(opened.address(), 1280, 800, false);
      page.locator(".start-folder").first().click();
      page.waitForSelector(".refusal:has-text('is open in another workroom')");
      assertThat(elsewhere.log()).isEmpty();
    }
  }

  @Test
  void fromTheDesktopThePatternThatWasOpenLastIsOpened() throws Exception {
    try (BrowserDoor.Opened none = atDesk();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(none.address(), 1280, 800, false);
      page.waitForSelector(".start-cards img");
      page.locator("button.start-card", new Page.LocatorOptions().setHasText("Inlet tee")).click();
      page.waitForSelector(".tape-slide span");
    }
    try (BrowserDoor.Opened last = atDesk();
        BrowserDoor.Opened busy = atDesk();
        Chromium chromium = Chromium.start()) {
      Page page = chromium.page(last.address(), 1280, 800, false);
      page.waitForSelector(".tape-slide span");
      Page other = chromium.page(busy.address(), 1280, 800, false);
      other.waitForSelector(".start-folder");
    }
  }

  private BrowserDoor.Opened atDesk() throws Exception {
    Remembered remembered = Remembered.in(place.resolve("remembered.txt"));
    return new Workroom(remembered, place).openAtDesk(0, log::add);
  }
}
