package org.hemwright.paper.type;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * A face in which words are set. The four of our papers are of one family, Source Sans Pro (SIL
 * Open Font License 1.1, from the artifact {@code ph-fonts-source-sans-pro}), whose ordinary
 * figures are tabular: all of one width. A house may bring faces of its own; see {@link HouseFont}.
 */
public final class Face {
  private static final String FOLDER = "/fonts/ttf/SourceSansPro/SourceSansPro-";

  /** Running text. */
  public static final Face REGULAR = ours("Regular");

  /** Titles and size labels. */
  public static final Face SEMIBOLD = ours("SemiBold");

  /** Large words that should stay quiet. */
  public static final Face LIGHT = ours("Light");

  /** Asides. */
  public static final Face ITALIC = ours("Italic");

  /** The faces of our own family. */
  public static final List<Face> OURS = List.of(REGULAR, SEMIBOLD, LIGHT, ITALIC);

  /** Points to a millimetre. */
  public static final double POINTS_PER_MM = 72 / 25.4;

  /** The height of a capital letter, as a share of the size. */
  public static final double CAPITAL = 0.66;

  /** How far letters such as g reach below the line, as a share of the size. */
  public static final double DESCENT = 0.21;

  /** From one line to the next, as a share of the size. */
  public static final double LEADING = 1.25;

  private final String name;
  private final Font font;
  private final boolean inParts;
  private @Nullable Typesetter typesetter;

  /** Where a font file's bytes come from. */
  private interface Font {
    byte[] bytes() throws IOException;
  }

  private Face(String name, Font font, boolean inParts) {
    this.name = name;
    this.font = font;
    this.inParts = inParts;
  }

  private static Face ours(String style) {
    return new Face(
        style,
        () -> {
          try (InputStream in = Face.class.getResourceAsStream(FOLDER + style + ".ttf")) {
            if (in == null) {
              throw new IOException("the font " + style + " is not on the class path");
            }
            return in.readAllBytes();
          }
        },
        true);
  }

  /** A face that a house brings; its file has been found sound. */
  static Face of(String name, byte[] bytes, boolean inParts) {
    return new Face(name, bytes::clone, inParts);
  }

  /** Whether a file may hold those of its letters alone that it uses. */
  public boolean inParts() {
    return inParts;
  }

  /** The font file's bytes, whole. */
  public byte[] bytes() {
    try {
      return font.bytes();
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
    return typesetter().set(text, points);
  }

  /** The characters of a text that this face cannot show, each once, in order. */
  public List<String> missing(String text) {
    return typesetter().missing(text);
  }

  /** What sets lines in this face, opened once. */
  synchronized Typesetter typesetter() {
    if (typesetter == null) {
      typesetter = Typesetter.of(this);
    }
    return typesetter;
  }

  /** A size in points as millimetres. */
  public static double mm(double points) {
    return points / POINTS_PER_MM;
  }

  @Override
  public String toString() {
    return name;
  }
}
