/**
 * Sheets, nests, pages and their PDF, SVG and PNG writers, and the two checks that must know how
 * things are drawn: {@link org.hemwright.paper.LinesApartCheck} and {@link
 * org.hemwright.paper.nest.WordsFitCheck}.
 *
 * <p>Millimetres on the sheet. Open {@link org.hemwright.paper.Paper} first.
 */
@NullMarked
package org.hemwright.paper;

import org.jspecify.annotations.NullMarked;
