package org.hemwright.paper.png;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Picture;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.GlyphShape;

/** Writes one sheet as one PNG picture. */
public final class PngWriter {
  private static final String FORMAT = "javax_imageio_png_1.0";

  /** No picture has more pixels than this. */
  private static final double MOST_PIXELS = 120e6;

  private final Graphics2D graphics;

  private PngWriter(Graphics2D graphics) {
    this.graphics = graphics;
  }

  /**
   * The picture's bytes.
   *
   * @param perMm pixels to a millimetre, more than 0; 11.811 is 300 to the inch
   */
  public static byte[] write(Sheet sheet, double perMm) {
    Box frame = sheet.frame();
    double width = Math.ceil(frame.width() * perMm);
    double height = Math.ceil(frame.height() * perMm);
    if (!(perMm > 0) || width * height > MOST_PIXELS) {
      throw new IllegalArgumentException(
          "a picture of %.0f × %.0f pixels is too large to draw; ask for fewer to a millimetre"
              .formatted(width, height));
    }
    BufferedImage image = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.transform(
        new AffineTransform(perMm, 0, 0, -perMm, -frame.minX() * perMm, frame.maxY() * perMm));
    new PngWriter(graphics).draw(sheet.items());
    graphics.dispose();
    return encoded(image, perMm);
  }

  /** Draws items in millimetres, y up, with whatever transform the graphics have. */
  static void draw(Graphics2D graphics, List<Item> items) {
    new PngWriter(graphics).draw(items);
  }

  private void draw(List<Item> items) {
    for (Item item : items) {
      if (item instanceof Clip clip) {
        Shape before = graphics.getClip();
        Box box = clip.window();
        graphics.clip(new Rectangle2D.Double(box.minX(), box.minY(), box.width(), box.height()));
        draw(clip.items());
        graphics.setClip(before);
      } else if (item instanceof Inked inked) {
        put(inked);
      }
    }
  }

  private void put(Inked item) {
    if (item instanceof Stroke stroke) {
      use(stroke.pen());
      graphics.draw(shape(stroke.path()));
    } else if (item instanceof Fill fill) {
      graphics.setColor(colour(fill.ink()));
      graphics.fill(shape(fill.outline().path()));
    } else if (item instanceof Hatch hatch) {
      Shape before = graphics.getClip();
      graphics.clip(shape(hatch.outline().path()));
      use(hatch.pen());
      for (Line line : hatch.lines()) {
        graphics.draw(
            new Line2D.Double(line.start().x(), line.start().y(), line.end().x(), line.end().y()));
      }
      graphics.setClip(before);
    } else if (item instanceof Words words) {
      AffineTransform place = AffineTransform.getTranslateInstance(words.at().x(), words.at().y());
      place.rotate(StrictMath.cos(words.angle()), StrictMath.sin(words.angle()));
      graphics.setColor(colour(words.ink()));
      graphics.fill(place.createTransformedShape(GlyphShape.of(words.line())));
    } else if (item instanceof Picture picture) {
      Box box = picture.box();
      BufferedImage image = image(picture);
      graphics.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
      graphics.drawImage(
          image,
          new AffineTransform(
              box.width() / image.getWidth(),
              0,
              0,
              -box.height() / image.getHeight(),
              box.minX(),
              box.maxY()),
          null);
    }
  }

  private static BufferedImage image(Picture picture) {
    try {
      return ImageIO.read(new ByteArrayInputStream(picture.raster().png()));
    } catch (IOException impossible) {
      throw new UncheckedIOException("a raster holds a PNG file", impossible);
    }
  }

  private void use(Pen pen) {
    graphics.setColor(colour(pen.ink()));
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pen.dashes().get(i).floatValue();
    }
    graphics.setStroke(
        new BasicStroke(
            (float) pen.width(),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            (float) Stroke.MITRE_LIMIT,
            dashes.length == 0 ? null : dashes,
            0));
  }

  private static Color colour(Ink ink) {
    return new Color(ink.red(), ink.green(), ink.blue());
  }

  private static Shape shape(Path path) {
    Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO);
    shape.moveTo(path.start().x(), path.start().y());
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        shape.curveTo(
            cubic.control1().x(),
            cubic.control1().y(),
            cubic.control2().x(),
            cubic.control2().y(),
            cubic.end().x(),
            cubic.end().y());
      } else {
        shape.lineTo(curve.end().x(), curve.end().y());
      }
    }
    if (path.isClosed()) {
      shape.closePath();
    }
    return shape;
  }

  private static byte[] encoded(BufferedImage image, double perMm) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(
              ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
      IIOMetadataNode root = new IIOMetadataNode(FORMAT);
      IIOMetadataNode resolution = new IIOMetadataNode("pHYs");
      String perMetre = Long.toString(Math.round(perMm * 1000));
      resolution.setAttribute("pixelsPerUnitXAxis", perMetre);
      resolution.setAttribute("pixelsPerUnitYAxis", perMetre);
      resolution.setAttribute("unitSpecifier", "meter");
      root.appendChild(resolution);
      metadata.mergeTree(FORMAT, root);
      writer.setOutput(out);
      writer.write(metadata, new IIOImage(image, null, metadata), null);
      out.flush();
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
  }
}
