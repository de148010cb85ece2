package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The document is set neatly at one click, and one undo takes that back. */
class NeatInBrowserTest {
  @TempDir Path folder;

  @Test
  void linesAreSetNeatlyAndBackAgain() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String neat = open.document();
      String untidy = neat.replace("dial short_length  = 48", "dial   short_length=48");
      assertThat(untidy).isNotEqualTo(neat);
      Files.writeString(folder.resolve("pattern.hem"), untidy);
      Table table = chromium.window(open.address());
      Page page = table.page();
      OnDisk.await(() -> table.text().equals(untidy));
      page.locator(".neatly").click();
      page.waitForSelector(".text-ways [role='status']:has-text('1 line set')");
      assertThat(open.documentOnce(neat::equals)).isEqualTo(neat);
      page.locator(".neatly").click();
      page.waitForSelector(".text-ways [role='status']:has-text('It is neat')");
      page.locator("#undo").click();
      assertThat(open.documentOnce(untidy::equals)).isEqualTo(untidy);
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
