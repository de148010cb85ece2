package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.write.PrintForm;
import org.hemwright.paper.PrintedFile;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.junit.jupiter.api.Test;

/** What stands above and below each page of a booklet, as a PDF library reads it. */
class BookletFootTest {
  @Test
  void everyPageHasItsNumberThePatternAndTheMarkOfAProof() throws IOException {
    Evaluated evaluated = Workbench.evaluate(new PackedFolder("inlet-tee"));
    BookletMaking booklet =
        Workbench.booklet(
            evaluated, evaluated.run().orElseThrow(), Optional.empty(), List.of(), "");
    PrintedFile file =
        booklet
            .files(
                List.of(new PrintForm(PrintForm.Paper.A4, false)),
                Optional.of("Proof, not for sale"))
            .get(1);
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      assertThat(document.getNumberOfPages()).isGreaterThan(5);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(page);
        text.setEndPage(page);
        assertThat(text.getText(document))
            .contains("Page " + page)
            .contains("Inlet tee, version 1.0, Tern Cove Patterns")
            .contains("Proof, not for sale");
      }
    }
  }
}
