package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * Finds where the number of a piece can stand: on the piece, in sight, as far as can be from its
 * edges, from lines and from the numbers that stand already.
 */
final class Labels {
  private static final int ACROSS = 24;
  private static final int ALONG = 60;

  /** Where the room is the same, the middle of a piece is better than its end. */
  private static final double BIAS = 0.4;

  private final Box within;
  private final List<Point> avoided = new ArrayList<>();
  private final List<Point> standing = new ArrayList<>();

  /**
   * Labels of one drawing.
   *
   * @param within what the drawing shows of the table (mm)
   */
  Labels(Box within) {
    this.within = within;
  }

  /** Lines that no number is to stand on. */
  Labels avoid(List<Path> lines) {
    lines.forEach(line -> avoided.addAll(along(line)));
    return this;
  }

  /**
   * A place on a piece; absent where nothing of it is in sight.
   *
   * @param seen whether a point of it is not covered by another
   */
  Optional<Point> on(Outline outline, Predicate<Point> seen) {
    Box box = outline.bounds();
    double left = Math.max(box.minX(), within.minX());
    double right = Math.min(box.maxX(), within.maxX());
    double low = Math.max(box.minY(), within.minY());
    double high = Math.min(box.maxY(), within.maxY());
    List<Point> edge = along(outline.path());
    Point best = null;
    double most = 0;
    for (int i = 1; i < ACROSS; i++) {
      for (int j = 1; j < ACROSS; j++) {
        Point at = new Point(left + (right - left) * i / ACROSS, low + (high - low) * j / ACROSS);
        double aside = at.distanceTo(box.centre()) / StrictMath.hypot(box.width(), box.height());
        double room = room(at, edge) * (1 - BIAS * aside);
        if (room > most && outline.contains(at) && seen.test(at)) {
          most = room;
          best = at;
        }
      }
    }
    Optional<Point> found = Optional.ofNullable(best);
    found.ifPresent(standing::add);
    return found;
  }

  private double room(Point at, List<Point> edge) {
    double room =
        Math.min(
            Math.min(at.x() - within.minX(), within.maxX() - at.x()),
            Math.min(at.y() - within.minY(), within.maxY() - at.y()));
    room = Math.min(room, nearest(at, edge));
    room = Math.min(room, nearest(at, avoided));
    // Two numbers keep twice the distance that a number keeps from a line.
    return Math.min(room, nearest(at, standing) / 2);
  }

  private static double nearest(Point at, List<Point> points) {
    return points.stream().mapToDouble(at::distanceTo).min().orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Point> along(Path path) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= ALONG; i++) {
      points.add(path.at(path.length() * i / ALONG).point());
    }
    return points;
  }
}
