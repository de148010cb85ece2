package org.hemwright.paper.type;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Sets lines in one face: looks glyphs up, adds their widths, kerns pairs. */
final class Typesetter {
  private static final int UNKNOWN = '?';

  private final Face face;
  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final int unitsPerEm;
  private final PairKerning kerning;
  private final Map<Integer, Path2D> outlines = new HashMap<>();

  private Typesetter(Face face) throws IOException {
    this.face = face;
    font = face.open();
    characters = font.getUnicodeCmapLookup();
    unitsPerEm = font.getUnitsPerEm();
    kerning = PairKerning.of(font);
  }

  static Typesetter of(Face face) {
    try {
      return new Typesetter(face);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int unitsPerEm() {
    return unitsPerEm;
  }

  synchronized SetLine set(String text, double points) {
    double scale = Face.mm(points) / unitsPerEm;
    List<SetLine.Glyph> glyphs = new ArrayList<>();
    double x = 0;
    int before = -1;
    for (int codePoint : Fractions.set(text).codePoints().toArray()) {
      int shown = shown(codePoint);
      int id = characters.getGlyphId(shown);
      if (before >= 0) {
        x += kerning.between(before, id) * scale;
      }
      double advance = advance(id) * scale;
      glyphs.add(new SetLine.Glyph(id, Character.toString(shown), x, advance));
      x += advance;
      before = id;
    }
    return new SetLine(text, face, points, glyphs, x);
  }

  private int shown(int codePoint) {
    if (characters.getGlyphId(codePoint) != 0) {
      return codePoint;
    }
    return Character.isSpaceChar(codePoint) ? ' ' : UNKNOWN;
  }

  synchronized List<String> missing(String text) {
    Set<String> lacking = new LinkedHashSet<>();
    Fractions.set(text)
        .codePoints()
        .filter(codePoint -> shown(codePoint) == UNKNOWN && codePoint != UNKNOWN)
        .forEach(codePoint -> lacking.add(Character.toString(codePoint)));
    return List.copyOf(lacking);
  }

  private int advance(int id) {
    try {
      return font.getAdvanceWidth(id);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The glyph's outline in font units. */
  synchronized Path2D outline(int id) {
    return outlines.computeIfAbsent(id, this::read);
  }

  private Path2D read(int id) {
    try {
      GlyphData glyph = font.getGlyph().getGlyph(id);
      return glyph == null ? new Path2D.Double() : glyph.getPath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
