package org.hemwright.paper.arrange;

import java.util.List;
import org.hemwright.geometry.Vector;

/**
 * Where everything lies on the sheet.
 *
 * @param places one for each thing laid, in the order given
 * @param rows how many rows of pages the sheet has
 * @param columns how many columns
 */
public record Arrangement(List<Place> places, int rows, int columns) {
  public Arrangement {
    places = List.copyOf(places);
  }

  /**
   * One thing's place.
   *
   * @param turn which of its footprints, as many quarters of a turn
   * @param move from its own origin to its place on the sheet (mm)
   */
  public record Place(int turn, Vector move) {}
}
