package org.hemwright.paper.style;

import java.util.List;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Pen;

/**
 * How one size is drawn in its nest.
 *
 * @param dashes of its cut line: ink and gap in turn (mm); none for an unbroken line
 * @param ink of its lines
 */
public record SizeStyle(List<Double> dashes, Ink ink) {
  public SizeStyle {
    dashes = List.copyOf(dashes);
  }

  /** Its cut line. */
  public Pen cut() {
    return new Pen(Pens.CUT.width(), dashes, ink);
  }

  /** One of the common pens in this size's ink. */
  public Pen with(Pen pen) {
    return pen.in(ink);
  }
}
