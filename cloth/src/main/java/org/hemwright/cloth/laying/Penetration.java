package org.hemwright.cloth.laying;

import java.util.Arrays;

/**
 * How deep two outlines are inside each other, for {@link LayoutChecker}.
 *
 * <p>The penetration of two shapes is the greatest distance from a point of one outline that lies
 * inside the other shape to that shape's outline; where the outlines hide in each other, because
 * the shapes all but coincide, it is the depth of the point deepest inside both that a set of sweep
 * lines finds. Sides and crossings are exact. Distances are between grid points (a crossing is
 * rounded to one), from exact differences, and true to a hundredth of a step; with the rounding of
 * crossings the depth is true to one step, a hundredth of the tolerance.
 */
final class Penetration {

  /** Nearer to an outline than this, in steps, rounding may have put a point on its wrong side. */
  private static final double ROUNDING = 2;

  private final double limit;

  /** Compares penetrations with a limit, in grid steps. */
  Penetration(double limit) {
    this.limit = limit;
  }

  /** Whether the shapes are deeper inside each other than the limit. */
  boolean exceeds(PlacedOutline a, PlacedOutline b) {
    return reachesInto(a, b) || reachesInto(b, a) || covers(a, b);
  }

  private boolean reachesInto(PlacedOutline a, PlacedOutline b) {
    for (int i = 0; i < a.size(); i++) {
      if (edgeReachesInto(a.x[i], a.y[i], a.x[a.next(i)], a.y[a.next(i)], b)) {
        return true;
      }
    }
    return false;
  }

  private boolean edgeReachesInto(long ax, long ay, long bx, long by, PlacedOutline other) {
    if (other.isBeside(ax, ay, bx, by)) {
      return false;
    }
    double[] cuts = other.crossings(ax, ay, bx, by);
    for (int c = 0; c + 1 < cuts.length; c++) {
      long fromX = along(ax, bx, cuts[c]);
      long fromY = along(ay, by, cuts[c]);
      long toX = along(ax, bx, cuts[c + 1]);
      long toY = along(ay, by, cuts[c + 1]);
      if (stretchIsDeep(fromX, fromY, toX, toY, other)) {
        return true;
      }
    }
    return false;
  }

  private static long along(long from, long to, double share) {
    return from + Math.round((to - from) * share);
  }

  /**
   * Whether a stretch of an edge that lies inside the other shape is somewhere deeper than the
   * limit.
   */
  private boolean stretchIsDeep(long ax, long ay, long bx, long by, PlacedOutline other) {
    long middleX = ax + (bx - ax) / 2;
    long middleY = ay + (by - ay) / 2;
    if (other.isFarFrom(middleX, middleY, ROUNDING) || other.oneEdgeIsNear(ax, ay, bx, by, limit)) {
      return false;
    }
    double distance = other.distance(middleX, middleY);
    boolean inside = other.contains(middleX, middleY);
    if (!inside && distance > ROUNDING) {
      return false; // nothing crosses the stretch, so all of it is outside
    }
    if (inside && distance > limit) {
      return true;
    }
    if (Math.max(Math.abs(bx - ax), Math.abs(by - ay)) <= 1) {
      return false;
    }
    return stretchIsDeep(ax, ay, middleX, middleY, other)
        || stretchIsDeep(middleX, middleY, bx, by, other);
  }

  /** Whether some point well inside the first shape is as well inside the second. */
  private boolean covers(PlacedOutline a, PlacedOutline b) {
    long[] levels = a.y.clone();
    Arrays.sort(levels);
    for (int i = 0; i + 1 < levels.length; i++) {
      long y = levels[i] + (levels[i + 1] - levels[i]) / 2;
      if (y < b.minY || y > b.maxY) {
        continue;
      }
      long[] spans = a.crossingsOfLevel(y);
      for (int s = 0; s + 1 < spans.length; s += 2) {
        long x = spans[s] + (spans[s + 1] - spans[s]) / 2;
        if (b.contains(x, y)
            && a.contains(x, y)
            && a.distance(x, y) > limit
            && b.distance(x, y) > limit) {
          return true;
        }
      }
    }
    return false;
  }
}
