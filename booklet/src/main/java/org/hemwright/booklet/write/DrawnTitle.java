package org.hemwright.booklet.write;

import java.util.Optional;
import org.hemwright.booklet.leaf.Picture;

/** What the designer's drawing says that it shows: the title within an SVG file. */
public final class DrawnTitle {
  private DrawnTitle() {}

  /** The title; absent where the file has none. */
  public static Optional<String> of(Picture picture) {
    return picture.kind() == Picture.Kind.SVG
        ? DrawingReader.title(picture.bytes())
        : Optional.empty();
  }
}
