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
 * @param large the drawing for large print, where it is another
 */
public record Figure(
    String id,
    Sheet sheet,
    String alt,
    List<Inline> caption,
    Optional<Picture> own,
    Optional<Enlarged> large) {
  public Figure {
    caption = List.copyOf(caption);
    if (alt.isBlank()) {
      throw new IllegalArgumentException("a figure says what it shows: " + id);
    }
  }

  /**
   * A drawing that is printed larger than it is drawn, its words and lines with it.
   *
   * @param times how many times as large, 1 or more
   */
  public record Enlarged(Sheet sheet, double times) {
    public Enlarged {
      if (!(times >= 1)) {
        throw new IllegalArgumentException("enlarged " + times + " times");
      }
    }
  }

  /** A figure that is drawn alike for every print. */
  public Figure(String id, Sheet sheet, String alt, List<Inline> caption, Optional<Picture> own) {
    this(id, sheet, alt, caption, own, Optional.empty());
  }

  /** A figure of ours. */
  public Figure(String id, Sheet sheet, String alt, List<Inline> caption) {
    this(id, sheet, alt, caption, Optional.empty());
  }

  /** The same, drawn otherwise for large print. */
  public Figure enlarged(Enlarged other) {
    return new Figure(id, sheet, alt, caption, own, Optional.of(other));
  }
}
