package org.hemwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;

/**
 * A drawing with a frame: a page, a roll of paper, a picture.
 *
 * @param frame the edge of the paper (mm); what lies outside is not shown
 * @param items in the order in which they are put down
 */
public record Sheet(Box frame, List<Item> items) {
  public Sheet {
    items = List.copyOf(items);
  }

  /** Everything with ink, clips opened, in order. */
  public List<Inked> inked() {
    List<Inked> all = new ArrayList<>();
    collect(items, all);
    return List.copyOf(all);
  }

  private static void collect(List<Item> items, List<Inked> into) {
    for (Item item : items) {
      if (item instanceof Clip clip) {
        collect(clip.items(), into);
      } else if (item instanceof Inked inked) {
        into.add(inked);
      }
    }
  }
}
