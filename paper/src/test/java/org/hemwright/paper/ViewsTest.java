package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hemwright.paper.tile.PageFormat;
import org.junit.jupiter.api.Test;

/** A pattern of two views: who sews one prints no more than she needs. */
class ViewsTest {
  private static final PaperOptions PAGES = PaperOptions.everything().on(PageFormat.EITHER);
  private static final PrintedPattern TOGETHER = Paper.of(SandlingSkirt.inViews(false), PAGES);

  private static String text(PDDocument document, int from, int to) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(from);
    stripper.setEndPage(to);
    return stripper.getText(document).replace('\u00a0', ' ');
  }

  /** "3–5, 9": the pages themselves. */
  private static Set<Integer> pages(String ranges) {
    Set<Integer> pages = new LinkedHashSet<>();
    for (String range : ranges.split(", ", -1)) {
      String[] ends = range.split("–", -1);
      for (int i = Integer.parseInt(ends[0]); i <= Integer.parseInt(ends[ends.length - 1]); i++) {
        pages.add(i);
      }
    }
    return pages;
  }

  @Test
  void theMapSaysWhichPagesEachViewNeeds() throws IOException {
    PrintedFile file = TOGETHER.files().get(0);
    PrintedFile.GroupPages group = file.groups().get(0);
    assertThat(group.pagesOfView().keySet()).containsExactly("A", "B");
    assertThat(group.pagesOfView()).containsEntry("A", group.pagesOfSize());
    Map<String, Integer> ofB = group.pagesOfView().getOrDefault("B", Map.of());
    assertThat(ofB.getOrDefault("24", 99)).isLessThan(group.pagesOfSize().getOrDefault("24", 0));
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      assertThat(text(document, 1, 1))
          .contains("View A, Elastic waist: pieces 1 and 2")
          .contains("View B, Bound waist: piece 1");
      String map = text(document, 2, 2);
      assertThat(map).contains("All pieces", "View A, Elastic waist", "View B, Bound waist");
      String viewB = map.substring(map.indexOf("View B, Bound waist"));
      String last = viewB.lines().filter(line -> line.contains(" pages ")).toList().get(0);
      Set<Integer> needed = pages(last.substring(last.indexOf(" pages ") + 7).strip());
      assertThat(needed).hasSize(ofB.getOrDefault("8", 0));
      for (int page = 3; page <= document.getNumberOfPages(); page++) {
        if (text(document, page, page).contains("Skirt front and back")) {
          assertThat(needed).contains(page);
        }
      }
    }
  }

  @Test
  void eachPieceSaysWhichViewsTakeIt() throws IOException {
    try (PDDocument document = Loader.loadPDF(TOGETHER.files().get(0).bytes())) {
      assertThat(text(document, 3, document.getNumberOfPages()))
          .contains("Piece 1 of 2, views A and B")
          .contains("Piece 2 of 2, view A");
    }
  }

  @Test
  void oneViewAloneHasFilesWithItsPiecesOnly() throws IOException {
    PrintedPattern printed = Paper.of(SandlingSkirt.inViews(false), PAGES.forViews(List.of("B")));
    assertThat(printed.files()).hasSize(1);
    PrintedFile file = printed.files().get(0);
    assertThat(file.name()).isEqualTo("view-b/sandling-skirt-1.0-view-b-pages.pdf");
    assertThat(file.groups().get(0).pagesOfView()).isEmpty();
    assertThat(file.groups().get(0).pages())
        .isLessThan(TOGETHER.files().get(0).groups().get(0).pages());
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Sandling skirt, version 1.0, view B, Bound waist, sizes 8 to 24");
      assertThat(text(document, 1, 1)).contains("View B, Bound waist");
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page, page))
            .contains("Sandling skirt, view B, version 1.0, Tern Cove Patterns")
            .doesNotContain("Waistband");
      }
      assertThat(text(document, 3, document.getNumberOfPages())).contains("Skirt front and back");
    }
  }

  @Test
  void aDocumentMayAskForFilesOfEachView() {
    PaperOptions options =
        PaperOptions.everything().withSingles(List.of("14")).on(PageFormat.A4, PageFormat.A0);
    List<String> names =
        Printing.of(SandlingSkirt.inViews(true), options).jobs().stream()
            .map(Paper.Job::name)
            .toList();
    String stem = "sandling-skirt-1.0";
    assertThat(names)
        .containsExactlyElementsOf(
            Stream.of("", "view-a", "view-b")
                .flatMap(
                    view -> {
                      String folder = view.isEmpty() ? "" : view + "/";
                      String own = view.isEmpty() ? stem : stem + "-" + view;
                      return Stream.of(
                          folder + own + "-pages-a4.pdf",
                          folder + own + "-a0.pdf",
                          folder + "size-14/" + own + "-size-14-pages-a4.pdf",
                          folder + "size-14/" + own + "-size-14-a0.pdf");
                    })
                .toList());
    assertThat(Printing.of(SandlingSkirt.inViews(false), options).jobs()).hasSize(4);
  }

  @Test
  void aPatternOfOneViewSpeaksOfNone() throws IOException {
    PrintedPattern printed = Paper.of(SandlingSkirt.run(), PAGES);
    assertThat(printed.files().get(0).groups().get(0).pagesOfView()).isEmpty();
    try (PDDocument document = Loader.loadPDF(printed.files().get(0).bytes())) {
      assertThat(text(document, 1, document.getNumberOfPages()).toLowerCase(java.util.Locale.ROOT))
          .doesNotContain("view");
    }
  }
}
