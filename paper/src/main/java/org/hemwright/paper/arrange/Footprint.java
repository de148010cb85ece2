package org.hemwright.paper.arrange;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;

/**
 * The paper that something needs, at one turn: closed outlines, each given by its points, whose
 * areas together are its own.
 *
 * @param areas at least one; first point and last are the same
 */
public record Footprint(List<List<Point>> areas) {
  public Footprint {
    areas = areas.stream().map(List::copyOf).toList();
    if (areas.isEmpty()) {
      throw new IllegalArgumentException("what needs paper has an area");
    }
  }

  /** A plain box. */
  public static Footprint of(Box box) {
    return new Footprint(List.of(corners(box)));
  }

  /** A box's corners, the first once more at the end. */
  public static List<Point> corners(Box box) {
    return List.of(
        new Point(box.minX(), box.minY()),
        new Point(box.maxX(), box.minY()),
        new Point(box.maxX(), box.maxY()),
        new Point(box.minX(), box.maxY()),
        new Point(box.minX(), box.minY()));
  }

  /** The smallest upright box round it all. */
  public Box bounds() {
    Box box = Box.of(areas.get(0));
    for (List<Point> area : areas) {
      box = box.union(Box.of(area));
    }
    return box;
  }
}
