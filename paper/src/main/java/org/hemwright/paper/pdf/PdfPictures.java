package org.hemwright.paper.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.hemwright.paper.sheet.Raster;

/** The pictures of one file, each embedded once. */
final class PdfPictures {
  private final PDDocument document;
  private final Map<Raster, PDImageXObject> embedded = new LinkedHashMap<>();

  PdfPictures(PDDocument document) {
    this.document = document;
  }

  PDImageXObject of(Raster raster) throws IOException {
    PDImageXObject known = embedded.get(raster);
    if (known == null) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(raster.png()));
      known = LosslessFactory.createFromImage(document, image);
      embedded.put(raster, known);
    }
    return known;
  }
}
