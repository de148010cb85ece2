package org.hemwright.pattern.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * One of the two edges at a corner, seen by who stands on the corner and looks along it.
 *
 * <p>Places on its cut line are counted from the point beside the corner: more than 0 along the
 * line, less than 0 on its straight run beyond.
 *
 * @param edge the edge
 * @param stitch its stitch line, leaving the corner
 * @param cut the line beside it at the allowance's width, leaving the corner
 * @param before whether the outline arrives at the corner along it
 */
record AllowanceArm(Edge edge, Path stitch, Path cut, boolean before) {
  /** The arm of the edge that ends at the corner. */
  static AllowanceArm arriving(Edge edge, Path cut) {
    return new AllowanceArm(edge, edge.path().reversed(), cut.reversed(), true);
  }

  /** The arm of the edge that begins at the corner. */
  static AllowanceArm leaving(Edge edge, Path cut) {
    return new AllowanceArm(edge, edge.path(), cut, false);
  }

  Point corner() {
    return stitch.start();
  }

  double width() {
    return edge.allowance().width();
  }

  /** The unit vector along the stitch line, away from the corner. */
  Vector leave() {
    return stitch.startDirection();
  }

  /** The unit vector square to the stitch line, away from the piece. */
  Vector outward() {
    return before ? leave().left() : leave().right();
  }

  /** The point of the cut line that lies beside the corner. */
  Point beside() {
    return corner().plus(outward().times(width()));
  }

  /** The point at a place on the cut line or its run beyond the corner. */
  Point at(double along) {
    return along <= 0 ? beside().plus(leave().times(along)) : cut.at(along).point();
  }

  /**
   * The place nearest to the corner where a straight ray from the corner meets the cut line or its
   * run beyond. Absent where it meets neither within {@code reach} (mm).
   */
  Optional<Double> meets(Vector ray, double reach) {
    Vector toBeside = outward().times(width());
    double slope = ray.cross(leave());
    if (slope != 0) {
      double along = -ray.cross(toBeside) / slope;
      double onRay = leave().cross(toBeside) / leave().cross(ray);
      if (along <= Tolerance.SAME_POINT && onRay >= 0 && onRay <= reach) {
        return Optional.of(Math.min(0, along));
      }
    }
    Path line = Path.straight(corner(), corner().plus(ray.times(reach)));
    return nearestAlong(line.meetings(cut));
  }

  private static Optional<Double> nearestAlong(List<Meeting> meetings) {
    return meetings.stream()
        .map(Meeting::distanceOnOther)
        .filter(along -> along >= 0)
        .min(Double::compare);
  }

  /** Whether there is no allowance at all. */
  boolean isBare() {
    return width() <= Tolerance.SAME_POINT;
  }
}
