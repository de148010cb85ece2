package org.hemwright.paper.label;

import java.util.List;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * A box that may stand at an angle.
 *
 * @param corner where its width and its height begin
 * @param angle the way its width runs (radians, counter-clockwise from rightward)
 * @param width along that way (mm)
 * @param height to the left of it (mm)
 */
public record TurnedBox(Point corner, double angle, double width, double height) {
  /** A point in the box, counted from its corner along its width and its height (mm). */
  public Point at(double along, double up) {
    Vector way = Vector.atAngle(angle);
    return corner.plus(way.times(along)).plus(way.left().times(up));
  }

  /** The corners, counter-clockwise from the first. */
  public List<Point> corners() {
    return List.of(corner, at(width, 0), at(width, height), at(0, height));
  }

  /** The middle. */
  public Point centre() {
    return at(width / 2, height / 2);
  }

  /** The box with each side moved outward (mm). */
  public TurnedBox grown(double margin) {
    return new TurnedBox(at(-margin, -margin), angle, width + 2 * margin, height + 2 * margin);
  }
}
