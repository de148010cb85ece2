package org.hemwright.paper.cutting;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;

/**
 * What a piece covers of a figure, on paper, so that words can be kept in it or off it.
 *
 * @param round its corners in order, the last joined to the first
 * @param bounds the box round it
 */
record PieceShape(List<Point> round, Box bounds) {
  PieceShape {
    round = List.copyOf(round);
  }

  /** A shape of straight sides. */
  static PieceShape of(Outline outline) {
    List<Point> round = outline.path().curves().stream().map(curve -> curve.start()).toList();
    return new PieceShape(round, outline.bounds());
  }

  /** Whether a point lies inside. */
  boolean contains(Point point) {
    boolean inside = false;
    for (int i = 0, k = round.size() - 1; i < round.size(); k = i++) {
      Point a = round.get(i);
      Point b = round.get(k);
      if (a.y() > point.y() != b.y() > point.y()
          && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether its edge runs through a box. */
  boolean edgeMeets(Box box) {
    if (!bounds.overlaps(box)) {
      return false;
    }
    for (int i = 0, k = round.size() - 1; i < round.size(); k = i++) {
      Point a = round.get(k);
      Point b = round.get(i);
      if (StraightLine.isNear(a, b, box) && new StraightLine(a, b).meets(box)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it covers any of a box. */
  boolean covers(Box box) {
    return bounds.overlaps(box) && (edgeMeets(box) || contains(box.centre()));
  }

  /** Whether the whole box lies in it. */
  boolean holds(Box box) {
    return !edgeMeets(box) && contains(box.centre());
  }

  /** Whether a straight line runs over it. */
  boolean isCrossedBy(StraightLine line) {
    Box box = Box.of(line.from(), line.to());
    if (!bounds.overlaps(box)) {
      return false;
    }
    for (int i = 0, k = round.size() - 1; i < round.size(); k = i++) {
      Point a = round.get(k);
      Point b = round.get(i);
      if (StraightLine.isNear(a, b, box) && line.crosses(new StraightLine(a, b))) {
        return true;
      }
    }
    return contains(line.from());
  }
}
