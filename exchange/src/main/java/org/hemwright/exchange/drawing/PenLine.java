package org.hemwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * A pen that draws in the units of an element and leaves lines in millimetres, y upward. Each time
 * it is lifted a line ends.
 */
final class PenLine {
  private static final double THIRD = 2.0 / 3;

  private final Affine toMm;
  private final List<Path> done = new ArrayList<>();
  private List<Curve> now = new ArrayList<>();
  private double startX;
  private double startY;
  private double x;
  private double y;
  private int count;

  PenLine(Affine toMm) {
    this.toMm = toMm;
  }

  double x() {
    return x;
  }

  double y() {
    return y;
  }

  double startX() {
    return startX;
  }

  double startY() {
    return startY;
  }

  /** How many curves were drawn. */
  int count() {
    return count;
  }

  void moveTo(double toX, double toY) {
    lift();
    x = toX;
    y = toY;
    startX = toX;
    startY = toY;
  }

  void lineTo(double toX, double toY) {
    Point from = mm(x, y);
    Point to = mm(toX, toY);
    if (from.distanceTo(to) > Tolerance.NO_LENGTH) {
      now.add(new Line(from, to));
    }
    x = toX;
    y = toY;
    count++;
  }

  void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
    Point from = mm(x, y);
    Point c1 = mm(x1, y1);
    Point c2 = mm(x2, y2);
    Point to = mm(toX, toY);
    if (from.distanceTo(c1) + c1.distanceTo(c2) + c2.distanceTo(to) > Tolerance.NO_LENGTH) {
      now.add(new Cubic(from, c1, c2, to));
    }
    x = toX;
    y = toY;
    count++;
  }

  /** A quadratic curve, which a cubic gives exactly. */
  void quadraticTo(double cx, double cy, double toX, double toY) {
    cubicTo(
        x + THIRD * (cx - x),
        y + THIRD * (cy - y),
        toX + THIRD * (cx - toX),
        toY + THIRD * (cy - toY),
        toX,
        toY);
  }

  /**
   * An elliptical arc to a point, as SVG 2 lays down in its appendix on arcs (B.2.4 and B.2.5):
   * radii too small are made large enough.
   */
  void arcTo(
      double rx, double ry, double turned, boolean large, boolean sweep, double toX, double toY) {
    if (rx == 0 || ry == 0) {
      lineTo(toX, toY);
      return;
    }
    if (x == toX && y == toY) {
      return;
    }
    double a = Math.abs(rx);
    double b = Math.abs(ry);
    double angle = StrictMath.toRadians(turned);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double halfX = (x - toX) / 2;
    double halfY = (y - toY) / 2;
    double px = cos * halfX + sin * halfY;
    double py = -sin * halfX + cos * halfY;
    double over = px * px / (a * a) + py * py / (b * b);
    if (over > 1) {
      a *= Math.sqrt(over);
      b *= Math.sqrt(over);
    }
    double numerator = a * a * b * b - a * a * py * py - b * b * px * px;
    double factor = Math.sqrt(Math.max(0, numerator) / (a * a * py * py + b * b * px * px));
    if (large == sweep) {
      factor = -factor;
    }
    double cxp = factor * a * py / b;
    double cyp = -factor * b * px / a;
    double cx = cos * cxp - sin * cyp + (x + toX) / 2;
    double cy = sin * cxp + cos * cyp + (y + toY) / 2;
    double from = StrictMath.atan2((py - cyp) / b, (px - cxp) / a);
    double to = StrictMath.atan2((-py - cyp) / b, (-px - cxp) / a);
    double turn = to - from;
    if (sweep && turn < 0) {
      turn += 2 * Math.PI;
    } else if (!sweep && turn > 0) {
      turn -= 2 * Math.PI;
    }
    ellipse(new Affine(a * cos, a * sin, -b * sin, b * cos, cx, cy), from, turn, toX, toY);
  }

  /** A part of the circle of radius 1 carried by a transform, ending at a point to the last bit. */
  void ellipse(Affine circle, double from, double turn, double toX, double toY) {
    int pieces = pieces(toMm.stretch() * circle.stretch(), Math.abs(turn));
    double step = turn / pieces;
    double handle = 4.0 / 3 * StrictMath.tan(step / 4);
    double cos = StrictMath.cos(from);
    double sin = StrictMath.sin(from);
    for (int i = 1; i <= pieces; i++) {
      double nextCos = StrictMath.cos(from + step * i);
      double nextSin = StrictMath.sin(from + step * i);
      Point c1 = circle.apply(cos - handle * sin, sin + handle * cos);
      Point c2 = circle.apply(nextCos + handle * nextSin, nextSin - handle * nextCos);
      Point end = i == pieces ? new Point(toX, toY) : circle.apply(nextCos, nextSin);
      cubicTo(c1.x(), c1.y(), c2.x(), c2.y(), end.x(), end.y());
      cos = nextCos;
      sin = nextSin;
    }
  }

  /** As many cubics as keep an arc of that radius (mm) within the tolerance for arcs. */
  private static int pieces(double radius, double turn) {
    int pieces = Math.max(1, (int) Math.ceil(turn / (Math.PI / 2) - 1e-9));
    while (pieces < 1000) {
      double quarter = turn / pieces / 4;
      double sin = StrictMath.sin(quarter);
      double cos = StrictMath.cos(quarter);
      double strays = radius * 4 / 27 * sin * sin * sin * sin * sin * sin / (cos * cos);
      if (strays <= Tolerance.ARC) {
        break;
      }
      pieces++;
    }
    return pieces;
  }

  void close() {
    if (x != startX || y != startY) {
      lineTo(startX, startY);
    }
    lift();
  }

  private void lift() {
    if (!now.isEmpty()) {
      done.add(Path.of(now));
      now = new ArrayList<>();
    }
  }

  /** The lines drawn so far. */
  List<Path> lines() {
    lift();
    return done;
  }

  private Point mm(double px, double py) {
    return toMm.apply(px, py);
  }
}
