package org.hemwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * An area hatched with parallel lines.
 *
 * @param outline the area
 * @param angle of the lines (radians, counter-clockwise from rightward)
 * @param spacing from line to line (mm), more than 0
 * @param pen what draws them
 */
public record Hatch(
    Outline outline, double angle, double spacing, Pen pen, Layer layer, Subject subject)
    implements Inked {
  public Hatch {
    if (!(spacing > 0)) {
      throw new IllegalArgumentException("hatch lines stand apart, not " + spacing + " mm");
    }
  }

  @Override
  public Hatch moved(Vector step) {
    return new Hatch(outline.moved(Motion.move(step)), angle, spacing, pen, layer, subject);
  }

  @Override
  public Box bounds() {
    return outline.bounds();
  }

  /**
   * The lines over the outline's whole box; a writer clips them to the outline. They lie on one
   * grid through the origin, so that hatches side by side run on.
   */
  public List<Line> lines() {
    Box box = outline.bounds();
    Vector along = Vector.atAngle(angle);
    Vector across = along.left();
    Point centre = box.centre();
    double reach = StrictMath.hypot(box.width(), box.height()) / 2 + spacing;
    double middle = centre.minus(Point.ORIGIN).dot(across);
    double run = centre.minus(Point.ORIGIN).dot(along);
    List<Line> lines = new ArrayList<>();
    long first = (long) Math.ceil((middle - reach) / spacing);
    long last = (long) Math.floor((middle + reach) / spacing);
    for (long i = first; i <= last; i++) {
      Point foot = Point.ORIGIN.plus(across.times(i * spacing)).plus(along.times(run));
      lines.add(new Line(foot.minus(along.times(reach)), foot.plus(along.times(reach))));
    }
    return lines;
  }
}
