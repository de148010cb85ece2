package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Point;

/**
 * The card that is printed and laid beside a paper piece before it is photographed: black squares
 * whose corners lie at known places, so that the picture can be straightened and scaled.
 *
 * <p>Four squares stand at the corners of a frame, as far apart as both A4 and US Letter let them;
 * the fifth stands off the middle of the upper edge and tells which way up the card lies. The
 * origin is the lower left corner of the frame, x to the right, y up (mm).
 */
public final class ReferenceCard {
  /** How wide the frame is, over the squares (mm). */
  public static final double WIDTH = 170;

  /** How high the frame is, over the squares (mm). */
  public static final double HEIGHT = 230;

  /** The side of each square (mm). */
  public static final double SIDE = 40;

  /** The fifth square starts here, measured from the left end of the frame (mm). */
  public static final double FIFTH = 55;

  private ReferenceCard() {}

  /**
   * The squares, each by its four corners, counter-clockwise from the lower left; the fifth square
   * last.
   */
  public static List<List<Point>> squares() {
    List<List<Point>> squares = new ArrayList<>();
    for (Point corner :
        List.of(
            Point.ORIGIN,
            new Point(WIDTH - SIDE, 0),
            new Point(WIDTH - SIDE, HEIGHT - SIDE),
            new Point(0, HEIGHT - SIDE),
            new Point(FIFTH, HEIGHT - SIDE))) {
      double x = corner.x();
      double y = corner.y();
      squares.add(
          List.of(
              corner,
              new Point(x + SIDE, y),
              new Point(x + SIDE, y + SIDE),
              new Point(x, y + SIDE)));
    }
    return List.copyOf(squares);
  }
}
