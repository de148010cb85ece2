package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * A range of places across the strip in which a shape's origin may lie, in grid steps.
 *
 * @param low the least y
 * @param high the greatest y, at least {@code low}
 */
record LaneRange(long low, long high) {

  /**
   * The ranges of one turned outline, one for each lane that it fits; the whole strip where there
   * is no lane.
   */
  static List<LaneRange> of(List<Lane> lanes, GridOutline outline, StripGrid grid) {
    List<LaneRange> ranges = new ArrayList<>();
    if (lanes.isEmpty()) {
      addBetween(ranges, 0, grid.width(), outline, grid);
    }
    for (Lane lane : lanes) {
      if (lane instanceof Lane.Between between) {
        addBetween(ranges, grid.toGrid(between.low()), grid.toGrid(between.high()), outline, grid);
      } else if (lane instanceof Lane.Line line) {
        long y = grid.toGrid(line.y());
        if (y + outline.minY() >= -grid.slack()
            && y + outline.maxY() <= grid.width() + grid.slack()) {
          ranges.add(new LaneRange(y, y));
        }
      }
    }
    return ranges;
  }

  private static void addBetween(
      List<LaneRange> ranges, long low, long high, GridOutline outline, StripGrid grid) {
    long least = low - outline.minY();
    long most = high - outline.maxY();
    if (least <= most) {
      ranges.add(new LaneRange(least, most));
    } else if (least - most <= 2 * grid.slack()) {
      ranges.add(new LaneRange(most, most));
    }
  }
}
