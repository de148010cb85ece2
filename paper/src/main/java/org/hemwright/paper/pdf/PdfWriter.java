package org.hemwright.paper.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageLayout;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.hemwright.geometry.Box;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.type.Face;

/** Writes sheets as the pages of one PDF file. */
public final class PdfWriter {
  /** The longest side of a page that readers honour (mm): 14 400 units of 1/72 in. */
  public static final double LONGEST_SIDE = 14_400 * 25.4 / 72;

  private PdfWriter() {}

  /**
   * The file's bytes.
   *
   * @param facts what the file says of itself
   * @param sheets at least one; each becomes a page of the size of its frame
   */
  public static byte[] write(DocumentFacts facts, List<Sheet> sheets) {
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a file has a page at least");
    }
    try (PDDocument document = new PDDocument()) {
      PdfLayers layers = new PdfLayers(facts.sizes());
      PdfFonts fonts = new PdfFonts(document);
      PdfPictures pictures = new PdfPictures(document);
      describe(document, facts, layers);
      for (Sheet sheet : sheets) {
        PDPage page = new PDPage(paper(sheet.frame()));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          new PdfPage(content, fonts, layers, pictures, sheet.frame()).draw(sheet);
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PDRectangle paper(Box frame) {
    if (Math.max(frame.width(), frame.height()) > LONGEST_SIDE) {
      throw new IllegalArgumentException(
          "a page of %.0f × %.0f mm is longer than the 5080 mm that readers honour"
              .formatted(frame.width(), frame.height()));
    }
    return new PDRectangle(
        (float) (frame.width() * Face.POINTS_PER_MM),
        (float) (frame.height() * Face.POINTS_PER_MM));
  }

  private static void describe(PDDocument document, DocumentFacts facts, PdfLayers layers)
      throws IOException {
    PdfFacts own = new PdfFacts(facts, false);
    own.inform(document);
    CRC32 id = new CRC32();
    id.update(facts.toString().getBytes(StandardCharsets.UTF_8));
    document.setDocumentId(id.getValue());
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setPageLayout(PageLayout.SINGLE_PAGE);
    catalog.setPageMode(PageMode.USE_OPTIONAL_CONTENT);
    catalog.setOCProperties(layers.properties());
    PDViewerPreferences preferences = new PDViewerPreferences();
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    preferences.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    own.packet(document);
  }
}
