package org.hemwright.paper.sheet;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Vector;

/** An area filled with one ink; parts that the outline goes round twice are filled too. */
public record Fill(Outline outline, Ink ink, Layer layer, Subject subject) implements Inked {
  @Override
  public Fill moved(Vector step) {
    return new Fill(outline.moved(Motion.move(step)), ink, layer, subject);
  }

  @Override
  public Box bounds() {
    return outline.bounds();
  }
}
