package org.hemwright.booklet.figure;

import java.util.List;
import org.hemwright.paper.sheet.Item;

/**
 * What is done at the edge, seen from near by: a window of {@link #WIDE} by {@link #HIGH} mm of
 * paper, its lower left corner at the origin.
 *
 * @param items in the window; what reaches beyond it is cut off
 * @param alt what it shows, a sentence
 */
record CloseUp(List<Item> items, String alt) {
  /** The width of the window (mm). */
  static final double WIDE = 56;

  /** Its height (mm). */
  static final double HIGH = 46;

  /** How far what goes on is drawn beyond the window (mm). */
  static final double BEYOND = 6;

  /** How far from an edge a line of stitching is shown where no distance is said (mm). */
  static final double CLOSE_TO = 2;

  CloseUp {
    items = List.copyOf(items);
  }
}
