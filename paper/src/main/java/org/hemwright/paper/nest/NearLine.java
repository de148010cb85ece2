package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * Answers how near a line, or several, pass to a point, by straight stretches sorted into squares.
 */
final class NearLine {
  /** The side of a square (mm); no question reaches farther than this. */
  static final double SQUARE = 10;

  private static final double FLAT = Tolerance.PRINTED_AS_ONE / 10;

  private static final List<Integer> NOTHING = List.of();

  private final List<Point> starts = new ArrayList<>();
  private final List<Point> ends = new ArrayList<>();
  private final Map<Long, List<Integer>> squares = new HashMap<>();

  NearLine(Path path) {
    add(path, FLAT);
  }

  /** Several lines taken together, followed less closely. */
  NearLine(List<Path> paths) {
    paths.forEach(path -> add(path, Tolerance.PRINTED_FLAT));
  }

  private void add(Path path, double flat) {
    List<Point> points = path.flattened(flat);
    for (int i = 1; i < points.size(); i++) {
      starts.add(points.get(i - 1));
      ends.add(points.get(i));
      enter(starts.size() - 1, points.get(i - 1), points.get(i));
    }
  }

  private void enter(int stretch, Point from, Point to) {
    int steps = 1 + (int) (from.distanceTo(to) / (SQUARE / 2));
    long last = Long.MIN_VALUE;
    for (int k = 0; k <= steps; k++) {
      Point at = from.toward(to, (double) k / steps);
      long square = square(at.x(), at.y());
      if (square != last) {
        squares.computeIfAbsent(square, key -> new ArrayList<>()).add(stretch);
        last = square;
      }
    }
  }

  private static long square(double x, double y) {
    return key((long) Math.floor(x / SQUARE), (long) Math.floor(y / SQUARE));
  }

  private static long key(long column, long row) {
    return (column << 32) ^ (row & 0xFFFFFFFFL);
  }

  boolean passes(Point point, double within) {
    return distance(point, within) <= within;
  }

  /** The distance to the line (mm), or infinity where it is more than about {@link #SQUARE}. */
  double distance(Point point) {
    return distance(point, SQUARE);
  }

  private double distance(Point point, double within) {
    double best = Double.POSITIVE_INFINITY;
    long right = (long) Math.floor((point.x() + within) / SQUARE);
    long top = (long) Math.floor((point.y() + within) / SQUARE);
    for (long column = (long) Math.floor((point.x() - within) / SQUARE);
        column <= right;
        column++) {
      for (long row = (long) Math.floor((point.y() - within) / SQUARE); row <= top; row++) {
        for (int stretch : squares.getOrDefault(key(column, row), NOTHING)) {
          best = Math.min(best, distance(point, starts.get(stretch), ends.get(stretch)));
        }
      }
    }
    return best;
  }

  static double distance(Point point, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double square = dx * dx + dy * dy;
    double along =
        square == 0 ? 0 : ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / square;
    double share = Math.max(0, Math.min(1, along));
    double offX = from.x() + share * dx - point.x();
    double offY = from.y() + share * dy - point.y();
    return Math.sqrt(offX * offX + offY * offY);
  }
}
