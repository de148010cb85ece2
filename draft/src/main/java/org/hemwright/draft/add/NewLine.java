package org.hemwright.draft.add;

/**
 * A line that is to stand in the document.
 *
 * @param place after which lines of its like
 * @param text without its indent
 */
record NewLine(Place place, String text) {
  /** Where a line belongs. */
  enum Place {
    /** With the points of the piece. */
    POINT,
    /** With its lines and curves. */
    PATH,
    /** With its notches. */
    NOTCH,
    /** With the numbers of the piece. */
    NUMBER,
    /** After the other numbers, at the left edge. */
    LEFT_NUMBER,
    /** After the other seams, at the left edge. */
    SEAM,
    /** After the other pieces, at the left edge. */
    PIECE,
    /** After the other views, at the left edge. */
    VIEW,
    /** Under the new line at the left edge. */
    UNDER
  }
}
