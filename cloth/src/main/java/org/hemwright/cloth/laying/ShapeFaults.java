package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * What keeps one shape from being laid: no area, an outline that meets itself, or no turn in which
 * it fits the strip.
 */
final class ShapeFaults {

  private ShapeFaults() {}

  /** What can be said before the shape is laid on the grid: too many corners, or one far off. */
  static List<Finding> ofSize(LooseShape shape, double stripWidth) {
    if (shape.outline().size() > StripProblem.MOST_CORNERS) {
      return List.of(
          fault("lay-corners-many", shape)
              .with("count", Argument.of(shape.outline().size()))
              .with("most", Argument.of(StripProblem.MOST_CORNERS))
              .build());
    }
    double far = StripProblem.MOST_WIDTHS * stripWidth;
    for (Spot corner : shape.outline()) {
      if (Math.max(Math.abs(corner.x()), Math.abs(corner.y())) > far) {
        return List.of(
            fault("lay-corner-far", shape)
                .with("place", corner.x() + ", " + corner.y())
                .with("width", Double.toString(stripWidth))
                .build());
      }
    }
    return List.of();
  }

  static List<Finding> of(LooseShape shape, double stripWidth, StripGrid grid) {
    GridOutline outline = GridOutline.of(shape.outline(), Turn.AS_DRAWN, grid);
    if (outline.size() < 3 || flat(outline)) {
      return List.of(fault("lay-flat", shape).build());
    }
    List<Finding> faults = new ArrayList<>();
    String meeting = meeting(outline, grid);
    if (!meeting.isEmpty()) {
      faults.add(fault("lay-crossing", shape).with("place", meeting).build());
    }
    for (Lane lane : shape.lanes()) {
      if (lane instanceof Lane.Between between
          && (between.low() < 0 || between.high() > stripWidth)) {
        faults.add(
            fault("lay-lane", shape)
                .with("low", Double.toString(between.low()))
                .with("high", Double.toString(between.high()))
                .with("width", Double.toString(stripWidth))
                .build());
      }
    }
    if (faults.isEmpty() && !fits(shape, grid)) {
      faults.add(fault("lay-fits-none", shape).with("width", Double.toString(stripWidth)).build());
    }
    return faults;
  }

  private static Finding.Builder fault(String code, LooseShape shape) {
    return Finding.fail(code, shape.id());
  }

  private static boolean fits(LooseShape shape, StripGrid grid) {
    for (Turn turn : shape.turns()) {
      if (!LaneRange.of(shape.lanes(), GridOutline.of(shape.outline(), turn, grid), grid)
          .isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static boolean flat(GridOutline o) {
    for (int i = 2; i < o.size(); i++) {
      if (GridOutline.side(o.x[0], o.y[0], o.x[1], o.y[1], o.x[i], o.y[i]) != 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where two edges that are not neighbours meet, or two neighbours fold back on each other; empty
   * if nowhere.
   */
  private static String meeting(GridOutline o, StripGrid grid) {
    int n = o.size();
    for (int i = 0; i < n; i++) {
      int after = (i + 1) % n;
      int next = (i + 2) % n;
      if (foldsBack(o, i, after, next)) {
        return place(o, after, grid);
      }
      for (int k = i + 2; k < n; k++) {
        if ((k + 1) % n != i && edgesMeet(o, i, after, k, (k + 1) % n)) {
          return place(o, k, grid);
        }
      }
    }
    return "";
  }

  private static String place(GridOutline o, int corner, StripGrid grid) {
    return grid.toUnit((double) o.x[corner]) + ", " + grid.toUnit((double) o.y[corner]);
  }

  private static boolean foldsBack(GridOutline o, int a, int b, int c) {
    if (GridOutline.side(o.x[a], o.y[a], o.x[b], o.y[b], o.x[c], o.y[c]) != 0) {
      return false;
    }
    return GridOutline.compareProducts(
            o.x[b] - o.x[a], o.x[c] - o.x[b], o.y[a] - o.y[b], o.y[c] - o.y[b])
        < 0;
  }

  private static boolean edgesMeet(GridOutline o, int a, int b, int c, int d) {
    if (Math.max(o.x[a], o.x[b]) < Math.min(o.x[c], o.x[d])
        || Math.max(o.x[c], o.x[d]) < Math.min(o.x[a], o.x[b])
        || Math.max(o.y[a], o.y[b]) < Math.min(o.y[c], o.y[d])
        || Math.max(o.y[c], o.y[d]) < Math.min(o.y[a], o.y[b])) {
      return false;
    }
    int c1 = GridOutline.side(o.x[a], o.y[a], o.x[b], o.y[b], o.x[c], o.y[c]);
    int d1 = GridOutline.side(o.x[a], o.y[a], o.x[b], o.y[b], o.x[d], o.y[d]);
    int a1 = GridOutline.side(o.x[c], o.y[c], o.x[d], o.y[d], o.x[a], o.y[a]);
    int b1 = GridOutline.side(o.x[c], o.y[c], o.x[d], o.y[d], o.x[b], o.y[b]);
    return c1 * d1 <= 0 && a1 * b1 <= 0;
  }
}
