package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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
}
