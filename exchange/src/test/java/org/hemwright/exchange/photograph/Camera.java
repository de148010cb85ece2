package org.hemwright.exchange.photograph;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.ReferenceCard;

/**
 * Takes photographs of a table with paper pieces and the card on it, with known truth: a camera
 * with a lens of its own, held at a slant, in uneven light, with noise, stored as JPEG.
 *
 * @param width of the picture (pixels)
 * @param height of the picture (pixels)
 * @param distance from the table's middle (mm)
 * @param slant off the vertical (radians)
 * @param turn of the camera about its own view (radians)
 * @param bend of the lens: by this share of its place a point at the picture's corner moves inward
 * @param shade how much darker the light is at one end of the table, 0 to 1
 * @param noise standard deviation of the stored values
 */
record Camera(
    int width,
    int height,
    double distance,
    double slant,
    double turn,
    double bend,
    double shade,
    double noise) {
  private static final double TABLE = 1600;
  private static final double FINE = 2.5;

  /** What lies on the table: in linear light, 0 to 1. */
  record Laid(Path outline, double light) {}

  static Laid sheet(double x0, double y0, double x1, double y1, double light) {
    return new Laid(
        Path.polyline(
            List.of(
                new Point(x0, y0),
                new Point(x1, y0),
                new Point(x1, y1),
                new Point(x0, y1),
                new Point(x0, y0))),
        light);
  }

  /** The card, on a white sheet of A4, lying where a motion puts its frame. */
  static List<Laid> card(Motion motion) {
    return card(motion, 1);
  }

  /** The same on a sheet cut smaller, its margin so many times as wide. */
  static List<Laid> card(Motion motion, double margin) {
    List<Laid> laid = new java.util.ArrayList<>();
    double beside = 20 * margin;
    double above = 33.5 * margin;
    laid.add(
        new Laid(
            sheet(-beside, -above, 170 + beside, 230 + above, 0.85).outline().moved(motion), 0.85));
    for (List<Point> square : ReferenceCard.squares()) {
      List<Point> round = new java.util.ArrayList<>(square);
      round.add(square.get(0));
      laid.add(new Laid(Path.polyline(round).moved(motion), 0.03));
    }
    return laid;
  }

  byte[] jpeg(double ground, List<Laid> laid, long seed) {
    BufferedImage table = table(ground, laid);
    byte[] light = ((DataBufferByte) table.getRaster().getDataBuffer()).getData();
    BufferedImage photograph = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(seed);
    int side = table.getWidth();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double sum = 0;
        for (int sy = 0; sy < 3; sy++) {
          for (int sx = 0; sx < 3; sx++) {
            // The lens smears a point over a pixel and a half.
            Point place = place(x + 0.5 + (sx - 1) * 0.5, y + 0.5 + (sy - 1) * 0.5);
            sum += brightness(light, side, place) * (1 - shade * (place.x() / TABLE + 0.5));
          }
        }
        double stored = 255 * encoded(sum / 9) + noise * random.nextGaussian();
        int value = (int) Math.max(0, Math.min(255, Math.round(stored)));
        photograph.setRGB(x, y, value << 16 | value << 8 | value);
      }
    }
    return stored(photograph);
  }

  /** The place on the table that a place in the picture shows; the table's middle is the origin. */
  Point place(double px, double py) {
    double focal = 1.15 * width;
    double cx = (px - width / 2.0) / focal;
    double cy = (height / 2.0 - py) / focal;
    double corner = (width / 2.0 * (width / 2.0) + height / 2.0 * (height / 2.0)) / (focal * focal);
    double stretched = 1 + bend * (cx * cx + cy * cy) / corner;
    double u = cx * stretched;
    double v = cy * stretched;
    double rx = StrictMath.cos(turn) * u - StrictMath.sin(turn) * v;
    double ry = StrictMath.sin(turn) * u + StrictMath.cos(turn) * v;
    // The camera stands back by the slant and looks at the table's middle.
    double s = StrictMath.sin(slant);
    double c = StrictMath.cos(slant);
    double dy = ry * c + s;
    double dz = ry * s - c;
    double reach = -distance * c / dz;
    return new Point(reach * rx, -distance * s + reach * dy);
  }

  private static double brightness(byte[] light, int side, Point place) {
    double x = (place.x() + TABLE / 2) * FINE - 0.5;
    double y = (TABLE / 2 - place.y()) * FINE - 0.5;
    int column = (int) Math.max(0, Math.min(side - 2, Math.floor(x)));
    int row = (int) Math.max(0, Math.min(side - 2, Math.floor(y)));
    double u = Math.max(0, Math.min(1, x - column));
    double v = Math.max(0, Math.min(1, y - row));
    int at = row * side + column;
    return ((1 - v) * ((1 - u) * (light[at] & 0xff) + u * (light[at + 1] & 0xff))
            + v * ((1 - u) * (light[at + side] & 0xff) + u * (light[at + side + 1] & 0xff)))
        / 255;
  }

  private static BufferedImage table(double ground, List<Laid> laid) {
    int side = (int) (TABLE * FINE);
    BufferedImage table = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    // A grey image's own colours are not linear: the bytes are written through its raster instead.
    byte[] light = ((DataBufferByte) table.getRaster().getDataBuffer()).getData();
    java.util.Arrays.fill(light, (byte) Math.round(255 * ground));
    BufferedImage cover = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
    int[] covered = ((DataBufferInt) cover.getRaster().getDataBuffer()).getData();
    for (Laid each : laid) {
      java.util.Arrays.fill(covered, 0);
      Graphics2D pen = cover.createGraphics();
      pen.setColor(Color.WHITE);
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      pen.fill(shape(each.outline()));
      pen.dispose();
      for (int k = 0; k < light.length; k++) {
        double share = (covered[k] >>> 24) / 255.0;
        if (share > 0) {
          light[k] =
              (byte) Math.round((1 - share) * (light[k] & 0xff) + share * 255 * each.light());
        }
      }
    }
    return table;
  }

  private static Path2D shape(Path path) {
    Path2D shape = new Path2D.Double();
    shape.moveTo(x(path.start()), y(path.start()));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        shape.curveTo(
            x(cubic.control1()),
            y(cubic.control1()),
            x(cubic.control2()),
            y(cubic.control2()),
            x(cubic.end()),
            y(cubic.end()));
      } else {
        shape.lineTo(x(curve.end()), y(curve.end()));
      }
    }
    shape.closePath();
    return shape;
  }

  private static double x(Point point) {
    return (point.x() + TABLE / 2) * FINE;
  }

  private static double y(Point point) {
    return (TABLE / 2 - point.y()) * FINE;
  }

  private static double encoded(double light) {
    double safe = Math.max(0, Math.min(1, light));
    return safe <= 0.0031308 ? 12.92 * safe : 1.055 * StrictMath.pow(safe, 1 / 2.4) - 0.055;
  }

  private static byte[] stored(BufferedImage photograph) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.92f);
      writer.write(null, new IIOImage(photograph, null, null), how);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
