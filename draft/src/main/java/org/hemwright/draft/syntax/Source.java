package org.hemwright.draft.syntax;

import java.util.Arrays;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.TextEdit;

/**
 * A text and its lines: turns an offset into the line and column that a person reads.
 *
 * <p>A line ends at {@code \n}, {@code \r\n} or {@code \r}. Offsets and columns are UTF-16 units. A
 * byte order mark at the start belongs to no line.
 */
public final class Source {
  private final String file;
  private final String text;
  private final int[] lineStarts;

  /** The text of {@code file}, as the reader knows it. */
  public Source(String file, String text) {
    this.file = file;
    this.text = text;
    this.lineStarts = lineStarts(text);
  }

  /** The text of a document. */
  public static Source of(Document document) {
    return new Source(document.file(), document.text());
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[16];
    starts[0] = text.startsWith("\ufeff") ? 1 : 0;
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends =
          c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
      if (ends) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, 2 * count);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  /** The file's name. */
  public String file() {
    return file;
  }

  /** All of it. */
  public String text() {
    return text;
  }

  /** The text of a span. */
  public String text(Span span) {
    return text.substring(span.start(), span.end());
  }

  /** How many lines; a text that ends with a line end has an empty last line. */
  public int lines() {
    return lineStarts.length;
  }

  /** The offset at which a line starts; lines count from 1. */
  public int lineStart(int line) {
    return lineStarts[line - 1];
  }

  /** The offset after a line's last character, before its line end; lines count from 1. */
  public int lineEnd(int line) {
    int end = line == lineStarts.length ? text.length() : lineStarts[line];
    while (end > lineStart(line)
        && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }

  /** The line of an offset from 0 to the text's length; lines count from 1. */
  public int line(int offset) {
    int found = Arrays.binarySearch(lineStarts, Math.max(offset, lineStarts[0]));
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** Line and column of an offset from 0 to the text's length. */
  public Origin origin(int offset) {
    int line = line(offset);
    return new Origin(file, line, Math.max(0, offset - lineStart(line)) + 1);
  }

  /** Where a span starts. */
  public Origin origin(Span span) {
    return origin(span.start());
  }

  /** A change of what stands at a span. */
  public TextEdit replace(Span span, String replacement) {
    return new TextEdit(file, span.start(), span.end() - span.start(), replacement);
  }
}
