package org.hemwright.paper.png;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.hemwright.paper.sheet.Raster;

/**
 * Reads the house's logo: PNG, JPEG or SVG, known by what the file holds. A drawing is painted in
 * pixels fine enough for print; it can fetch nothing from elsewhere.
 */
public final class LogoReader {
  /** A logo of more pixels is no logo. */
  private static final long MOST_PIXELS = 40_000_000;

  /** The longer side of a drawing in pixels: 60 mm at 600 to the inch. */
  private static final double LONGEST = 1417;

  private static final int FIRST_BYTES = 2000;

  private LogoReader() {}

  /** The logo; absent where the bytes hold no picture, or far too large a one. */
  public static Optional<Raster> read(byte[] bytes) {
    try {
      BufferedImage image = isDrawing(bytes) ? painted(bytes) : pixels(bytes);
      if (image == null) {
        return Optional.empty();
      }
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      ImageIO.write(image, "png", png);
      return Optional.of(new Raster(image.getWidth(), image.getHeight(), png.toByteArray()));
    } catch (IOException | RuntimeException unreadable) {
      return Optional.empty();
    }
  }

  private static boolean isDrawing(byte[] bytes) {
    int length = Math.min(bytes.length, FIRST_BYTES);
    return new String(bytes, 0, length, StandardCharsets.UTF_8).contains("<svg");
  }

  private static BufferedImage painted(byte[] bytes) throws IOException {
    SVGDocument drawing =
        new SVGLoader().load(new ByteArrayInputStream(bytes), null, LoaderContext.createDefault());
    if (drawing == null) {
      throw new IOException("no drawing");
    }
    FloatSize size = drawing.size();
    double scale = LONGEST / Math.max(size.width, size.height);
    int width = (int) Math.max(1, Math.round(size.width * scale));
    int height = (int) Math.max(1, Math.round(size.height * scale));
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    drawing.render((Component) null, graphics, new ViewBox(0, 0, width, height));
    graphics.dispose();
    return image;
  }

  /** Looks at the size before it takes the room. */
  private static BufferedImage pixels(byte[] bytes) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new IOException("no picture");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
          throw new IOException("too many pixels");
        }
        return reader.read(0);
      } finally {
        reader.dispose();
      }
    }
  }
}
