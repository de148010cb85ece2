package org.hemwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.paper.TestSheets.FACTS;
import static org.hemwright.paper.TestSheets.oneOfEach;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hemwright.geometry.Box;
import org.hemwright.paper.OutsideTool;
import org.hemwright.paper.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PdfWriterTest {
  // Handbook check values 30 and 34: A4, Letter, A0, a 36 in roll and the longest page, in points.
  @ParameterizedTest
  @CsvSource({
    "210, 297, 595.276, 841.890",
    "215.9, 279.4, 612, 792",
    "841, 1189, 2383.937, 3370.394",
    "914.4, 5080, 2592, 14400"
  })
  void pagesHaveTheirTrueSize(double width, double height, double across, double down)
      throws IOException {
    byte[] bytes = PdfWriter.write(FACTS, List.of(oneOfEach(width, height)));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      PDRectangle page = document.getPage(0).getMediaBox();
      assertThat((double) page.getWidth()).isCloseTo(across, within(0.001));
      assertThat((double) page.getHeight()).isCloseTo(down, within(0.001));
    }
  }

  @Test
  void pagesLongerThanReadersHonourAreRefused() {
    assertThatThrownBy(
            () -> PdfWriter.write(FACTS, List.of(new Sheet(new Box(0, 0, 914, 5081), List.of()))))
        .hasMessageContaining("5080");
  }

  @Test
  void theFileSaysWhatItIs() throws IOException {
    byte[] bytes = PdfWriter.write(FACTS, List.of(oneOfEach(210, 297), oneOfEach(300, 200)));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo(FACTS.title());
      assertThat(document.getDocumentInformation().getAuthor()).isEqualTo("Tern Cove Patterns");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
          .containsExactly("All sizes", "Size 14", "Size 16");
      for (var name : document.getPage(0).getResources().getFontNames()) {
        PDFont font = document.getPage(0).getResources().getFont(name);
        assertThat(font.isEmbedded()).isTrue();
      }
      assertThat(new PDFTextStripper().getText(document)).contains("Tern Cove & “1 ¼ in”");
    }
  }

  @Test
  void theSameSheetsMakeTheSameBytes() {
    List<Sheet> sheets = List.of(oneOfEach(210, 297), oneOfEach(841, 1189));
    assertThat(PdfWriter.write(FACTS, sheets)).isEqualTo(PdfWriter.write(FACTS, sheets));
  }

  @Test
  void outsideReadersFindItSound(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("sheet.pdf");
    Files.write(file, PdfWriter.write(FACTS, List.of(oneOfEach(210, 297), oneOfEach(300, 200))));
    assertThat(OutsideTool.run(folder, "qpdf", "--check", "sheet.pdf"))
        .contains("No syntax or stream encoding errors");
    assertThat(OutsideTool.run(folder, "pdfinfo", "-f", "1", "-l", "2", "sheet.pdf"))
        .contains("595.276 x 841.89")
        .contains("Pages:           2");
    Stream<String> fonts = OutsideTool.run(folder, "pdffonts", "sheet.pdf").lines().skip(2);
    assertThat(fonts).isNotEmpty().allMatch(line -> line.contains(" yes yes yes "));
  }
}
