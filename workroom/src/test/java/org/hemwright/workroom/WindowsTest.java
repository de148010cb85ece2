package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is lost: two windows in step, undo after a restart, changes by other programs. */
class WindowsTest {
  @TempDir Path folder;

  private static void typeAfter(Table table, String words, String typed) {
    table.caretAfter(words);
    table.page().keyboard().type(typed);
  }

  @Test
  void twoWindowsAreKeptInStepWhileBothWrite() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table one = chromium.window(open.address());
      Table two = chromium.window(open.address());
      for (int i = 0; i < 5; i++) {
        typeAfter(one, "# A flared skirt", " one" + i);
        typeAfter(two, "waist seam to finished hem", " two" + i);
      }
      String there = open.documentOnce(text -> text.contains(" one0") && text.contains(" two4"));
      OnDisk.await(() -> one.text().equals(two.text()));
      assertThat(one.text()).isEqualTo(two.text());
      assertThat(open.documentOnce(one.text()::equals)).isEqualTo(one.text());
      assertThat(there).contains("# A flared skirt one4 one3 one2 one1 one0");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void undoSurvivesARestart() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      typeAfter(chromium.window(open.address()), "# A flared skirt", " marked");
      String first = open.documentOnce(text -> text.contains(" marked"));
      open.restart();
      Table table = chromium.window(open.address());
      typeAfter(table, "cut from circle arcs", " pencilled");
      open.documentOnce(text -> text.contains(" pencilled"));
      table.page().locator("#undo").click();
      assertThat(open.documentOnce(first::equals)).isEqualTo(first);
      table.page().locator("#undo").click();
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);
      table.page().locator("#redo").click();
      assertThat(open.documentOnce(first::equals)).isEqualTo(first);
    }
  }

  @Test
  void whatAnotherProgramChangesIsTakenUpAndCanBeUndone() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address());
      String outside = before.replace("elastic_width = 3 cm ", "elastic_width = 4 cm ");
      assertThat(outside).isNotEqualTo(before);
      Files.writeString(folder.resolve("pattern.hem"), outside);
      OnDisk.await(() -> table.text().equals(outside));
      assertThat(table.text()).isEqualTo(outside);
      table.page().locator("#undo").click();
      assertThat(open.documentOnce(before::equals)).isEqualTo(before);
    }
  }

  @Test
  void aSlipIsMendedAtOneClick() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      String before = open.document();
      Table table = chromium.window(open.address());
      typeAfter(table, "dial short_length  = 48", ",5");
      table.page().keyboard().press("Delete");
      Page page = table.page();
      page.locator(".told-fail").first().hover();
      Locator mend =
          page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Mend it so"));
      mend.first().click();
      String mended = open.documentOnce(text -> text.contains("48.5"));
      assertThat(mended).contains("dial short_length  = 48.5").hasSameSizeAs(before + "x");
    }
  }

  @Test
  void slipsStandBelowTheTextForKeysToo() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      Page page = table.page();
      assertThat(page.locator(".slips").count()).isZero();
      String before = open.document();
      typeAfter(table, "dial short_length  = 48", ",5");
      page.waitForSelector(".slips:has-text('has a comma')");
      typeAfter(table, "dial long_length   = 6", ",");
      page.waitForSelector(".slips:has-text('2 of 2')");
      page.keyboard().press("F8");
      page.waitForSelector(".slips:has-text('1 of 2')");
      Locator mend =
          page.locator(".slips")
              .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Mend it so"));
      mend.press("Enter");
      String mended = open.documentOnce(text -> text.contains("short_length  = 48.5"));
      page.waitForSelector(".slips:has-text('Line ')");
      page.keyboard().press("Control+z");
      page.keyboard().press("Control+z");
      assertThat(mended).isNotEqualTo(before);
      page.waitForSelector(".slips:has-text('has a comma')");
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  @Test
  void aFindingIsAcceptedWithAReason() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "inlet-tee")) {
      String wrong =
          open.document().replaceFirst("allowance 1 cm, hem 2.5", "allowance 1.5 cm, hem 2.5");
      Files.writeString(folder.resolve("pattern.hem"), wrong);
      try (Chromium chromium = Chromium.start()) {
        Table table = chromium.window(open.address());
        Page page = table.page();
        page.locator(".jobs button", new Page.LocatorOptions().setHasText("Proof")).click();
        page.locator(".finding-head").first().click();
        page.getByLabel("Or leave it as it is, because").fill("The \"steam\" takes it up");
        page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Accept").setExact(true))
            .click();
        String accepted = open.documentOnce(text -> text.contains("\naccept "));
        assertThat(accepted).contains(" because \"The \"\"steam\"\" takes it up\"");
        page.waitForSelector(".finding.accepted");
        assertThat(page.locator(".finding.accepted").first().textContent())
            .contains("The \"steam\" takes it up");
      }
    }
  }
}
