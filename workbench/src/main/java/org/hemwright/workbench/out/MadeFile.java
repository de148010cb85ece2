package org.hemwright.workbench.out;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One file of a publication.
 *
 * @param name relative, with forward slashes
 * @param reader whom it is for
 * @param bytes what it holds; not to be written to
 * @param pages how many pages it has; 0 for what has none
 */
@SuppressWarnings("ArrayRecordComponent")
public record MadeFile(String name, Reader reader, byte[] bytes, int pages) {
  /** Whom a file is for: what the maker downloads, or what helps the designer sell and judge it. */
  public enum Reader {
    MAKER,
    DESIGNER
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MadeFile file
        && name.equals(file.name)
        && reader == file.reader
        && pages == file.pages
        && Arrays.equals(bytes, file.bytes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, reader, pages, Arrays.hashCode(bytes));
  }

  @Override
  public String toString() {
    return "MadeFile[" + name + ", " + reader + ", " + bytes.length + " bytes]";
  }
}
