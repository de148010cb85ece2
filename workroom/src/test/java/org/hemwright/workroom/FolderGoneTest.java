package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A folder that is gone is told, nothing written meanwhile is lost, and all is kept once it is
 * back.
 */
class FolderGoneTest {
  @TempDir Path place;

  @Test
  void whatIsWrittenMeanwhileIsKeptOnceTheFolderIsBack() throws Exception {
    Path folder = Files.createDirectory(place.resolve("skirt"));
    Path away = place.resolve("away");
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      Page page = table.page();
      Files.move(folder, away);
      table.caretAfter("# A flared skirt");
      page.keyboard().type(" meanwhile");
      page.waitForSelector("#kept.trouble:has-text('not on the disk')");
      assertThat(page.locator("#kept").textContent())
          .contains("leave this page open")
          .doesNotContain("Exception");
      assertThat(folder).doesNotExist();
      Files.move(away, folder);
      page.waitForSelector("#kept:not(.trouble)");
      assertThat(open.documentOnce(text -> text.contains("# A flared skirt meanwhile")))
          .contains("# A flared skirt meanwhile");
    }
  }

  @Test
  void whatBefallsAFileIsToldWithTheWayOut() throws Exception {
    Path folder = Files.createDirectory(place.resolve("skirt"));
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Path file = folder.resolve("pattern.hem");
      Table table = chromium.window(open.address());
      Page page = table.page();
      String before = open.document();
      Files.delete(file);
      page.waitForSelector("#notice:has-text('pattern.hem is not in the folder any more')");
      new Hands(page).press("Put it back");
      page.waitForSelector("#notice", hidden());
      assertThat(open.document()).isEqualTo(before);

      Files.write(file, "# caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
      table.caretAfter("# A flared skirt");
      page.keyboard().type(" mine");
      page.waitForSelector("#kept.trouble:has-text('cannot be read as text here')");
      assertThat(Files.size(file)).isEqualTo(7);
      Files.writeString(file, before.replace("# A flared skirt", "# A flared skirt theirs"));
      page.waitForSelector(
          "#notice:has-text('changed pattern.hem at the place where you are writing')");
      assertThat(page.locator(".notice-both").textContent())
          .contains("here# A flared skirt mine", "in the file# A flared skirt theirs");
      page.locator("#notice button").first().focus();
      page.waitForTimeout(2500);
      assertThat(page.evaluate("document.activeElement.textContent"))
          .isEqualTo("Keep what is here");
      page.keyboard().press("Enter");
      page.waitForSelector("#notice", hidden());
      assertThat(open.documentOnce(text -> text.contains(" mine"))).doesNotContain("theirs");
      page.waitForSelector("#kept:not(.trouble)");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static Page.WaitForSelectorOptions hidden() {
    return new Page.WaitForSelectorOptions().setState(WaitForSelectorState.HIDDEN);
  }
}
