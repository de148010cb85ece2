package org.hemwright.cloth.laying;

import java.util.List;

/**
 * All shapes of a problem in their places.
 *
 * @param length how much of the strip is used, from x = 0, in the problem's unit; positive
 * @param placements one for each copy of each shape
 */
public record Layout(double length, List<Placement> placements) {

  public Layout {
    placements = List.copyOf(placements);
    if (!Double.isFinite(length) || length <= 0) {
      throw new IllegalArgumentException("a layout of length " + length + " holds nothing");
    }
  }

  /** The share of the used strip that the shapes cover, 0 to 1. */
  public double density(StripProblem problem) {
    return problem.totalArea() / (problem.stripWidth() * length);
  }
}
