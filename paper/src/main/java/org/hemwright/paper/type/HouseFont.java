package org.hemwright.paper.type;

import java.io.IOException;
import java.util.Optional;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A font file of the house's own, read and found fit for paper.
 *
 * @param face to set words in
 * @param onScreens whether a page for a screen may carry the whole file with it: only where its
 *     licence bits say that it may be installed by whoever receives it
 */
public record HouseFont(Face face, boolean onScreens) {
  /** A larger file is none for a booklet (bytes). */
  public static final int MOST_BYTES = 8 << 20;

  // Usage permissions and further bits of fsType, as OpenType 1.9 (ISO/IEC 14496-22), table OS/2,
  // lays them down.
  private static final int USE = 0xE;
  private static final int RESTRICTED = 0x2;
  private static final int NO_SUBSETTING = 0x100;
  private static final int BITMAPS_ONLY = 0x200;

  /** Letters that a font for words has. */
  private static final String LETTERS = "Hamburgefonstiv 0123456789";

  /** Why a font file cannot be used. */
  public enum Unfit {
    /** Far too large a file. */
    LARGE,
    /** No font, a broken one, or one without letters. */
    UNREADABLE,
    /** Letters drawn as PostScript outlines, which a PDF library cannot embed. */
    POSTSCRIPT,
    /** Its licence bits forbid embedding it in a document. */
    FORBIDDEN
  }

  /**
   * A file read.
   *
   * @param font absent where it cannot be used
   * @param unfit why, where it cannot
   */
  public record Read(Optional<HouseFont> font, Optional<Unfit> unfit) {
    private static Read unfit(Unfit why) {
      return new Read(Optional.empty(), Optional.of(why));
    }
  }

  /** Reads a TrueType or OpenType file. */
  public static Read read(String name, byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      return Read.unfit(Unfit.LARGE);
    }
    if (bytes.length > 4 && bytes[0] == 'O' && bytes[1] == 'T' && bytes[2] == 'T') {
      return Read.unfit(Unfit.POSTSCRIPT);
    }
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes))) {
      OS2WindowsMetricsTable metrics = font.getOS2Windows();
      if (metrics == null || font.getPostScript() == null || font.getGlyph() == null) {
        return Read.unfit(Unfit.UNREADABLE);
      }
      int use = metrics.getFsType() & USE;
      if (use == RESTRICTED || (metrics.getFsType() & BITMAPS_ONLY) != 0) {
        return Read.unfit(Unfit.FORBIDDEN);
      }
      boolean inParts = (metrics.getFsType() & NO_SUBSETTING) == 0;
      Face face = Face.of(name, bytes, inParts);
      // Everything that setting and drawing will ask of the file is asked of it once here.
      GlyphShape.of(face.set(LETTERS, 10));
      return face.missing(LETTERS).isEmpty()
          ? new Read(Optional.of(new HouseFont(face, use == 0)), Optional.empty())
          : Read.unfit(Unfit.UNREADABLE);
    } catch (IOException | RuntimeException broken) {
      return Read.unfit(Unfit.UNREADABLE);
    }
  }
}
