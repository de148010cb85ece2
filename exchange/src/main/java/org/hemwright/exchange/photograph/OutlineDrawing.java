package org.hemwright.exchange.photograph;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * Named lines as a drawing in SVG, in true size (mm), so that they are read again as any traced
 * drawing, or opened in a drawing program first.
 */
public final class OutlineDrawing {
  /** Blank paper round the lines (mm). */
  private static final double MARGIN = 10;

  private OutlineDrawing() {}

  /**
   * A line with its name.
   *
   * @param name letters, digits and blanks
   */
  public record Named(String name, Path path) {
    public Named {
      if (!name.matches("[\\p{L}\\p{N} _-]+")) {
        throw new IllegalArgumentException("a line's name is of letters, digits and blanks");
      }
    }
  }

  /**
   * The bytes of the file.
   *
   * @param lines one at least; those of one name stand together
   */
  public static byte[] svg(List<Named> lines) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Named line : lines) {
      Box box = line.path().bounds();
      left = Math.min(left, box.minX());
      right = Math.max(right, box.maxX());
      bottom = Math.min(bottom, box.minY());
      top = Math.max(top, box.maxY());
    }
    double x = Math.floor(left - MARGIN);
    double y = Math.ceil(top + MARGIN);
    double width = Math.ceil(right + MARGIN - x);
    double height = Math.ceil(y - bottom + MARGIN);
    StringBuilder svg = new StringBuilder();
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(number(width))
        .append("mm\" height=\"")
        .append(number(height))
        .append("mm\" viewBox=\"0 0 ")
        .append(number(width))
        .append(' ')
        .append(number(height))
        .append("\">\n");
    String group = "";
    for (Named line : lines) {
      if (!line.name().equals(group)) {
        svg.append(group.isEmpty() ? "" : "  </g>\n");
        svg.append("  <g id=\"").append(line.name()).append("\">\n");
        group = line.name();
      }
      svg.append("    <path fill=\"none\" stroke=\"black\" stroke-width=\"0.3\" d=\"")
          .append(data(line.path(), x, y))
          .append("\"/>\n");
    }
    svg.append(group.isEmpty() ? "" : "  </g>\n");
    return svg.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String data(Path path, double x, double y) {
    StringBuilder data = new StringBuilder("M ").append(at(path.start(), x, y));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        data.append(" C ")
            .append(at(cubic.control1(), x, y))
            .append(' ')
            .append(at(cubic.control2(), x, y))
            .append(' ')
            .append(at(cubic.end(), x, y));
      } else {
        data.append(" L ").append(at(curve.end(), x, y));
      }
    }
    return path.isClosed() ? data.append(" Z").toString() : data.toString();
  }

  private static String at(Point point, double x, double y) {
    return number(point.x() - x) + "," + number(y - point.y());
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(4, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
