package org.hemwright.paper.sheet;

import java.util.Locale;

/**
 * A colour on paper, in the sRGB space (IEC 61966-2-1).
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {
  public Ink {
    if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
      throw new IllegalArgumentException(
          "an ink's parts run from 0 to 255: " + red + ", " + green + ", " + blue);
    }
  }

  /** The ink laid on white paper at a share of its strength, 0 to 1. */
  public Ink tint(double share) {
    return new Ink(paler(red, share), paler(green, share), paler(blue, share));
  }

  private static int paler(int part, double share) {
    return (int) Math.round(255 - (255 - part) * share);
  }

  /** {@code #rrggbb}. */
  public String hex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }
}
