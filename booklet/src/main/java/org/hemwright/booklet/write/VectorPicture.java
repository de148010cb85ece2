package org.hemwright.booklet.write;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Component;
import java.awt.Graphics2D;
import java.io.ByteArrayInputStream;
import org.hemwright.booklet.leaf.Picture;

/** The designer's SVG drawings, painted without reading anything but the drawing itself. */
final class VectorPicture {
  private static final double MM_PER_PX = 25.4 / 96;

  private VectorPicture() {}

  private static SVGDocument document(Picture picture) {
    SVGDocument document =
        new SVGLoader()
            .load(new ByteArrayInputStream(picture.bytes()), null, LoaderContext.createDefault());
    if (document == null) {
      throw new IllegalArgumentException(picture.name() + " is no drawing");
    }
    return document;
  }

  /** Its width and height (mm). */
  static double[] size(Picture picture) {
    FloatSize size = document(picture).size();
    return new double[] {size.width * MM_PER_PX, size.height * MM_PER_PX};
  }

  /** Paints it into a box at the origin. */
  static void paint(Picture picture, Graphics2D graphics, double width, double height) {
    document(picture)
        .render((Component) null, graphics, new ViewBox(0, 0, (float) width, (float) height));
  }
}
