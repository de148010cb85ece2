package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The booklet's words are written beside the booklet as it will be read. */
class ProseInBrowserTest {
  private static final String STEP = "[data-step='attach_neckline']";

  private static final String PROPOSED =
      ".cm-tooltip-autocomplete:not(.cm-tooltip-autocomplete-disabled) li";

  @TempDir Path folder;

  private OnDisk words() {
    return new OnDisk(folder.resolve("booklet.md"));
  }

  @Test
  void whatSheWritesStandsInTheBooklet() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).page();
      String before = words().text();
      new Hands(page).job("Making");
      Page.WaitForSelectorOptions patient = new Page.WaitForSelectorOptions().setTimeout(600_000);
      page.waitForSelector(".step-card img", patient);
      Locator card = page.locator(STEP);
      card.getByText("Write beside this step").click();
      page.waitForFunction("() => document.activeElement.closest('.words-place')");
      page.keyboard().type("Use a ball-point needle, {num");
      take(page, "number");
      page.waitForSelector(PROPOSED + ":has-text('band_width')");
      page.keyboard().type("band_w");
      take(page, "band_width");
      page.keyboard().type(" from the edge.");
      words().once("Use a ball-point needle, {number band_width} from the edge.");
      page.waitForFunction(
          "at => document.querySelector(at).textContent.includes('needle, 2')", STEP);

      // A slip: told under the words, mended by one click.
      page.keyboard().press("Enter");
      page.keyboard().press("Enter");
      page.keyboard().type("{picture pokket}");
      page.waitForSelector(".words-amiss:has-text('pokket')", patient);
      page.waitForSelector(".words-place .told-fail", patient);
      for (int i = 0; i < "{picture pokket}".length(); i++) {
        page.keyboard().press("Backspace");
      }
      page.keyboard().type("{number band_widt}");
      page.waitForSelector(".words-amiss:has-text('band_widt')", patient);
      page.locator(".words-amiss button", new Page.LocatorOptions().setHasText("Mend it so"))
          .click();
      words().once("\n\n{number band_width}\n");
      page.waitForFunction("() => !document.querySelector('.words-amiss')");

      // Another program adds a line elsewhere: both stand.
      Path file = folder.resolve("booklet.md");
      Files.writeString(
          file, words().text().replace("do not hang it to dry", "do not hang it out in the rain"));
      page.waitForFunction(
          "() => document.querySelector('.words-place .cm-content').textContent.includes('rain')");
      page.locator(".words-place .cm-content").focus();
      page.keyboard().type(" Slowly.");
      assertThat(words().once("Slowly.")).contains("in the rain", "ball-point needle");

      // All of it can be had back.
      for (int i = 0; i < 40 && !words().text().equals(before); i++) {
        String now = words().text();
        page.locator("#undo").click();
        words().once(text -> !text.equals(now));
      }
      assertThat(words().text()).isEqualTo(before);
      assertThat(chromium.complaints()).isEmpty();
    }
    assertThat(folder.resolve("pattern.hem")).hasSameTextualContentAs(example("pattern.hem"));
  }

  /** Takes what is proposed, once it stands first; the editor takes none that has just come up. */
  private static void take(Page page, String words) {
    page.waitForSelector(PROPOSED + "[aria-selected]:has-text('" + words + "')");
    page.waitForTimeout(150);
    page.keyboard().press("Enter");
  }

  private static Path example(String name) {
    return Path.of("../examples/inlet-tee").resolve(name);
  }

  @Test
  void herOwnPictureStandsInTheDrawingsPlace() throws Exception {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", png);
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee");
        Chromium chromium = Chromium.start()) {
      Page page = chromium.window(open.address()).page();
      new Hands(page).job("Making");
      page.waitForSelector(".step-card img", new Page.WaitForSelectorOptions().setTimeout(600_000));
      FileChooser chooser =
          page.waitForFileChooser(
              () -> page.locator(STEP).getByText("Put your picture here").click());
      chooser.setFiles(
          new com.microsoft.playwright.options.FilePayload(
              "mine.png", "image/png", png.toByteArray()));
      page.locator(STEP).getByText("Our drawing again").waitFor();
      Path file = folder.resolve("pictures/attach_neckline.png");
      assertThat(Files.readAllBytes(file)).isEqualTo(png.toByteArray());
      assertThat((Number) page.locator(STEP + " img").evaluate("image => image.naturalWidth"))
          .isEqualTo(40);
      page.locator(STEP).getByText("Our drawing again").click();
      page.locator(STEP).getByText("Put your picture here").waitFor();
      assertThat(file).doesNotExist();
      assertThat(folder.resolve(".hemwright/pictures/attach_neckline.png")).exists();

      // A drawing that would act by itself is refused in words, and nothing is written.
      byte[] acting =
          "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><script>1</script></svg>"
              .getBytes(java.nio.charset.StandardCharsets.UTF_8);
      FileChooser again =
          page.waitForFileChooser(
              () -> page.locator(STEP).getByText("Put your picture here").click());
      again.setFiles(
          new com.microsoft.playwright.options.FilePayload("bad.svg", "image/svg+xml", acting));
      page.waitForFunction("() => document.querySelector('.leaf-state').textContent.length > 20");
      assertThat(folder.resolve("pictures/attach_neckline.svg")).doesNotExist();
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
