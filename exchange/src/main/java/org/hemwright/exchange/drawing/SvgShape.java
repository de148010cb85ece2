package org.hemwright.exchange.drawing;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * One of the basic shapes or a path (SVG 2, chapters 9 and 10), as it is drawn.
 *
 * @param file the drawing, as problems name it
 * @param view what its percentages are measured by
 */
record SvgShape(String file, SvgElement element, Viewport view, StyleRules styles) {
  private static final Set<String> KINDS =
      Set.of("path", "line", "polyline", "polygon", "rect", "circle", "ellipse");

  /** Whether an element is a shape that is read. */
  static boolean is(SvgElement element) {
    return KINDS.contains(element.kind());
  }

  /**
   * Draws it.
   *
   * @param most curves of a path
   * @return whether all of it could be read
   */
  boolean draw(PenLine pen, int most) {
    switch (element.kind()) {
      case "path" -> {
        return path(pen, most);
      }
      case "polyline", "polygon" -> {
        return points(pen);
      }
      case "line" -> {
        pen.moveTo(length("x1", view.width(), 0), length("y1", view.height(), 0));
        pen.lineTo(length("x2", view.width(), 0), length("y2", view.height(), 0));
      }
      case "rect" -> rectangle(pen);
      default -> ellipse(pen);
    }
    return true;
  }

  private boolean path(PenLine pen, int most) {
    String data = styles.property(element, "d").orElse("");
    if (data.startsWith("path(")) {
      data = data.replaceAll("^path\\(\\s*[\"']?|[\"']?\\s*\\)$", "");
    }
    return data.equals("none") || PathText.draw(data, pen, most);
  }

  private boolean points(PenLine pen) {
    SvgNumbers numbers = new SvgNumbers(element.attribute("points", ""));
    boolean first = true;
    while (!numbers.atEnd()) {
      OptionalDouble x = numbers.number();
      OptionalDouble y = numbers.number();
      if (x.isEmpty() || y.isEmpty()) {
        return false;
      }
      if (first) {
        pen.moveTo(x.getAsDouble(), y.getAsDouble());
      } else {
        pen.lineTo(x.getAsDouble(), y.getAsDouble());
      }
      first = false;
    }
    if (element.kind().equals("polygon") && !first) {
      pen.close();
    }
    return true;
  }

  /** A rectangle, its corners rounded as far as it says (SVG 2, 10.2). */
  private void rectangle(PenLine pen) {
    double x = length("x", view.width(), 0);
    double y = length("y", view.height(), 0);
    double width = length("width", view.width(), 0);
    double height = length("height", view.height(), 0);
    if (!(width > 0 && height > 0)) {
      return;
    }
    double rx = length("rx", view.width(), -1);
    double ry = length("ry", view.height(), -1);
    rx = Math.min(rx < 0 ? Math.max(0, ry) : rx, width / 2);
    ry = Math.min(ry < 0 ? rx : ry, height / 2);
    pen.moveTo(x + rx, y);
    pen.lineTo(x + width - rx, y);
    pen.arcTo(rx, ry, 0, false, true, x + width, y + ry);
    pen.lineTo(x + width, y + height - ry);
    pen.arcTo(rx, ry, 0, false, true, x + width - rx, y + height);
    pen.lineTo(x + rx, y + height);
    pen.arcTo(rx, ry, 0, false, true, x, y + height - ry);
    pen.lineTo(x, y + ry);
    pen.arcTo(rx, ry, 0, false, true, x + rx, y);
    pen.close();
  }

  private void ellipse(PenLine pen) {
    boolean circle = element.kind().equals("circle");
    double cx = length("cx", view.width(), 0);
    double cy = length("cy", view.height(), 0);
    double rx = circle ? length("r", view.diagonal(), 0) : length("rx", view.width(), 0);
    double ry = circle ? rx : length("ry", view.height(), 0);
    if (!(rx > 0 && ry > 0)) {
      return;
    }
    pen.moveTo(cx + rx, cy);
    pen.ellipse(new Affine(rx, 0, 0, ry, cx, cy), 0, 2 * Math.PI, cx + rx, cy);
    pen.close();
  }

  private double length(String name, double whole, double otherwise) {
    return SvgLength.of(file, element, name, whole, otherwise);
  }
}
