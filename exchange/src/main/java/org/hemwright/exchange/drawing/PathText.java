package org.hemwright.exchange.drawing;

import java.util.OptionalDouble;

/** Reads path data (SVG 2, 9.3): every command, absolute and relative, with all shorthand. */
final class PathText {
  private final SvgNumbers numbers;
  private final PenLine pen;
  private final int most;

  /** The last control point, for the shorthand curves, which mirror it. */
  private double lastX;

  private double lastY;
  private char lastKind;

  private PathText(String text, PenLine pen, int most) {
    this.numbers = new SvgNumbers(text);
    this.pen = pen;
    this.most = most;
  }

  /**
   * Draws path data with a pen.
   *
   * @param most how many curves may be drawn
   * @return whether all of it could be read; what stands before the slip is drawn
   */
  static boolean draw(String text, PenLine pen, int most) {
    return new PathText(text, pen, most).draw();
  }

  private boolean draw() {
    boolean first = true;
    while (!numbers.atEnd()) {
      char command = numbers.letter();
      char kind = Character.toUpperCase(command);
      if (command == 0 || "MLHVCSQTAZ".indexOf(kind) < 0 || (first && kind != 'M')) {
        return false;
      }
      if (kind == 'Z') {
        pen.close();
        pen.moveTo(pen.startX(), pen.startY());
        lastKind = 'Z';
        continue;
      }
      boolean relative = command != kind;
      boolean again = false;
      do {
        if (pen.count() > most || !one(again && kind == 'M' ? 'L' : kind, relative)) {
          return false;
        }
        again = true;
      } while (numbers.hasNumber());
      first = false;
    }
    return true;
  }

  private boolean one(char kind, boolean relative) {
    double baseX = relative ? pen.x() : 0;
    double baseY = relative ? pen.y() : 0;
    switch (kind) {
      case 'M', 'L' -> {
        double[] n = take(2);
        if (n.length == 0) {
          return false;
        }
        if (kind == 'M') {
          pen.moveTo(baseX + n[0], baseY + n[1]);
        } else {
          pen.lineTo(baseX + n[0], baseY + n[1]);
        }
      }
      case 'H', 'V' -> {
        double[] n = take(1);
        if (n.length == 0) {
          return false;
        }
        pen.lineTo(kind == 'H' ? baseX + n[0] : pen.x(), kind == 'V' ? baseY + n[0] : pen.y());
      }
      case 'C' -> {
        double[] n = take(6);
        if (n.length == 0) {
          return false;
        }
        cubic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3], baseX + n[4], baseY + n[5]);
      }
      case 'S' -> {
        double[] n = take(4);
        if (n.length == 0) {
          return false;
        }
        boolean smooth = lastKind == 'C' || lastKind == 'S';
        cubic(
            smooth ? 2 * pen.x() - lastX : pen.x(),
            smooth ? 2 * pen.y() - lastY : pen.y(),
            baseX + n[0],
            baseY + n[1],
            baseX + n[2],
            baseY + n[3]);
      }
      case 'Q' -> {
        double[] n = take(4);
        if (n.length == 0) {
          return false;
        }
        quadratic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3]);
      }
      case 'T' -> {
        double[] n = take(2);
        if (n.length == 0) {
          return false;
        }
        boolean smooth = lastKind == 'Q' || lastKind == 'T';
        quadratic(
            smooth ? 2 * pen.x() - lastX : pen.x(),
            smooth ? 2 * pen.y() - lastY : pen.y(),
            baseX + n[0],
            baseY + n[1]);
      }
      default -> {
        return arc(baseX, baseY);
      }
    }
    lastKind = kind;
    return true;
  }

  private boolean arc(double baseX, double baseY) {
    double[] radii = take(3);
    OptionalDouble large = numbers.flag();
    OptionalDouble sweep = numbers.flag();
    double[] to = take(2);
    if (radii.length == 0 || large.isEmpty() || sweep.isEmpty() || to.length == 0) {
      return false;
    }
    pen.arcTo(
        radii[0],
        radii[1],
        radii[2],
        large.getAsDouble() != 0,
        sweep.getAsDouble() != 0,
        baseX + to[0],
        baseY + to[1]);
    lastKind = 'A';
    return true;
  }

  private void cubic(double x1, double y1, double x2, double y2, double x, double y) {
    pen.cubicTo(x1, y1, x2, y2, x, y);
    lastX = x2;
    lastY = y2;
  }

  private void quadratic(double cx, double cy, double x, double y) {
    pen.quadraticTo(cx, cy, x, y);
    lastX = cx;
    lastY = cy;
  }

  private double[] take(int count) {
    double[] taken = new double[count];
    for (int i = 0; i < count; i++) {
      OptionalDouble number = numbers.number();
      if (number.isEmpty()) {
        return new double[0];
      }
      taken[i] = number.getAsDouble();
    }
    return taken;
  }
}
