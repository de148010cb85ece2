package org.hemwright.paper.tile;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/** Whether an area and a box have more than an edge in common. */
final class AreaTest {
  private AreaTest() {}

  /**
   * The answer.
   *
   * @param area a closed outline by its points, the first once more at the end
   */
  static boolean meets(List<Point> area, Box box) {
    for (int i = 1; i < area.size(); i++) {
      if (crosses(area.get(i - 1), area.get(i), box)) {
        return true;
      }
    }
    return contains(area, box.centre());
  }

  /** Whether a straight stretch has a part inside a box (Liang and Barsky, 1984). */
  static boolean crosses(Point from, Point to, Box box) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {
      from.x() - box.minX(), box.maxX() - from.x(), from.y() - box.minY(), box.maxY() - from.y()
    };
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] <= 0) {
          return false;
        }
      } else {
        double share = q[i] / p[i];
        if (p[i] < 0) {
          enter = Math.max(enter, share);
        } else {
          leave = Math.min(leave, share);
        }
      }
    }
    return enter < leave;
  }

  static boolean contains(List<Point> area, Point point) {
    boolean inside = false;
    for (int i = 1; i < area.size(); i++) {
      Point from = area.get(i - 1);
      Point to = area.get(i);
      if (from.y() > point.y() != to.y() > point.y()
          && point.x()
              < from.x() + (to.x() - from.x()) * (point.y() - from.y()) / (to.y() - from.y())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
