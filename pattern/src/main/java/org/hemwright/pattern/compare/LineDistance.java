package org.hemwright.pattern.compare;

import java.util.List;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * How far two lines lie apart: the largest of all distances from a point of one to the nearest
 * point of the other (F. Hausdorff, Grundzüge der Mengenlehre, 1914).
 *
 * @param mm how far
 * @param from where, on the line whose point lies farthest
 * @param to the nearest point of the other line
 */
record LineDistance(double mm, Point from, Point to) {
  /** Places looked at lie no farther apart than this (mm) and at every joint. */
  private static final double STEP = 8;

  private static final int LEAST = 4;
  private static final int CLOSER = 24;
  private static final double GOLDEN = 0.381966011250105;

  /** The larger of both ways; measured in steps, and closed in on where it is largest. */
  static LineDistance between(Path one, Path other) {
    if (sameCourse(one, other)) {
      return new LineDistance(0, one.start(), other.start());
    }
    LineDistance there = farthest(one, other);
    LineDistance back = farthest(other, one);
    return there.mm >= back.mm ? there : new LineDistance(back.mm, back.to, back.from);
  }

  /** The point of one line that lies farthest from another line. */
  static LineDistance farthest(Path one, Path other) {
    LineDistance best = at(one.curves().get(0), 0, other);
    for (Curve curve : one.curves()) {
      int parts = Math.max(LEAST, (int) Math.ceil(curve.length() / STEP));
      int most = -1;
      for (int i = 0; i <= parts; i++) {
        LineDistance here = at(curve, (double) i / parts, other);
        if (here.mm > best.mm) {
          best = here;
          most = i;
        }
      }
      if (most >= 0) {
        best = closedIn(curve, (most - 1.0) / parts, (most + 1.0) / parts, other, best);
      }
    }
    return best;
  }

  private static LineDistance at(Curve curve, double t, Path other) {
    Point point = curve.at(t);
    Point nearest = other.nearest(point).point();
    return new LineDistance(point.distanceTo(nearest), point, nearest);
  }

  /** Golden section search round the best place of one curve. */
  private static LineDistance closedIn(
      Curve curve, double from, double to, Path other, LineDistance known) {
    double low = Math.max(0, from);
    double high = Math.min(1, to);
    LineDistance best = known;
    for (int i = 0; i < CLOSER && high - low > Tolerance.SAME_POINT; i++) {
      double left = low + GOLDEN * (high - low);
      double right = high - GOLDEN * (high - low);
      LineDistance atLeft = at(curve, left, other);
      LineDistance atRight = at(curve, right, other);
      if (atLeft.mm > atRight.mm) {
        high = right;
      } else {
        low = left;
      }
      best = atLeft.mm > best.mm ? atLeft : best;
      best = atRight.mm > best.mm ? atRight : best;
    }
    return best;
  }

  /** Whether both are the same curves, one for one. */
  static boolean sameCourse(Path one, Path other) {
    List<Curve> here = one.curves();
    List<Curve> there = other.curves();
    if (here.size() != there.size()) {
      return false;
    }
    for (int i = 0; i < here.size(); i++) {
      for (double t = 0; t <= 1; t += 0.25) {
        if (here.get(i).at(t).distanceTo(there.get(i).at(t)) > Tolerance.SAME_POINT) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether two lines that run the same way are one, to what a drawn length promises. */
  static boolean same(Path one, Path other) {
    if (one.start().distanceTo(other.start()) > Tolerance.DRAWN_LENGTH
        || one.end().distanceTo(other.end()) > Tolerance.DRAWN_LENGTH
        || Math.abs(one.length() - other.length()) > Tolerance.DRAWN_LENGTH) {
      return false;
    }
    return sameCourse(one, other) || between(one, other).mm <= Tolerance.DRAWN_LENGTH;
  }
}
