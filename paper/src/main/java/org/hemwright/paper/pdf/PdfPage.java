package org.hemwright.paper.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Picture;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.jspecify.annotations.Nullable;

/** Puts one sheet's items down on one page, in points from the frame's lower left corner. */
final class PdfPage {
  private final PDPageContentStream content;
  private final PdfFonts fonts;
  private final PdfLayers layers;
  private final PdfPictures pictures;
  private final Box frame;
  private @Nullable Layer open;
  private @Nullable Pen pen;
  private @Nullable Ink fill;

  PdfPage(
      PDPageContentStream content,
      PdfFonts fonts,
      PdfLayers layers,
      PdfPictures pictures,
      Box frame) {
    this.content = content;
    this.fonts = fonts;
    this.layers = layers;
    this.pictures = pictures;
    this.frame = frame;
  }

  void draw(Sheet sheet) throws IOException {
    content.setMiterLimit((float) Stroke.MITRE_LIMIT);
    draw(sheet.items());
    close();
  }

  private void draw(List<Item> items) throws IOException {
    for (Item item : items) {
      if (item instanceof Clip clip) {
        close();
        save();
        box(clip.window());
        content.clip();
        draw(clip.items());
        close();
        restore();
      } else if (item instanceof Inked inked) {
        enter(inked.layer());
        put(inked);
      }
    }
  }

  private void put(Inked item) throws IOException {
    if (item instanceof Stroke stroke) {
      use(stroke.pen());
      trace(stroke.path());
      if (stroke.path().isClosed()) {
        content.closeAndStroke();
      } else {
        content.stroke();
      }
    } else if (item instanceof Fill area) {
      use(area.ink());
      trace(area.outline().path());
      content.fill();
    } else if (item instanceof Hatch hatch) {
      save();
      trace(hatch.outline().path());
      content.clip();
      use(hatch.pen());
      for (Line line : hatch.lines()) {
        content.moveTo(x(line.start()), y(line.start()));
        content.lineTo(x(line.end()), y(line.end()));
      }
      content.stroke();
      restore();
    } else if (item instanceof Words words) {
      write(words);
    } else if (item instanceof Picture picture) {
      Box box = picture.box();
      content.drawImage(
          pictures.of(picture.raster()),
          points(box.minX() - frame.minX()),
          points(box.minY() - frame.minY()),
          points(box.width()),
          points(box.height()));
    }
  }

  private void write(Words words) throws IOException {
    SetLine line = words.line();
    if (line.glyphs().isEmpty()) {
      return;
    }
    use(words.ink());
    float cos = (float) StrictMath.cos(words.angle());
    float sin = (float) StrictMath.sin(words.angle());
    content.beginText();
    content.setFont(fonts.of(line.face()), (float) line.points());
    content.setTextMatrix(new Matrix(cos, sin, -sin, cos, x(words.at()), y(words.at())));
    content.showTextWithPositioning(kerned(line));
    content.endText();
  }

  /** Runs of characters, and between them what to take off an advance (thousandths of the size). */
  private static Object[] kerned(SetLine line) {
    double thousandth = Face.mm(line.points()) / 1000;
    List<Object> parts = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    double pen = 0;
    for (SetLine.Glyph glyph : line.glyphs()) {
      float nearer = Math.round((pen - glyph.x()) / thousandth);
      if (nearer != 0) {
        parts.add(run.toString());
        parts.add(nearer);
        run.setLength(0);
      }
      run.append(glyph.character());
      pen = glyph.x() + glyph.advance();
    }
    parts.add(run.toString());
    return parts.toArray();
  }

  private void trace(Path path) throws IOException {
    content.moveTo(x(path.start()), y(path.start()));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        content.curveTo(
            x(cubic.control1()),
            y(cubic.control1()),
            x(cubic.control2()),
            y(cubic.control2()),
            x(cubic.end()),
            y(cubic.end()));
      } else {
        content.lineTo(x(curve.end()), y(curve.end()));
      }
    }
  }

  private void box(Box box) throws IOException {
    Point corner = new Point(box.minX(), box.minY());
    content.addRect(x(corner), y(corner), points(box.width()), points(box.height()));
  }

  private void enter(Layer layer) throws IOException {
    if (!layer.equals(open)) {
      close();
      content.beginMarkedContent(COSName.OC, layers.of(layer));
      open = layer;
    }
  }

  private void close() throws IOException {
    if (open != null) {
      content.endMarkedContent();
      open = null;
    }
  }

  private void save() throws IOException {
    content.saveGraphicsState();
  }

  private void restore() throws IOException {
    content.restoreGraphicsState();
    pen = null;
    fill = null;
  }

  private void use(Pen wanted) throws IOException {
    if (wanted.equals(pen)) {
      return;
    }
    content.setLineWidth(points(wanted.width()));
    float[] dashes = new float[wanted.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = points(wanted.dashes().get(i));
    }
    content.setLineDashPattern(dashes, 0);
    Ink ink = wanted.ink();
    content.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
    pen = wanted;
  }

  private void use(Ink wanted) throws IOException {
    if (!wanted.equals(fill)) {
      content.setNonStrokingColor(wanted.red() / 255f, wanted.green() / 255f, wanted.blue() / 255f);
      fill = wanted;
    }
  }

  private float x(Point point) {
    return points(point.x() - frame.minX());
  }

  private float y(Point point) {
    return points(point.y() - frame.minY());
  }

  private static float points(double mm) {
    return (float) (mm * Face.POINTS_PER_MM);
  }
}
