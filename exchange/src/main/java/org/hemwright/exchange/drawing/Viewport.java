package org.hemwright.exchange.drawing;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What lengths in percent are measured by, and how a view box is brought into it (SVG 2, 8.2).
 *
 * @param width in pixels of its own
 * @param height in pixels of its own
 */
record Viewport(double width, double height) {
  /** What a length that is neither across nor down is measured by. */
  double diagonal() {
    return Math.sqrt((width * width + height * height) / 2);
  }

  /** The four numbers of an element's view box; absent where it has none, or not four. */
  static Optional<double[]> viewBox(SvgElement element) {
    Optional<String> text = element.attribute("viewBox");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    SvgNumbers numbers = new SvgNumbers(text.get());
    double[] box = new double[4];
    for (int i = 0; i < 4; i++) {
      OptionalDouble number = numbers.number();
      if (number.isEmpty()) {
        return Optional.empty();
      }
      box[i] = number.getAsDouble();
    }
    return Optional.of(box);
  }

  /** A view box brought into its viewport (SVG 2, 8.2). */
  static Affine fitted(double[] box, double width, double height, String preserve) {
    double sx = width / box[2];
    double sy = height / box[3];
    if (!preserve.startsWith("none")) {
      boolean slice = preserve.endsWith("slice");
      sx = slice ? Math.max(sx, sy) : Math.min(sx, sy);
      sy = sx;
    }
    double spareX = width - box[2] * sx;
    double spareY = height - box[3] * sy;
    double alongX = preserve.contains("xMin") ? 0 : preserve.contains("xMax") ? 1 : 0.5;
    double alongY = preserve.contains("YMin") ? 0 : preserve.contains("YMax") ? 1 : 0.5;
    return new Affine(sx, 0, 0, sy, spareX * alongX - box[0] * sx, spareY * alongY - box[1] * sy);
  }
}
