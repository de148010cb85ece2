package org.hemwright.cloth.laying;

import java.util.List;

/**
 * A shape in one of its turns, ready to be placed by the lower left corner of its box.
 *
 * @param shape which shape of the problem it is
 * @param turn how it lies
 * @param form which of the {@link Forms} it is
 * @param originX where the shape's own origin lies, seen from the box's corner, in grid steps
 * @param originY likewise across the strip
 * @param width the box's extent along the strip
 * @param height the box's extent across the strip
 * @param lanes where across the strip the box's corner may lie; at least one range
 */
record Cut(
    int shape,
    Turn turn,
    int form,
    long originX,
    long originY,
    long width,
    long height,
    List<LaneRange> lanes) {

  Cut {
    lanes = List.copyOf(lanes);
  }
}
