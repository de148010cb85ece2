package org.hemwright.booklet.leaf;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A picture file of the designer's.
 *
 * @param name {@code pictures/waist_seam.png}
 * @param kind what the file is
 * @param bytes not to be written to
 */
@SuppressWarnings("ArrayRecordComponent")
public record Picture(String name, Kind kind, byte[] bytes) {
  /** The kinds of picture that are taken. */
  public enum Kind {
    PNG("image/png"),
    JPEG("image/jpeg"),
    SVG("image/svg+xml");

    private final String mime;

    Kind(String mime) {
      this.mime = mime;
    }

    /** The ending of its files. */
    public String ending() {
      return this == JPEG ? "jpg" : name().toLowerCase(Locale.ROOT);
    }

    /** As browsers call it. */
    public String mime() {
      return mime;
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Picture picture
        && name.equals(picture.name)
        && kind == picture.kind
        && Arrays.equals(bytes, picture.bytes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, kind, Arrays.hashCode(bytes));
  }

  @Override
  public String toString() {
    return "Picture[" + name + ", " + bytes.length + " bytes]";
  }
}
