package org.hemwright.paper.cutting;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/** A straight line on a figure, from one point to another. */
record StraightLine(Point from, Point to) {
  /** Whether any of it lies in a box. */
  boolean meets(Box box) {
    if (!isNear(from, to, box)) {
      return false;
    }
    double enters = 0;
    double leaves = 1;
    double[] starts = {from.x(), from.y()};
    double[] steps = {to.x() - from.x(), to.y() - from.y()};
    double[] lows = {box.minX(), box.minY()};
    double[] highs = {box.maxX(), box.maxY()};
    for (int way = 0; way < 2; way++) {
      if (steps[way] == 0) {
        if (starts[way] < lows[way] || starts[way] > highs[way]) {
          return false;
        }
        continue;
      }
      double one = (lows[way] - starts[way]) / steps[way];
      double other = (highs[way] - starts[way]) / steps[way];
      enters = Math.max(enters, Math.min(one, other));
      leaves = Math.min(leaves, Math.max(one, other));
    }
    return enters <= leaves;
  }

  /** Whether the box round two points meets another; if not, no line between them does. */
  static boolean isNear(Point one, Point other, Box box) {
    return Math.max(one.x(), other.x()) >= box.minX()
        && Math.min(one.x(), other.x()) <= box.maxX()
        && Math.max(one.y(), other.y()) >= box.minY()
        && Math.min(one.y(), other.y()) <= box.maxY();
  }

  /** Whether it crosses another such line. */
  boolean crosses(StraightLine other) {
    return side(other.from) * side(other.to) < 0 && other.side(from) * other.side(to) < 0;
  }

  private double side(Point point) {
    return to.minus(from).cross(point.minus(from));
  }

  double length() {
    return from.distanceTo(to);
  }
}
