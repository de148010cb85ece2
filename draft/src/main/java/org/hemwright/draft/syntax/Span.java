package org.hemwright.draft.syntax;

/**
 * A stretch of the document's text, in UTF-16 units.
 *
 * @param start from 0
 * @param end after the last unit; at or after start
 */
public record Span(int start, int end) {
  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("a span runs forward: " + start + ".." + end);
    }
  }

  /** From the start of this one to the end of the other. */
  public Span to(Span other) {
    return new Span(start, Math.max(end, other.end));
  }
}
