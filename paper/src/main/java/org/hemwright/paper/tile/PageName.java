package org.hemwright.paper.tile;

import java.util.List;

/**
 * What a printed page is called.
 *
 * @param kind what it shows
 * @param sizes the names of the sizes on it, in the chart's order
 * @param tile its name among its neighbours, {@code B3}, for a page with pieces; the number of a
 *     table among tables, or of a map's second page; blank for others
 */
public record PageName(Kind kind, List<String> sizes, String tile) {
  /** What a page shows. */
  public enum Kind {
    /** The key and the test squares. */
    KEY,
    /** Pieces to cut by measure. */
    TABLE,
    /** How the pages of a group lie together. */
    MAP,
    /** Pieces of a group. */
    PIECES
  }

  public PageName {
    sizes = List.copyOf(sizes);
  }
}
