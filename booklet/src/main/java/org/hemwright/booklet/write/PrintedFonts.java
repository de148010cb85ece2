package org.hemwright.booklet.write;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseFont;
import org.hemwright.paper.type.HouseType;

/** The fonts of a printed booklet, each loaded once. */
final class PrintedFonts {
  /** The family of our own. */
  static final String OURS = "House";

  private PrintedFonts() {}

  /** Ours, and under names of their own those of the house, ours in the place of what it lacks. */
  static void put(PdfRendererBuilder builder, PDDocument document, HouseType type)
      throws IOException {
    FontStyle plain = FontStyle.NORMAL;
    Map<Face, PDFont> loaded = new LinkedHashMap<>();
    font(builder, document, loaded, OURS, Face.REGULAR, 400, plain);
    font(builder, document, loaded, OURS, Face.SEMIBOLD, 700, plain);
    font(builder, document, loaded, OURS, Face.LIGHT, 300, plain);
    font(builder, document, loaded, OURS, Face.ITALIC, 400, FontStyle.ITALIC);
    if (!type.isOurs()) {
      Face words = type.words().map(HouseFont::face).orElse(Face.REGULAR);
      Face bold = type.bold().map(HouseFont::face).orElse(Face.SEMIBOLD);
      Face italic = type.italic().map(HouseFont::face).orElse(Face.ITALIC);
      Face titles = type.forTitles().map(HouseFont::face).orElse(Face.LIGHT);
      font(builder, document, loaded, Fonts.WORDS, words, 400, plain);
      font(builder, document, loaded, Fonts.WORDS, bold, 700, plain);
      font(builder, document, loaded, Fonts.WORDS, italic, 400, FontStyle.ITALIC);
      font(builder, document, loaded, Fonts.TITLES, titles, 400, plain);
    }
  }

  /** Without the font's own glyph substitution, so that each glyph stands for a character. */
  private static void font(
      PdfRendererBuilder builder,
      PDDocument document,
      Map<Face, PDFont> loaded,
      String family,
      Face face,
      int weight,
      FontStyle style)
      throws IOException {
    PDFont font = loaded.get(face);
    if (font == null) {
      font = PDType0Font.load(document, face.open(), face.inParts());
      loaded.put(face, font);
    }
    builder.useFont(new PDFontSupplier(font), family, weight, style, true);
  }
}
