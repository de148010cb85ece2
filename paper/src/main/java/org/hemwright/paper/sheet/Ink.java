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

  /** Relative luminance, 0 black to 1 white (WCAG 2.2). */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /** The contrast with another ink, 1 to 21 (WCAG 2.2). */
  public double contrast(Ink other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
  }
}
