/**
 * Cutting layouts drawn for the booklet: the cloth on the table with every piece in its place.
 *
 * <p>Millimetres on paper, far smaller than life; the cloth's cut end lies to the left, its fold
 * below. The convention (handbook section 5, Drawing convention; common practice): the cloth's
 * wrong side is tinted and hatched, a piece with its printed side up is white, with its printed
 * side down shaded and hatched, a fold is a line of long and short dashes, a selvedge a double
 * line. All of it is told apart in black and white, and a key says what is what. Open {@link
 * org.hemwright.paper.cutting.LayingPictures} first.
 */
@NullMarked
package org.hemwright.paper.cutting;

import org.jspecify.annotations.NullMarked;
