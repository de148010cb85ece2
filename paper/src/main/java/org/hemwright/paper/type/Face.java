package org.hemwright.paper.type;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A weight or style of the one family on our papers, Source Sans Pro (SIL Open Font License 1.1,
 * from the artifact {@code ph-fonts-source-sans-pro}). Its ordinary figures are tabular: all of one
 * width.
 */
public enum Face {
  /** Running text. */
  REGULAR("Regular"),
  /** Titles and size labels. */
  SEMIBOLD("SemiBold"),
  /** Large words that should stay quiet. */
  LIGHT("Light"),
  /** Asides. */
  ITALIC("Italic");

  private static final String FOLDER = "/fonts/ttf/SourceSansPro/SourceSansPro-";

  private final String style;

  Face(String style) {
    this.style = style;
  }

  /** Points to a millimetre. */
  public static final double POINTS_PER_MM = 72 / 25.4;

  /** The height of a capital letter, as a share of the size. */
  public static final double CAPITAL = 0.66;

  /** How far letters such as g reach below the line, as a share of the size. */
  public static final double DESCENT = 0.21;

  /** From one line to the next, as a share of the size. */
  public static final double LEADING = 1.25;

  /** The font file's bytes, whole. */
  public byte[] bytes() {
    try (InputStream in = Face.class.getResourceAsStream(FOLDER + style + ".ttf")) {
      if (in == null) {
        throw new IOException("the font " + style + " is not on the class path");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The font parsed anew, with glyph substitution off, since words are set here. */
  public TrueTypeFont open() {
    try {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes()));
      font.setEnableGsub(false);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One line of words in this face. */
  public SetLine set(String text, double points) {
    return Typesetter.of(this).set(text, points);
  }

  /** The characters of a text that this face cannot show, each once, in order. */
  public List<String> missing(String text) {
    return Typesetter.of(this).missing(text);
  }

  /** A size in points as millimetres. */
  public static double mm(double points) {
    return points / POINTS_PER_MM;
  }
}
