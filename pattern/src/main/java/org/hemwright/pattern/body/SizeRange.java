package org.hemwright.pattern.body;

/**
 * Neighbouring sizes of a chart, both ends included.
 *
 * @param first the smallest
 * @param last the largest; at or after the first
 */
public record SizeRange(Size first, Size last) {
  public SizeRange {
    if (first.position() > last.position()) {
      throw new IllegalArgumentException(
          "a range of sizes runs upward: " + first.name() + " to " + last.name());
    }
  }

  /** Whether a size lies in the range. */
  public boolean contains(Size size) {
    return first.position() <= size.position() && size.position() <= last.position();
  }

  /** Whether two ranges share a size. */
  public boolean meets(SizeRange other) {
    return first.position() <= other.last.position() && other.first.position() <= last.position();
  }
}
