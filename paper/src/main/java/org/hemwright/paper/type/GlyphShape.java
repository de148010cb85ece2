package org.hemwright.paper.type;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/** The outlines of set words as one shape, for writers that draw letters themselves. */
public final class GlyphShape {
  private GlyphShape() {}

  /** The letters of a line (mm, x right, y up, the line starting at the origin). */
  public static Shape of(SetLine line) {
    Typesetter typesetter = line.face().typesetter();
    double scale = Face.mm(line.points()) / typesetter.unitsPerEm();
    Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
    for (SetLine.Glyph glyph : line.glyphs()) {
      AffineTransform place = new AffineTransform(scale, 0, 0, scale, glyph.x(), 0);
      all.append(typesetter.outline(glyph.id()).getPathIterator(place), false);
    }
    return all;
  }
}
