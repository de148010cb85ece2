package org.hemwright.paper.sheet;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width of the line (mm), more than 0
 * @param dashes lengths of ink and gap in turn (mm), an even count; none for an unbroken line
 * @param ink its colour
 */
public record Pen(double width, List<Double> dashes, Ink ink) {
  public Pen {
    dashes = List.copyOf(dashes);
    if (!(width > 0)) {
      throw new IllegalArgumentException("a line has a width above 0 mm, not " + width);
    }
    if (dashes.size() % 2 != 0 || dashes.stream().anyMatch(length -> !(length > 0))) {
      throw new IllegalArgumentException("dashes are ink and gap in turn: " + dashes);
    }
  }

  /** An unbroken line. */
  public static Pen solid(double width, Ink ink) {
    return new Pen(width, List.of(), ink);
  }

  /** The same pen so many times as wide, with dashes so many times as long. */
  public Pen times(double factor) {
    return new Pen(width * factor, dashes.stream().map(length -> length * factor).toList(), ink);
  }

  /** The same pen with another ink. */
  public Pen in(Ink other) {
    return new Pen(width, dashes, other);
  }
}
