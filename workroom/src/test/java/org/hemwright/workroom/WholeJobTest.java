package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.paper.PaperOptions;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Publication;
import org.hemwright.workbench.PublishOrder;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.out.KeptLayings;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workroom.keep.Remembered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job by mouse and keyboard alone, from a block to a published package: what is on the
 * disk is looked at, never touched.
 */
class WholeJobTest {
  /** As it is copied from a spreadsheet: waist, hip, body rise and inside leg of nine sizes. */
  private static final String CHART =
      """
      66\t90\t26.2\t78
      70\t94\t26.65\t78.1
      74\t98\t27.1\t78.15
      78\t102\t27.5\t78.25
      82\t106\t27.95\t78.3
      86\t110\t28.4\t78.4
      90\t114\t28.85\t78.5
      96.6\t119.4\t29.5\t78.6
      103.2\t124.8\t30.15\t78.7
      """;

  @TempDir Path place;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  @SuppressWarnings("NullAway.Init")
  private Hands hands;

  /** Finds words in the document by the editor's search, and puts the caret behind them. */
  private void caretBehind(String words) {
    page.locator(".cm-content").click();
    page.keyboard().press("Control+f");
    page.keyboard().press("Control+a");
    page.keyboard().type(words);
    page.keyboard().press("Enter");
    page.keyboard().press("Escape");
    page.keyboard().press("ArrowRight");
  }

  private OnDisk file(String name) {
    return new OnDisk(place.resolve("dune-bottoms").resolve(name));
  }

  @Test
  void fromABlockToAPublishedPackage() throws Exception {
    List<String> log = new CopyOnWriteArrayList<>();
    try (BrowserDoor.Opened opened =
            new Workroom(Remembered.in(place.resolve("remembered")), place)
                .open(Optional.empty(), 0, log::add);
        Chromium chromium = Chromium.start()) {
      page = chromium.page(opened.address(), 1280, 800, false);
      hands = new Hands(page);
      begin();
      numbers();
      sizes();
      aSlip();
      aFinding();
      cloth();
      paper();
      booklet();
      publish();
      assertThat(chromium.complaints()).isEmpty();
    }
    assertThat(log).isEmpty();
  }

  private void begin() throws Exception {
    page.waitForSelector(".start-cards");
    page.locator(".start-card", new Page.LocatorOptions().setHasText("the leg one piece"))
        .first()
        .click();
    page.getByLabel("What is it called?").click();
    page.keyboard().type("Dune bottoms");
    page.keyboard().press("Enter");
    page.waitForSelector(".guide");
    hands.press("Not now");
    page.waitForSelector(".cm-line");
    assertThat(page.locator("#title").textContent()).isEqualTo("Dune bottoms");
  }

  /** A dial by its slider, then the house's name by the keyboard. */
  private void numbers() throws Exception {
    Locator dial = page.getByLabel("Ease at the hip");
    dial.focus();
    for (int i = 0; i < 12; i++) {
      page.keyboard().press("ArrowRight");
    }
    page.keyboard().press("Tab");
    assertThat(file("pattern.hem").once(text -> !text.contains("dial hip_ease      = 4 cm ")))
        .containsPattern("dial hip_ease +=  ?4\\.\\d+ cm ");
    caretBehind("by \"Your name");
    for (int i = 0; i < "Your name".length(); i++) {
      page.keyboard().press("Backspace");
    }
    page.keyboard().type("Tern Cove Patterns");
    file("pattern.hem").once("by \"Tern Cove Patterns\"");
  }

  private void sizes() throws Exception {
    hands.job("Bodies");
    page.getByLabel("waist (cm), 6", new Page.GetByLabelOptions().setExact(true)).click();
    hands.paste(CHART);
    assertThat(file("sizes.csv").once("22,103.2,124.8,30.15,78.7")).contains("6,66,90,26.2,78\n");
  }

  private void aSlip() throws Exception {
    hands.job("Draft");
    caretBehind("dial hem_width     = 36");
    page.keyboard().type(",5");
    file("pattern.hem").once("dial hem_width     = 36,5 cm");
    page.waitForSelector(".told-fail");
    page.locator(".told-fail").first().hover();
    page.waitForSelector(".tip-problem button");
    hands.press("Mend it so");
    file("pattern.hem").once("dial hem_width     = 36.5 cm");
  }

  private void aFinding() throws Exception {
    caretBehind("notch front_inseam at 5");
    page.keyboard().press("Backspace");
    page.keyboard().type("4");
    file("pattern.hem").once("notch front_inseam at 40%");
    hands.job("Proof");
    page.waitForSelector(".finding.warn");
    page.locator(".finding-head").first().click();
    page.getByLabel("Or leave it as it is, because").click();
    page.keyboard().type("Only a mark for the knee patch");
    hands.press("Accept");
    file("pattern.hem").once("because \"Only a mark for the knee patch\"");
    page.waitForSelector(".finding.accepted");
  }

  private void cloth() {
    hands.job("Cloth");
    page.waitForSelector(".laying-figure");
    assertThat(page.locator(".cloth-rows").first().textContent()).contains("150 cm");
  }

  private void paper() {
    hands.job("Paper");
    page.getByLabel("A4", new Page.GetByLabelOptions().setExact(true)).click();
    page.waitForSelector(".sheet h2:text-matches('for A4$')");
    page.waitForSelector(".paper-leaf img");
  }

  private void booklet() {
    hands.job("Making");
    page.waitForSelector(".step-card img");
    assertThat(page.locator(".step-card").count()).isGreaterThan(5);
  }

  private void publish() throws Exception {
    hands.job("Release");
    hands.press("Publish");
    page.waitForSelector(
        ".outcome, .sheet li.grid-problem", new Page.WaitForSelectorOptions().setTimeout(600_000));
    assertThat(page.locator(".outcome").textContent()).contains("Published in", ".zip");
    Path folder = place.resolve("dune-bottoms");
    Path published = new OutFolder(folder.resolve("out")).current().orElseThrow();
    assertThat(published.resolve("manifest.json")).isRegularFile();
    assertThat(page.locator(".outcome").textContent()).contains(published.getFileName().toString());
    Path command = place.resolve("by-command").resolve(byCommand(folder));
    assertThat(Files.readString(published.resolve("manifest.json")))
        .isEqualTo(Files.readString(command.resolve("manifest.json")));
  }

  /** What the command publishes of the same folder: named by the hash of all its files. */
  private Path byCommand(Path folder) throws Exception {
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
    var run = evaluated.run().orElseThrow();
    LayingStore kept = KeptLayings.in(folder.resolve(".hemwright"));
    return Publication.of(
            evaluated,
            run,
            new PublishOrder(
                PaperOptions.everything().withPictures(),
                laid -> Workbench.yardage(evaluated, run, YardageRequest.everything(), kept, laid),
                new OutFolder(place.resolve("by-command")),
                Optional.of(ReleaseShelf.of(folder)),
                false),
            Progress.SILENT)
        .folder()
        .orElseThrow()
        .getFileName();
  }
}
