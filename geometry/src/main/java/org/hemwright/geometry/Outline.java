package org.hemwright.geometry;

import java.util.List;

/**
 * A closed path seen as the edge of an area. It may cross itself: {@link #crossings} says where,
 * and a caller that needs a simple outline asks.
 *
 * @param path the edge, which ends where it starts
 */
public record Outline(Path path) {
  private static final int DEEPEST = 50;

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
    return MeetingFinder.within(path);
  }

  /**
   * Whether a point lies inside or, within {@link Tolerance#SAME_POINT}, on the edge. Of an outline
   * that crosses itself, inside is what the edge goes round.
   */
  public boolean contains(Point point) {
    if (!path.bounds().grown(Tolerance.SAME_POINT).contains(point)) {
      return false;
    }
    if (NearestPlace.isNearer(path, point, Tolerance.SAME_POINT)) {
      return true;
    }
    double turned = 0;
    for (Curve curve : path.curves()) {
      turned += turnSeenFrom(point, curve, 0);
    }
    return Math.abs(turned) > Math.PI;
  }

  /**
   * By how much one turns to watch a curve from start to end (radians). A curve in a box that does
   * not hold the point takes no way round it; others are halved.
   */
  private static double turnSeenFrom(Point point, Curve curve, int depth) {
    if (curve instanceof Cubic cubic && depth < DEEPEST && cubic.hull().contains(point)) {
      return turnSeenFrom(point, cubic.part(0, 0.5), depth + 1)
          + turnSeenFrom(point, cubic.part(0.5, 1), depth + 1);
    }
    return curve.start().minus(point).angleTo(curve.end().minus(point));
  }

  /** The smallest upright box round it. */
  public Box bounds() {
    return path.bounds();
  }

  /** The outline carried by a motion. */
  public Outline moved(Motion motion) {
    return new Outline(path.moved(motion));
  }
}
