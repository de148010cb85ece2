package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A thing gets another name wherever it is said, after what changes was shown; one undo lifts it.
 */
class RenameTest {
  @TempDir Path folder;

  @Test
  void aPieceAndASeamAreCalledOtherwiseEverywhere() throws Exception {
    Path samples = folder.resolve("samples.csv");
    String sampled =
        "date,size,fabric,where,pinned out (cm),note\n2026-10-02,102,main,yoke.neck,1,\n";
    Files.writeString(samples, sampled);
    try (OpenFolder open = OpenFolder.example(folder, "shingle-shirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Path booklet = folder.resolve("booklet.md");
      String prose = Files.readString(booklet);
      Table table = chromium.window(open.address()).choose("Yoke");
      Page page = table.page();
      page.locator("[data-rename]").click();
      page.keyboard().type("collar");
      page.keyboard().press("Enter");
      page.waitForSelector(".renaming-told:has-text('stands in the document already')");
      page.locator(".renaming input").fill("saddle");
      page.keyboard().press("Enter");
      page.waitForSelector(".renaming-told:has-text('18 lines change in 2 files')");
      assertThat(page.locator(".renaming-lines").first().textContent())
          .contains("samples.csv, line 2", "saddle.neck", "piece saddle \"Yoke\" number 6");
      assertThat(open.document()).isEqualTo(before);
      page.locator(".renaming-perhaps summary").click();
      page.locator(".renaming-perhaps li", new Page.LocatorOptions().setHasText("a breast pocket"))
          .locator("input")
          .check();
      page.locator(".renaming .chief").click();
      String after = open.documentOnce(text -> text.contains("piece saddle \"Yoke\""));
      assertThat(after).contains("saddle.outer.neck", "Roll fronts and back up to the yoke");
      new OnDisk(samples).once("saddle.neck");
      new OnDisk(booklet).once("a saddle and");
      assertThat(samples).hasContent(sampled.replace("yoke.neck", "saddle.neck"));
      assertThat(booklet).hasContent(prose.replace("a yoke and a breast", "a saddle and a breast"));
      page.locator("#undo").click();
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);
      new OnDisk(samples).once("yoke.neck");
      new OnDisk(booklet).once("a yoke and");
      assertThat(samples).hasContent(sampled);
      assertThat(booklet).hasContent(prose);

      // A seam, from the document by keys alone: its step and the booklet's heading follow.
      table.caretAfter("\nseam pocket_edges");
      page.keyboard().press("F2");
      Locator field = page.locator(".renaming input");
      field.waitFor();
      assertThat(field.inputValue()).isEqualTo("pocket_edges");
      page.keyboard().type("pocket_round");
      page.keyboard().press("Enter");
      page.waitForSelector(".renaming-lines:has-text('## sew_pocket_round: Sew the pocket on')");
      page.keyboard().press("Enter");
      open.documentOnce(text -> text.contains("seam pocket_round"));
      new OnDisk(booklet).once("## sew_pocket_round: Sew the pocket on");
      assertThat(booklet).hasContent(prose.replace("sew_pocket_edges", "sew_pocket_round"));
      page.waitForSelector(".ledger-page h2:has-text('pocket round')");
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
