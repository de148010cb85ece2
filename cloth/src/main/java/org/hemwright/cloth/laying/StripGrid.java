package org.hemwright.cloth.laying;

import java.util.List;

/**
 * The integer grid on which the search works: at least 2<sup>30</sup> steps across the strip. Where
 * all coordinates are decimals of few digits the step is a whole fraction of the last digit, so
 * that they lie on the grid exactly and shapes that fit exactly still do; elsewhere each is rounded
 * by at most half a step.
 */
final class StripGrid {

  private static final double FINE = 0x1p30;
  private static final double FINEST = 0x1p34;

  private final double stripWidth;
  private final double stepsPerUnit;
  private final boolean exact;

  private StripGrid(double stripWidth, double stepsPerUnit, boolean exact) {
    this.stripWidth = stripWidth;
    this.stepsPerUnit = stepsPerUnit;
    this.exact = exact;
  }

  static StripGrid of(double stripWidth, List<LooseShape> shapes) {
    double power = 1;
    for (int digits = 0; digits <= 9 && stripWidth * power <= FINEST; digits++, power *= 10) {
      if (allWhole(stripWidth, shapes, power)) {
        double steps = power;
        while (stripWidth * steps < FINE) {
          steps *= 2;
        }
        return new StripGrid(stripWidth, steps, quarterTurnsOnly(shapes));
      }
    }
    return new StripGrid(stripWidth, 0, false);
  }

  static StripGrid of(StripProblem problem) {
    return of(problem.stripWidth(), problem.shapes());
  }

  private static boolean allWhole(double stripWidth, List<LooseShape> shapes, double power) {
    if (!whole(stripWidth, power)) {
      return false;
    }
    for (LooseShape shape : shapes) {
      for (Spot corner : shape.outline()) {
        if (!whole(corner.x(), power) || !whole(corner.y(), power)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean whole(double value, double power) {
    return Math.rint(value * power) / power == value;
  }

  private static boolean quarterTurnsOnly(List<LooseShape> shapes) {
    return shapes.stream()
        .flatMap(shape -> shape.turns().stream())
        .allMatch(turn -> turn.degrees() % 90 == 0);
  }

  /** The grid line nearest to a coordinate. */
  long toGrid(double value) {
    return (long) Math.rint(steps(value));
  }

  /** The same, not rounded. */
  double steps(double value) {
    return stepsPerUnit > 0 ? value * stepsPerUnit : value / stripWidth * FINE;
  }

  /** The coordinate of a grid line. */
  double toUnit(double line) {
    return stepsPerUnit > 0 ? line / stepsPerUnit : line / FINE * stripWidth;
  }

  /** The strip's width, in steps. */
  long width() {
    return toGrid(stripWidth);
  }

  /** How far a shape may stand over the strip's edge because its corners were rounded, in steps. */
  long slack() {
    return exact ? 0 : 2;
  }
}
