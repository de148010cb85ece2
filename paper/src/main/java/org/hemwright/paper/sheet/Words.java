package org.hemwright.paper.sheet;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.type.SetLine;

/**
 * One line of words, set and placed.
 *
 * @param line the words as set
 * @param at where the line starts, on its baseline
 * @param angle the way it runs (radians, counter-clockwise from rightward)
 * @param ink their colour
 */
public record Words(SetLine line, Point at, double angle, Ink ink, Layer layer, Subject subject)
    implements Inked {
  @Override
  public Words moved(Vector step) {
    return new Words(line, at.plus(step), angle, ink, layer, subject);
  }

  @Override
  public Box bounds() {
    return Box.of(corners());
  }

  /** The four corners of the words' own box: below the first letter first, then round. */
  public List<Point> corners() {
    Vector along = Vector.atAngle(angle);
    Vector up = along.left();
    Point foot = at.minus(up.times(line.descent()));
    Vector width = along.times(line.width());
    Vector height = up.times(line.descent() + line.capitalHeight() * 1.15);
    return List.of(foot, foot.plus(width), foot.plus(width).plus(height), foot.plus(height));
  }
}
