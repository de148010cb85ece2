package org.hemwright.draft.edit;

/** What is taken hold of. */
public sealed interface Held {
  /** The piece it lies on. */
  String piece();

  /** A named point. */
  record OfPoint(String piece, String point) implements Held {}

  /**
   * A notch.
   *
   * @param number its place among the piece's notches, from 0
   */
  record OfNotch(String piece, int number) implements Held {}

  /**
   * A place of an edge or a path.
   *
   * @param line the edge's or path's name
   * @param share how far along it, 0 at its start to 1 at its end
   */
  record OfLine(String piece, String line, double share) implements Held {
    public OfLine {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException("a share of a line lies from 0 to 1, not " + share);
      }
    }
  }
}
