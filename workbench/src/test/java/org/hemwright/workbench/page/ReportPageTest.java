package org.hemwright.workbench.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.paper.markup.Markup;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page says what was found, links both ways, and lets nothing of a document act. */
class ReportPageTest {
  @TempDir Path folder;

  private String page(String document) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), document);
    Files.copy(
        Path.of("..", "examples", "inlet-tee", "sizes.csv"),
        folder.resolve("sizes.csv"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
    assertThat(evaluated.sound()).as(evaluated.problems().toString()).isTrue();
    var run = evaluated.run().orElseThrow();
    return Workbench.page(run, Workbench.check(run), evaluated, Optional.empty());
  }

  private static String tee() throws IOException {
    return Files.readString(Path.of("..", "examples", "inlet-tee", "pattern.hem"));
  }

  /** A tee with a notch moved on one front, so that findings are pinned in some sizes. */
  static String faulty() throws IOException {
    return tee()
            .replaceFirst(
                "notch armhole at 45% from end\n  notch side at 50%",
                "notch armhole at 43% from end\n  notch side at 46%")
        + "accept notch-mates on \"seam sides\" because \"The front is eased\"\n";
  }

  private static List<String> all(String page, String pattern) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(page);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void aCleanPatternSaysSo() throws IOException {
    assertThat(page(tee()))
        .contains("Nothing to mend, and nothing that is worth a look.")
        .contains("<strong>0</strong> to mend")
        .doesNotContain("id=\"finding-1\"");
  }

  @Test
  void findingsArePinnedAndLinkBothWays() throws IOException {
    String page = page(faulty());
    List<String> ids = all(page, " id=\"([^\"]*)\"");
    assertThat(ids).doesNotHaveDuplicates().contains("finding-1", "pin-1");
    assertThat(ids).containsAll(all(page, " href=\"#([^\"]*)\""));
    assertThat(all(page, "href=\"#(pin-[0-9]+)\"")).isNotEmpty();
    for (String pin : all(page, "href=\"#(pin-[0-9]+)\"")) {
      assertThat(page)
          .contains("id=\"" + pin + "\" href=\"#" + pin.replace("pin", "finding") + "\"");
    }
    assertThat(page).contains("<strong>Accepted because </strong>“The front is eased”");
    assertThat(page).contains("pattern.hem, line ").contains("seam armholes  sleeve.cap with");
  }

  @Test
  void nothingThatADocumentSaysActs() throws IOException {
    String evil = "<script>alert(1)</script><img src=x onerror=alert(2)>&'";
    String page =
        page(
            faulty()
                .replace("\"Sleeve\"", '"' + evil + '"')
                .replace("\"Inlet tee\"", '"' + evil + '"')
                .replace("\"Tern Cove Patterns\"", '"' + evil + '"')
                .replace("The front is eased", evil)
                .replace("lengthen at waist_centre", "label \"" + evil + "\" at waist_centre"));
    assertThat(page)
        .doesNotContain("<script")
        .doesNotContain("<img")
        .contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    String unquoted = page.replaceAll("\"[^\"]*\"", "\"\"");
    assertThat(all(unquoted, "(<[a-z][^>]* on[a-z]+=)")).isEmpty();
    assertThat(all(page, "((?:src|href)=\"(?!#|data:,\")[^\"]*)")).isEmpty();
    assertThat(all(page, "(url\\((?!#)|@import|https?://[^w\"])")).isEmpty();
  }

  @Test
  void itCanBeReadAloud() throws IOException {
    String page = page(faulty());
    assertThat(page).contains("<html lang=\"en\">").contains("<title>Inlet tee 1.0");
    int level = 0;
    for (String heading : all(page, "<h([1-6])")) {
      int next = Integer.parseInt(heading);
      assertThat(next).as("after a heading of level " + level).isLessThanOrEqualTo(level + 1);
      level = next;
    }
    assertThat(all(page, "<(h1)")).hasSize(1);
    assertThat(all(page, "(<svg [^>]*>)"))
        .hasSizeGreaterThan(10)
        .allMatch(svg -> svg.matches(".* role=\"(img|group)\" aria-label=\"[^\"]+\">"));
    assertThat(all(page, "(<th[ >][^>]*)")).allMatch(cell -> cell.contains("scope="));
    assertThat(all(page, "<table[^>]*>(<caption>)?"))
        .hasSizeGreaterThan(5)
        .allMatch("<caption>"::equals);
  }

  @Test
  void everyInkOfThePicturesHasItsColourInTheDark() throws IOException {
    String page = page(faulty());
    String dark =
        page.substring(page.indexOf("prefers-color-scheme: dark"), page.indexOf("</style>"));
    Set<String> inks = new TreeSet<>(all(page, "var\\((--ink-[0-9a-f]{6}),"));
    assertThat(inks).hasSizeGreaterThan(4).allMatch(ink -> dark.contains(ink + ":"));
  }

  @Test
  void elementsCloseInOrder() {
    Markup markup = new Markup().open("p").open("em");
    assertThatThrownBy(() -> markup.close("p")).isInstanceOf(IllegalStateException.class);
    assertThat(
            new Markup().open("p", "title", "a\"<b>").prose("take `x < 1` & `").close("p").whole())
        .isEqualTo("<p title=\"a&quot;&lt;b&gt;\">take <code>x &lt; 1</code> &amp; `</p>\n");
  }
}
