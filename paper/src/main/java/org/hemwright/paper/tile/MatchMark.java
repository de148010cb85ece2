package org.hemwright.paper.tile;

import java.util.List;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/**
 * A diamond that lies half on each of two pages, with the pair's number in both halves.
 *
 * @param centre on the seam of the two pages
 * @param along the seam, unit
 * @param number the pair's, from 1; no other pair of the sheet has it
 */
record MatchMark(Point centre, Vector along, int number) {
  /** Half the diamond's length along the seam, and its reach into each page (mm). */
  static final double HALF = 8;

  static final double REACH = 8;

  private static final double POINTS = 9;
  private static final double TINT = 0.16;
  private static final Pen EDGE = Pen.solid(0.25, Inks.CHALK);

  /** The diamond and its numbers, in sheet coordinates: each page shows its own half. */
  List<Inked> items() {
    SetLine line = Face.SEMIBOLD.set(Integer.toString(number), POINTS);
    Outline diamond = diamond(centre, along, HALF, REACH);
    return List.of(
        new Fill(diamond, Inks.CHALK.tint(TINT), Layer.COMMON, Subject.NONE),
        new Stroke(diamond.path(), EDGE, Layer.COMMON, Subject.NONE),
        words(line, 1),
        words(line, -1));
  }

  private Words words(SetLine line, int side) {
    double off = along.dx() == 0 ? line.width() / 2 + 1 : line.capitalHeight() / 2 + 1.1;
    Point middle = centre.plus(along.left().times(side * off));
    Point at = middle.plus(new Vector(-line.width() / 2, -line.capitalHeight() / 2));
    return new Words(line, at, 0, Inks.BLACK, Layer.COMMON, Subject.NONE);
  }

  private static Outline diamond(Point centre, Vector along, double half, double reach) {
    Point east = centre.plus(along.times(half));
    return Outline.of(
        Path.polyline(
            List.of(
                east,
                centre.plus(along.left().times(reach)),
                centre.minus(along.times(half)),
                centre.minus(along.left().times(reach)),
                east)));
  }

  /** A small one for the key, with the frame of two pages. */
  static List<Inked> key(Point centre) {
    Vector up = new Vector(0, 1);
    Outline diamond = diamond(centre, up, 3.2, 4);
    return List.of(
        new Fill(diamond, Inks.CHALK.tint(TINT), Layer.COMMON, Subject.NONE),
        new Stroke(diamond.path(), EDGE, Layer.COMMON, Subject.NONE),
        new Stroke(
            Path.straight(centre.plus(up.times(3.6)), centre.minus(up.times(3.6))),
            EDGE,
            Layer.COMMON,
            Subject.NONE));
  }
}
