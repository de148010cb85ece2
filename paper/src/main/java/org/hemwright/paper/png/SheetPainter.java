package org.hemwright.paper.png;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import org.hemwright.geometry.Box;
import org.hemwright.paper.sheet.Sheet;

/** Paints a sheet wherever Java can draw, as within a page that another library lays out. */
public final class SheetPainter {
  private SheetPainter() {}

  /**
   * Paints a sheet with the upper left corner of its frame at the origin, y running down.
   *
   * @param perMm units of the drawing to a millimetre of the sheet
   */
  public static void paint(Sheet sheet, Graphics2D graphics, double perMm) {
    AffineTransform before = graphics.getTransform();
    Box frame = sheet.frame();
    graphics.transform(
        new AffineTransform(perMm, 0, 0, -perMm, -frame.minX() * perMm, frame.maxY() * perMm));
    PngWriter.draw(graphics, sheet.items());
    graphics.setTransform(before);
  }
}
