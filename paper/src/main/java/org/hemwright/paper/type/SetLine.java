package org.hemwright.paper.type;

import java.util.List;

/**
 * One line of words, set: which glyphs stand where.
 *
 * @param text what it says
 * @param face in which face
 * @param points at which size (1/72 in)
 * @param glyphs from left to right
 * @param width from the first glyph's origin to the end of the last one's advance (mm)
 */
public record SetLine(String text, Face face, double points, List<Glyph> glyphs, double width) {
  public SetLine {
    glyphs = List.copyOf(glyphs);
    if (!(points > 0)) {
      throw new IllegalArgumentException("words have a size above 0 pt, not " + points);
    }
  }

  /**
   * One glyph.
   *
   * @param id its number in the font
   * @param character the character it shows
   * @param x its origin, from the start of the line (mm)
   * @param advance how far it moves the pen by itself (mm), before kerning
   */
  public record Glyph(int id, String character, double x, double advance) {}

  /** The height of a capital letter (mm). */
  public double capitalHeight() {
    return Face.mm(points) * Face.CAPITAL;
  }

  /** How far letters reach below the line (mm). */
  public double descent() {
    return Face.mm(points) * Face.DESCENT;
  }
}
