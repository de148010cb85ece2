package org.hemwright.geometry;

import java.util.List;

/**
 * An upright rectangle: all points from its lower left to its upper right corner, edges included.
 *
 * @param minX left edge (mm)
 * @param minY lower edge (mm)
 * @param maxX right edge (mm), not left of the left edge
 * @param maxY upper edge (mm), not below the lower edge
 */
public record Box(double minX, double minY, double maxX, double maxY) {
  /** Refuses a box turned inside out. */
  public Box {
    if (!(minX <= maxX && minY <= maxY)) {
      throw new GeometryProblem(
          "a box from (" + minX + ", " + minY + ") to (" + maxX + ", " + maxY + ") is inside out");
    }
  }

  /** The smallest box round two points, in any order. */
  public static Box of(Point a, Point b) {
    return new Box(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()));
  }

  /** The smallest box round points, of which there must be one at least. */
  public static Box of(List<Point> points) {
    if (points.isEmpty()) {
      throw new GeometryProblem("a box needs a point to go round");
    }
    Box box = of(points.get(0), points.get(0));
    for (Point point : points) {
      box = box.union(of(point, point));
    }
    return box;
  }

  /** The smallest box round both. */
  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** The box with each edge moved outward (mm); a negative margin moves them inward. */
  public Box grown(double margin) {
    return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  /** From left to right (mm). */
  public double width() {
    return maxX - minX;
  }

  /** From bottom to top (mm). */
  public double height() {
    return maxY - minY;
  }

  /** Whether the two have a point in common; touching edges count. */
  public boolean overlaps(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /** Whether the point lies inside or on an edge. */
  public boolean contains(Point point) {
    return minX <= point.x() && point.x() <= maxX && minY <= point.y() && point.y() <= maxY;
  }

  /** How far a point lies outside (mm); 0 inside. */
  public double distanceTo(Point point) {
    double dx = Math.max(0, Math.max(minX - point.x(), point.x() - maxX));
    double dy = Math.max(0, Math.max(minY - point.y(), point.y() - maxY));
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The middle. */
  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /** Its edge, from the lower left corner round counter-clockwise. */
  public Outline outline() {
    Point start = new Point(minX, minY);
    return Outline.of(
        Path.polyline(
            List.of(
                start,
                new Point(maxX, minY),
                new Point(maxX, maxY),
                new Point(minX, maxY),
                start)));
  }
}
