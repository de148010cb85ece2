package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Moving by arrow keys and by taps: the same numbers change as in a drag, and no others. */
class NudgeTest {
  @TempDir Path folder;

  @Test
  void aPointIsMovedByKeysAloneAndWrittenOnce() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address()).choose("Front");
      Page page = table.page();
      page.locator(".members button", new Page.LocatorOptions().setHasText("shoulder tip"))
          .first()
          .press("Enter");
      page.waitForSelector(".ledger-page h2:has-text('shoulder tip')");
      page.locator(".nudging").press("Enter");
      page.waitForSelector(".nudge-ways");
      page.keyboard().press("Shift+ArrowUp");
      page.waitForSelector(".sentence-line:has-text('at -15')");
      page.keyboard().press("Escape");
      page.waitForSelector(
          "#sentence",
          new Page.WaitForSelectorOptions()
              .setState(com.microsoft.playwright.options.WaitForSelectorState.HIDDEN));
      assertThat(open.document()).isEqualTo(before);

      page.keyboard().press("ArrowRight");
      page.waitForSelector(".nudge-ways");
      page.keyboard().press("2");
      for (int i = 0; i < 4; i++) {
        page.keyboard().press("ArrowRight");
      }
      page.waitForSelector(".sentence-line:has-text('let shoulder_here')");
      page.keyboard().press("Enter");
      String after = open.documentOnce(text -> !text.equals(before));
      // 5 mm to the right, as far as a length at 20 degrees down can follow: 5 mm by its cosine,
      // 4.7 mm, in steps of the millimetre that she wrote.
      assertThat(after)
          .isEqualTo(before.replace("shoulder + 1.5 cm - neck", "shoulder + 2 cm - neck"));
      page.keyboard().press("Control+z");
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);

      page.keyboard().press("ArrowDown");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Leave it")).click();
      // With nothing selected the arrows pan.
      page.locator("#table canvas").focus();
      page.keyboard().press("Escape");
      double[] at = table.at("point", "front", "shoulder_tip");
      page.keyboard().press("ArrowLeft");
      assertThat(table.at("point", "front", "shoulder_tip")[0]).isEqualTo(at[0] + 40);
      assertThat(open.document()).isEqualTo(before);
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
