package org.hemwright.geometry;

/** A stretch of a cubic with its own control points. */
final class CubicPiece {
  /** Pieces this short (mm) and flat are not halved further. */
  private static final double SHORT = 0.25;

  private static final double FLAT = Tolerance.SAME_POINT / 8;

  final double from;
  final double to;
  final double size;
  private final double x0;
  private final double y0;
  private final double x1;
  private final double y1;
  private final double x2;
  private final double y2;
  private final double x3;
  private final double y3;

  private CubicPiece(
      double from,
      double to,
      double x0,
      double y0,
      double x1,
      double y1,
      double x2,
      double y2,
      double x3,
      double y3) {
    this.from = from;
    this.to = to;
    this.x0 = x0;
    this.y0 = y0;
    this.x1 = x1;
    this.y1 = y1;
    this.x2 = x2;
    this.y2 = y2;
    this.x3 = x3;
    this.y3 = y3;
    this.size =
        Math.abs(x1 - x0)
            + Math.abs(y1 - y0)
            + Math.abs(x2 - x1)
            + Math.abs(y2 - y1)
            + Math.abs(x3 - x2)
            + Math.abs(y3 - y2);
  }

  static CubicPiece whole(Cubic cubic) {
    return new CubicPiece(
        0,
        1,
        cubic.start().x(),
        cubic.start().y(),
        cubic.control1().x(),
        cubic.control1().y(),
        cubic.control2().x(),
        cubic.control2().y(),
        cubic.end().x(),
        cubic.end().y());
  }

  CubicPiece half(boolean first) {
    double ax = (x0 + x1) / 2;
    double ay = (y0 + y1) / 2;
    double bx = (x1 + x2) / 2;
    double by = (y1 + y2) / 2;
    double cx = (x2 + x3) / 2;
    double cy = (y2 + y3) / 2;
    double dx = (ax + bx) / 2;
    double dy = (ay + by) / 2;
    double ex = (bx + cx) / 2;
    double ey = (by + cy) / 2;
    double mx = (dx + ex) / 2;
    double my = (dy + ey) / 2;
    double middle = (from + to) / 2;
    return first
        ? new CubicPiece(from, middle, x0, y0, ax, ay, dx, dy, mx, my)
        : new CubicPiece(middle, to, mx, my, ex, ey, cx, cy, x3, y3);
  }

  boolean holds(double t) {
    return t >= from - Tolerance.PARAMETER && t <= to + Tolerance.PARAMETER;
  }

  boolean isDone() {
    if (size <= FLAT) {
      return true;
    }
    double cx = x3 - x0;
    double cy = y3 - y0;
    double chord = Math.sqrt(cx * cx + cy * cy);
    double off1 = Math.abs(cx * (y1 - y0) - cy * (x1 - x0));
    double off2 = Math.abs(cx * (y2 - y0) - cy * (x2 - x0));
    return size <= SHORT && Math.max(off1, off2) <= FLAT * chord;
  }

  boolean liesApartFrom(CubicPiece b) {
    double near = Tolerance.SAME_POINT;
    return least(x0, x1, x2, x3) > most(b.x0, b.x1, b.x2, b.x3) + near
        || least(b.x0, b.x1, b.x2, b.x3) > most(x0, x1, x2, x3) + near
        || least(y0, y1, y2, y3) > most(b.y0, b.y1, b.y2, b.y3) + near
        || least(b.y0, b.y1, b.y2, b.y3) > most(y0, y1, y2, y3) + near
        || isStripApartFrom(b)
        || b.isStripApartFrom(this);
  }

  /** Whether the strip round this piece, along its chord, lies to one side of the other. */
  private boolean isStripApartFrom(CubicPiece b) {
    double cx = x3 - x0;
    double cy = y3 - y0;
    double near = Tolerance.SAME_POINT * Math.sqrt(cx * cx + cy * cy);
    double own1 = cx * (y1 - y0) - cy * (x1 - x0);
    double own2 = cx * (y2 - y0) - cy * (x2 - x0);
    double its0 = cx * (b.y0 - y0) - cy * (b.x0 - x0);
    double its1 = cx * (b.y1 - y0) - cy * (b.x1 - x0);
    double its2 = cx * (b.y2 - y0) - cy * (b.x2 - x0);
    double its3 = cx * (b.y3 - y0) - cy * (b.x3 - x0);
    return least(its0, its1, its2, its3) > most(0, own1, own2, 0) + near
        || most(its0, its1, its2, its3) < least(0, own1, own2, 0) - near;
  }

  /** Whether every direction of this piece lies on the same side of every one of the other. */
  boolean crossesOnceAtMost(CubicPiece b) {
    int side = side(x1 - x0, y1 - y0, b, 0);
    side = side == 0 ? 0 : side(x2 - x1, y2 - y1, b, side);
    return side != 0 && side(x3 - x2, y3 - y2, b, side) != 0;
  }

  private static int side(double dx, double dy, CubicPiece b, int before) {
    double first = dx * (b.y1 - b.y0) - dy * (b.x1 - b.x0);
    double second = dx * (b.y2 - b.y1) - dy * (b.x2 - b.x1);
    double third = dx * (b.y3 - b.y2) - dy * (b.x3 - b.x2);
    if (before >= 0 && first > 0 && second > 0 && third > 0) {
      return 1;
    }
    return before <= 0 && first < 0 && second < 0 && third < 0 ? -1 : 0;
  }

  private static double least(double a, double b, double c, double d) {
    return Math.min(Math.min(a, b), Math.min(c, d));
  }

  private static double most(double a, double b, double c, double d) {
    return Math.max(Math.max(a, b), Math.max(c, d));
  }
}
