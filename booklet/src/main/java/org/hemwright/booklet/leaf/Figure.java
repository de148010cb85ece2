package org.hemwright.booklet.leaf;

import java.util.List;
import java.util.Optional;
import org.hemwright.paper.sheet.Sheet;

/**
 * A figure: a pure function of run, step and drawn size. Booklet and posts cite its id.
 *
 * @param id {@code step-waist_seam}
 * @param sheet the drawing, in the size in which it is printed (mm)
 * @param alt what it shows, for who cannot see it
 * @param caption below it; empty where the text beside it says enough
 * @param own the designer's picture that stands in its place
 */
public record Figure(
    String id, Sheet sheet, String alt, List<Inline> caption, Optional<Picture> own) {
  public Figure {
    caption = List.copyOf(caption);
    if (alt.isBlank()) {
      throw new IllegalArgumentException("a figure says what it shows: " + id);
    }
  }

  /** A figure of ours. */
  public Figure(String id, Sheet sheet, String alt, List<Inline> caption) {
    this(id, sheet, alt, caption, Optional.empty());
  }
}
