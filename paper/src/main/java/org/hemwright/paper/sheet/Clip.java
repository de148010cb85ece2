package org.hemwright.paper.sheet;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;

/**
 * A window: of what lies in it only the part within the box shows.
 *
 * @param window the box (mm)
 * @param items what is seen through it, in order
 */
public record Clip(Box window, List<Item> items) implements Item {
  public Clip {
    items = List.copyOf(items);
  }

  @Override
  public Clip moved(Vector step) {
    Box moved =
        new Box(
            window.minX() + step.dx(),
            window.minY() + step.dy(),
            window.maxX() + step.dx(),
            window.maxY() + step.dy());
    return new Clip(moved, items.stream().map(item -> item.moved(step)).toList());
  }

  @Override
  public Box bounds() {
    return window;
  }
}
