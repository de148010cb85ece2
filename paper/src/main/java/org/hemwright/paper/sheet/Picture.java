package org.hemwright.paper.sheet;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;

/**
 * A picture of the designer's, laid upright into a box of its own proportions.
 *
 * @param raster what it shows
 * @param box where it lies (mm)
 */
public record Picture(Raster raster, Box box, Layer layer, Subject subject) implements Inked {
  @Override
  public Picture moved(Vector step) {
    Box there =
        new Box(
            box.minX() + step.dx(),
            box.minY() + step.dy(),
            box.maxX() + step.dx(),
            box.maxY() + step.dy());
    return new Picture(raster, there, layer, subject);
  }

  @Override
  public Box bounds() {
    return box;
  }
}
