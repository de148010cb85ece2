package org.hemwright.exchange.photograph;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * A picture, upright, as its viewer shows it.
 *
 * <p>Brightness is given in linear light: a pixel half of which is paper is then half as bright as
 * paper, which the stored numbers are not. They are taken for sRGB (IEC 61966-2-1), as cameras and
 * scanners write.
 */
public final class Picture {
  private static final float[] LINEAR = linear();

  private final int width;
  private final int height;
  private final int[] pixels;

  private Picture(int width, int height, int[] pixels) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  /** A copy of an image, by red, green and blue. */
  public static Picture of(BufferedImage image) {
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    var pen = plain.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, image.getWidth(), image.getHeight());
    pen.drawImage(image, 0, 0, null);
    pen.dispose();
    return new Picture(
        image.getWidth(),
        image.getHeight(),
        ((DataBufferInt) plain.getRaster().getDataBuffer()).getData());
  }

  /** How wide it is (pixels). */
  public int width() {
    return width;
  }

  /** How high it is (pixels). */
  public int height() {
    return height;
  }

  /** The stored colour of a pixel, 0xRRGGBB. */
  public int colour(int x, int y) {
    return pixels[y * width + x] & 0xffffff;
  }

  /** What is looked at in a pixel, from 0 to 1. */
  enum Look {
    /** How bright it is (the luminance of ITU-R BT.709). */
    LIGHT,
    RED,
    GREEN,
    BLUE,
    /** How far it is from grey: paper on a coloured cloth that is as bright as paper. */
    COLOUR;

    float of(int colour) {
      float red = LINEAR[(colour >> 16) & 0xff];
      float green = LINEAR[(colour >> 8) & 0xff];
      float blue = LINEAR[colour & 0xff];
      return switch (this) {
        case LIGHT -> 0.2126f * red + 0.7152f * green + 0.0722f * blue;
        case RED -> red;
        case GREEN -> green;
        case BLUE -> blue;
        case COLOUR -> Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
      };
    }
  }

  private static float[] linear() {
    float[] linear = new float[256];
    for (int value = 0; value < 256; value++) {
      double share = value / 255.0;
      linear[value] =
          (float) (share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4));
    }
    return linear;
  }
}
