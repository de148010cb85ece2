package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What she writes stands where she wrote it, once and in order, however late the workroom answers.
 * Nothing here depends on how fast the machine is: what the workroom says is kept back and let go.
 */
class LettersOnTheWayTest {
  private static final String TITLE = "# A flared skirt";

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
  }

  @AfterEach
  void close() {
    if (chromium != null) {
      chromium.close();
    }
    open.close();
  }

  private void window() {
    table = chromium.window(open.address(), line);
    page = table.page();
  }

  private void type(String letters) {
    page.keyboard().type(letters);
  }

  private String document() {
    return new OnDisk(folder.resolve("pattern.hem")).text();
  }

  /** Waits until the title's line, in the window and on the disk, goes on so. */
  private void titled(String rest) {
    String wanted = TITLE + rest + " cut from";
    line.until(() -> document().startsWith(wanted) && table.text().equals(document()));
    assertThat(document().lines().findFirst())
        .hasValueSatisfying(first -> assertThat(first).startsWith(wanted));
    assertThat(table.text().equals(document())).isTrue();
    assertThat(chromium.complaints()).isEmpty();
  }

  /** Waits until the document on the disk has these words, and the window the same document. */
  private void written(String words) {
    line.until(() -> document().contains(words) && table.text().equals(document()));
    assertThat(table.text().equals(document())).isTrue();
    assertThat(document()).contains(words);
  }

  @Test
  void nothingCanBeWrittenBeforeTheTextIsThere() {
    line.keepBack("answer to text");
    Page early = chromium.page(open.address(), line);
    line.untilKept("answer to text");
    assertThat(early.locator(".cm-content").count()).isZero();
    line.letGo();
    early.waitForSelector(".cm-line");
    table = new Table(early).caretAfter(TITLE);
    page = early;
    type(" x");
    titled(" x");
  }

  @Test
  void whileItsTextIsFetchedAnewLettersStayWhereTheyAre() {
    window();
    Table other = chromium.window(open.address());
    table.caretAfter(TITLE);
    type(" a");
    titled(" a");
    line.breakOff();
    other.caretAfter("waist seam to finished hem").page().keyboard().type(" other");
    line.keepBack("answer to text");
    line.untilKept("answer to text");
    type("bc");
    line.letGo();
    type("d");
    titled(" abcd");
    written("waist seam to finished hem other");
  }

  @Test
  void lettersStandOnceAndInOrderWhereTheLineBroke() {
    window();
    table.caretAfter(TITLE);
    line.keepBack();
    type(" a");
    line.untilKept("splices");
    type("bc");
    line.breakOff();
    type("de");
    titled(" abcde");
  }

  @Test
  void theSameWhereAnotherWindowWroteMeanwhile() {
    window();
    Table other = chromium.window(open.address());
    table.caretAfter(TITLE);
    line.keepBack();
    type(" a");
    line.untilKept("splices");
    other.caretAfter("waist seam to finished hem").page().keyboard().type(" other");
    type("bc");
    line.until(() -> document().contains("hem other"));
    line.breakOff();
    type("de");
    titled(" abcde");
    written("waist seam to finished hem other");
  }

  @Test
  void theSameWhereNothingOfItHadArrived() {
    window();
    table.caretAfter(TITLE);
    line.breakOff();
    type(" abc");
    titled(" abc");
  }

  @Test
  void aLetterIsReadBeforeTheTextIsScrolled() {
    window();
    page.evaluate(
        """
        () => document.addEventListener('input', () => {
          document.querySelector('.cm-scroller').dispatchEvent(new Event('scroll'));
        })
        """);
    table.caretAfter(TITLE);
    type(" abc");
    titled(" abc");
  }

  @Test
  void anotherWindowsWordsGoUnderLettersOnTheirWay() {
    window();
    Table other = chromium.window(open.address());
    table.caretAfter(TITLE);
    line.keepBack();
    other.caretAfter(TITLE).page().keyboard().type(" other");
    line.until(() -> document().contains(" other"));
    type(" a");
    type("b");
    line.letGo();
    type("c");
    titled(" other abc");
    line.until(() -> other.text().equals(document()));
    assertThat(other.text().equals(document())).isTrue();
  }

  @Test
  void wordsTakenAwayAndPutThereAnewGoUnderLettersOnTheirWay() {
    window();
    Table other = chromium.window(open.address());
    table.caretAfter("# A ");
    line.keepBack();
    other.caretAfter("# A ");
    for (int i = 0; i < "flared".length(); i++) {
      other.page().keyboard().press("Shift+ArrowRight");
    }
    other.page().keyboard().insertText("straight");
    line.until(() -> document().contains("# A straight skirt"));
    type("very ");
    line.letGo();
    written("# A very straight skirt");
    line.until(() -> other.text().equals(document()));
    assertThat(other.text().equals(document())).isTrue();
  }

  @Test
  void undoTakesBackWhatWasWrittenBeforeItAndNothingElse() {
    window();
    table.caretAfter(TITLE);
    type(" a");
    titled(" a");
    line.keepBack();
    page.keyboard().press("Control+z");
    line.untilKept("splices");
    type(" b");
    line.letGo();
    titled(" b");
  }

  @Test
  void undoWaitsForLettersOnTheirWay() {
    window();
    table.caretAfter(TITLE);
    line.keepBack();
    type(" a");
    line.untilKept("splices");
    type("bc");
    page.keyboard().press("Control+z");
    type(" d");
    line.letGo();
    titled(" d");
  }

  @Test
  void whatIsWrittenAtTwoPlacesIsUndoneOneByOneHoweverLateItArrives() {
    window();
    table.caretAfter(TITLE);
    line.keepBack();
    type(" a");
    line.untilKept("splices");
    table.caretAfter("waist seam to finished hem");
    type(" b");
    line.letGo();
    line.until(() -> document().contains("hem b"));
    page.keyboard().press("Control+z");
    line.until(() -> !document().contains("hem b"));
    titled(" a");
  }

  @Test
  void whatIsRefusedIsSentAgain() {
    window();
    table.caretAfter(TITLE);
    line.refuseOnce("edit");
    type(" abc");
    titled(" abc");
  }

  @Test
  void aPageIsNotLeftUnaskedWhileSomethingIsOnItsWay() {
    window();
    String kept = "Every change is kept.";
    page.waitForSelector("#kept:has-text('" + kept + "')");
    table.caretAfter(TITLE);
    line.keepBack();
    type(" a");
    assertThat(page.locator("#kept").textContent()).isNotEqualTo(kept);
    assertThat(leaving()).isTrue();
    line.letGo();
    page.waitForSelector("#kept:has-text('" + kept + "')");
    assertThat(leaving()).isFalse();
    titled(" a");
  }

  /** Whether the page would have the browser ask before it is left. */
  private boolean leaving() {
    return (Boolean)
        page.evaluate("() => !dispatchEvent(new Event('beforeunload', { cancelable: true }))");
  }

  @Test
  void aSlipIsMendedWhereItIsByThen() {
    window();
    table.caretAfter("dial short_length  = 48");
    type(",5");
    page.waitForSelector(".slips:has-text('has a comma')");
    line.keepBack();
    table.caretAfter(TITLE);
    type(" a");
    line.untilKept("splices");
    page.locator(".slips button:has-text('Mend it so')").click();
    line.letGo();
    titled(" a");
    written("dial short_length  = 48.5");
  }

  @Test
  void aSlipThatSheMendedHerselfIsNotMendedAgain() {
    window();
    table.caretAfter("dial short_length  = 48");
    type(",5");
    page.waitForSelector(".slips:has-text('has a comma')");
    line.keepBack();
    page.keyboard().press("Backspace");
    page.keyboard().press("Backspace");
    type(".6");
    page.locator(".slips button:has-text('Mend it so')").click();
    line.letGo();
    written("dial short_length  = 48.6 cm");
  }
}
