package org.hemwright.exchange.photograph;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/**
 * A picture to look at on a page, as JPEG: small enough to send, as it is or straightened.
 *
 * @param jpeg the file's bytes
 * @param width of the shown picture (pixels)
 * @param height of the shown picture (pixels)
 */
@SuppressWarnings("ArrayRecordComponent")
public record ShownPicture(byte[] jpeg, int width, int height) {
  /** The longer side is no longer than this (pixels). */
  private static final int LONGEST = 1800;

  /** The picture as it is, made smaller. */
  public static ShownPicture of(Picture picture) {
    double shrink = Math.max(1, Math.max(picture.width(), picture.height()) / (double) LONGEST);
    int width = (int) Math.max(1, picture.width() / shrink);
    int height = (int) Math.max(1, picture.height() / shrink);
    return drawn(width, height, (x, y) -> mean(picture, x * shrink, y * shrink, shrink));
  }

  /**
   * What lies in a box of the plane, straightened.
   *
   * @param box in true size (mm)
   */
  public static ShownPicture of(Picture picture, Straightening straightening, Box box) {
    double scale = LONGEST / Math.max(box.width(), box.height());
    int width = (int) Math.max(1, Math.ceil(box.width() * scale));
    int height = (int) Math.max(1, Math.ceil(box.height() * scale));
    double step = Math.max(1, straightening.pixelsPerMm(box.centre()) / scale);
    return drawn(
        width,
        height,
        (x, y) -> {
          Point place = new Point(box.minX() + x / scale, box.maxY() - y / scale);
          Pixel seen = straightening.pixel(place);
          return mean(picture, seen.x() - step / 2, seen.y() - step / 2, step);
        });
  }

  /** The colour of a place, counted from the upper left corner of what is shown. */
  private interface Colours {
    int at(double x, double y);
  }

  private static ShownPicture drawn(int width, int height, Colours colours) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, colours.at(x, y));
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpg", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return new ShownPicture(bytes.toByteArray(), width, height);
  }

  /** The mean of some pixels in a square; white where the picture ends. */
  private static int mean(Picture picture, double x, double y, double side) {
    int count = (int) Math.max(1, Math.min(4, Math.round(side)));
    int red = 0;
    int green = 0;
    int blue = 0;
    for (int j = 0; j < count; j++) {
      for (int i = 0; i < count; i++) {
        int column = (int) Math.floor(x + (i + 0.5) * side / count);
        int row = (int) Math.floor(y + (j + 0.5) * side / count);
        boolean within =
            column >= 0 && row >= 0 && column < picture.width() && row < picture.height();
        int colour = within ? picture.colour(column, row) : 0xffffff;
        red += (colour >> 16) & 0xff;
        green += (colour >> 8) & 0xff;
        blue += colour & 0xff;
      }
    }
    int all = count * count;
    return (red / all) << 16 | (green / all) << 8 | (blue / all);
  }
}
