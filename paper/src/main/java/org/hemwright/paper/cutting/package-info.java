/**
 * Cutting layouts drawn for the booklet: the cloth on the table with every piece in its place.
 *
 * <p>Millimetres on paper, far smaller than life; the cloth's cut end lies to the left, its fold
 * below. The convention (handbook section 5, Drawing convention; common practice): the cloth's
 * wrong side is tinted and hatched, a piece with its printed side up is white, with its printed
 * side down shaded and hatched, a fold is a line of long and short dashes, a selvedge a double
 * line. A half that is cut as a whole shows, in thin dashes, where it is turned over. A number
 * keeps off every cut line; where a piece is too small for it, it stands beside the piece with a
 * line to a dot on it. All of it is told apart in black and white, and a key says what is what.
 * Nothing is refused: rows that do not fit are not asked for. Open {@link
 * org.hemwright.paper.cutting.LayingSheets} first.
 */
@NullMarked
package org.hemwright.paper.cutting;

import org.jspecify.annotations.NullMarked;
