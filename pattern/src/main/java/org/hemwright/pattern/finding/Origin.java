package org.hemwright.pattern.finding;

/**
 * A place in a text file.
 *
 * @param file the file's name as the reader knows it, such as {@code pattern.hem}
 * @param line from 1
 * @param column from 1, in UTF-16 units
 */
public record Origin(String file, int line, int column) implements Comparable<Origin> {
  public Origin {
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("lines and columns count from 1: " + line + ":" + column);
    }
  }

  @Override
  public int compareTo(Origin other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
