package org.hemwright.draft.plan;

import java.util.List;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * Where a short line or a dot of a drawing marks a traced edge: a notch drawn across the edge, at
 * it, or at the cut line and pointing at it.
 *
 * @param place on the edge
 * @param away how far from it the mark ends (mm)
 * @param straightOn whether the mark, run straight on, meets the edge there, as one does that was
 *     drawn at the cut line
 */
record MarkedEdge(PathPlace place, double away, boolean straightOn) {
  /**
   * A short line marks an edge if it comes this close to it, besides the allowance taken off (mm).
   */
  private static final double REACH = 2;

  /** How far from the stitch line a short line may be drawn that points at it (mm). */
  private static final double LONGEST_ALLOWANCE = 50;

  /** Where a mark lies nearest to an edge, or points at it. */
  static MarkedEdge on(Path edge, Path mark) {
    if (mark.isClosed()) {
      Point middle = mark.bounds().centre();
      PathPlace place = edge.nearest(middle);
      return new MarkedEdge(place, place.point().distanceTo(middle), false);
    }
    Point start = mark.start();
    Point end = mark.end();
    PathPlace atStart = edge.nearest(start);
    PathPlace atEnd = edge.nearest(end);
    boolean first = atStart.point().distanceTo(start) <= atEnd.point().distanceTo(end);
    PathPlace nearest = first ? atStart : atEnd;
    double away = nearest.point().distanceTo(first ? start : end);
    List<Meeting> meetings = edge.meetings(mark);
    if (!meetings.isEmpty()) {
      return new MarkedEdge(edge.at(meetings.get(0).distanceOnThis()), 0, false);
    }
    if (away <= REACH || start.isAt(end)) {
      return new MarkedEdge(nearest, away, false);
    }
    Vector on = end.minus(start).unit().times(LONGEST_ALLOWANCE);
    Path longer = Path.straight(start.plus(on.negated()), end.plus(on));
    for (Meeting meeting : edge.meetings(longer)) {
      double out = Math.min(meeting.point().distanceTo(start), meeting.point().distanceTo(end));
      return new MarkedEdge(edge.at(meeting.distanceOnThis()), out, true);
    }
    return new MarkedEdge(nearest, away, false);
  }

  /**
   * Whether the mark is meant for the edge, if for any.
   *
   * @param allowance what was taken off the edge (mm)
   */
  boolean isMeant(double allowance) {
    return away <= (straightOn ? LONGEST_ALLOWANCE : REACH + allowance);
  }
}
