package org.hemwright.exchange.drawing;

import org.hemwright.geometry.Point;

/** x' = a·x + c·y + e, y' = b·x + d·y + f, as the transforms of SVG are written. */
record Affine(double a, double b, double c, double d, double e, double f) {
  static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  static Affine move(double dx, double dy) {
    return new Affine(1, 0, 0, 1, dx, dy);
  }

  static Affine scale(double sx, double sy) {
    return new Affine(sx, 0, 0, sy, 0, 0);
  }

  static Affine turn(double degrees) {
    double angle = StrictMath.toRadians(degrees);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  /** This after another: what is drawn inside the other is then carried by this. */
  Affine times(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  Point apply(double x, double y) {
    return new Point(a * x + c * y + e, b * x + d * y + f);
  }

  /** How much longer it makes the step that it makes longest, or a little more. */
  double stretch() {
    return Math.sqrt(a * a + b * b + c * c + d * d);
  }
}
