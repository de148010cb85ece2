package org.hemwright.pattern.split;

import org.hemwright.geometry.Path;

/**
 * A stretch of an edge or placement line of the whole piece, from which a part has its own.
 *
 * @param edge its name on the whole piece
 * @param from where it begins along the whole's path (mm)
 * @param to where it ends along the whole's path (mm), more than {@code from}
 */
record Source(String edge, double from, double to) {
  /** All of an edge or line. */
  static Source all(String edge, Path path) {
    return new Source(edge, 0, path.length());
  }

  /** What lies between two places along this stretch (mm from its own beginning). */
  Source part(double first, double last) {
    return new Source(edge, from + first, from + last);
  }

  double length() {
    return to - from;
  }
}
