package org.hemwright.paper.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.hemwright.paper.type.Face;

/** The faces that one file uses, each embedded once as a subset. */
final class PdfFonts {
  private final PDDocument document;
  private final Map<Face, PDType0Font> loaded = new LinkedHashMap<>();

  PdfFonts(PDDocument document) {
    this.document = document;
  }

  PDType0Font of(Face face) throws IOException {
    PDType0Font font = loaded.get(face);
    if (font == null) {
      font = PDType0Font.load(document, face.open(), face.inParts());
      loaded.put(face, font);
    }
    return font;
  }
}
