package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
  private static final int[] NOTHING = {};

  private final List<Point> starts = new ArrayList<>();
  private final List<Point> ends = new ArrayList<>();

  /** The lower left square's place, counted in squares from the origin. */
  private final int left;

  private final int bottom;
  private final int columns;
  private final int rows;

  /** For each square, row by row, the stretches that enter it. */
  private final int[][] squares;

  NearLine(Path path) {
    this(List.of(path), FLAT);
  }

  /** Several lines taken together, followed less closely. */
  NearLine(List<Path> paths) {
    this(paths, Tolerance.PRINTED_FLAT);
  }

  private NearLine(List<Path> paths, double flat) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Path path : paths) {
      List<Point> points = path.flattened(flat);
      for (int i = 0; i < points.size(); i++) {
        Point point = points.get(i);
        minX = Math.min(minX, point.x());
        minY = Math.min(minY, point.y());
        maxX = Math.max(maxX, point.x());
        maxY = Math.max(maxY, point.y());
        if (i > 0) {
          starts.add(points.get(i - 1));
          ends.add(point);
        }
      }
    }
    left = starts.isEmpty() ? 0 : square(minX);
    bottom = starts.isEmpty() ? 0 : square(minY);
    columns = starts.isEmpty() ? 0 : square(maxX) - left + 1;
    rows = starts.isEmpty() ? 0 : square(maxY) - bottom + 1;
    squares = new int[columns * rows][];
    Arrays.fill(squares, NOTHING);
    for (int i = 0; i < starts.size(); i++) {
      enter(i, starts.get(i), ends.get(i));
    }
  }

  private void enter(int stretch, Point from, Point to) {
    int steps = 1 + (int) (from.distanceTo(to) / (SQUARE / 2));
    int last = -1;
    for (int k = 0; k <= steps; k++) {
      Point at = from.toward(to, (double) k / steps);
      int row = Math.max(0, Math.min(rows - 1, square(at.y()) - bottom));
      int column = Math.max(0, Math.min(columns - 1, square(at.x()) - left));
      int index = row * columns + column;
      if (index != last) {
        int[] known = squares[index];
        squares[index] = Arrays.copyOf(known, known.length + 1);
        squares[index][known.length] = stretch;
        last = index;
      }
    }
  }

  private static int square(double at) {
    return (int) Math.floor(at / SQUARE);
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
    int firstColumn = Math.max(0, square(point.x() - within) - left);
    int lastColumn = Math.min(columns - 1, square(point.x() + within) - left);
    int firstRow = Math.max(0, square(point.y() - within) - bottom);
    int lastRow = Math.min(rows - 1, square(point.y() + within) - bottom);
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        for (int stretch : squares[row * columns + column]) {
          best = Math.min(best, point.distanceTo(starts.get(stretch), ends.get(stretch)));
        }
      }
    }
    return best;
  }
}
