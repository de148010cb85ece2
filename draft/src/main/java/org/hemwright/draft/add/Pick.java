package org.hemwright.draft.add;

import org.hemwright.geometry.Point;

/** What was pointed at. */
public sealed interface Pick {
  /** The piece it lies on; empty where it lies beside all of them. */
  String piece();

  /** A named point. */
  record OfPoint(String piece, String name) implements Pick {}

  /**
   * A place of an edge, line or curve.
   *
   * @param at where it was pointed at (mm), on it or near
   */
  record OfLine(String piece, String name, Point at) implements Pick {}

  /**
   * A place where nothing lies as yet.
   *
   * @param at in the plane of the piece, or of the table where it is no piece's (mm)
   */
  record OfPlace(String piece, Point at) implements Pick {}

  /** A piece as a whole. */
  record OfPiece(String piece) implements Pick {}
}
