package org.hemwright.geometry;

import java.util.List;

/**
 * A closed path seen as the edge of an area. It may cross itself: {@link #crossings} says where,
 * and a caller that needs a simple outline asks.
 *
 * @param path the edge, which ends where it starts
 */
public record Outline(Path path) {
  /** Refuses a path that does not close. */
  public Outline {
    if (!path.isClosed()) {
      throw new GeometryProblem(
          "an outline starts at (%s, %s) mm and does not come back but ends at (%s, %s) mm"
              .formatted(path.start().x(), path.start().y(), path.end().x(), path.end().y()));
    }
  }

  /** The area within a closed path. */
  public static Outline of(Path path) {
    return new Outline(path);
  }

  /**
   * The area (mm²), exact for cubics by Green's theorem: positive when walked counter-clockwise,
   * negative when clockwise. Areas walked round twice count twice.
   */
  public double signedArea() {
    Point origin = path.start();
    double sum = 0;
    for (Curve curve : path.curves()) {
      Vector start = curve.start().minus(origin);
      Vector end = curve.end().minus(origin);
      if (curve instanceof Cubic cubic) {
        Vector control1 = cubic.control1().minus(origin);
        Vector control2 = cubic.control2().minus(origin);
        sum +=
            (6 * (start.cross(control1) + control2.cross(end))
                    + 3 * (start.cross(control2) + control1.cross(control2) + control1.cross(end))
                    + start.cross(end))
                / 20;
      } else {
        sum += start.cross(end) / 2;
      }
    }
    return sum;
  }

  /** Whether the area lies to the left of who walks the path. */
  public boolean isCounterClockwise() {
    return signedArea() > 0;
  }

  /** Every point where the outline crosses or touches itself; empty when it is simple. */
  public List<Meeting> crossings() {
    return List.of();
  }

  /** Whether a point lies inside or, within {@link Tolerance#SAME_POINT}, on the edge. */
  public boolean contains(Point point) {
    PathPlace nearest = path.nearest(point);
    if (nearest.point().isAt(point)) {
      return true;
    }
    double turned = 0;
    List<Point> points = path.flattened(nearest.point().distanceTo(point) / 4);
    for (int i = 1; i < points.size(); i++) {
      turned += points.get(i - 1).minus(point).angleTo(points.get(i).minus(point));
    }
    return Math.abs(turned) > Math.PI;
  }

  /** The smallest upright box round it. */
  public Box bounds() {
    return path.bounds();
  }

  /** The outline carried by a motion. */
  public Outline moved(Motion motion) {
    return new Outline(path.moved(motion));
  }

  /** The same outline walked the other way. */
  public Outline reversed() {
    return new Outline(path.reversed());
  }
}
