/**
 * A piece cut apart into parts that are sewn together again, for cloth that is too narrow for the
 * whole of it.
 *
 * <p>{@link org.hemwright.pattern.split.Divided} makes the parts of one piece in one size:
 * stretches of its edges under their own names, and new edges along the line of the cut, with the
 * allowance and a notch that the designer's {@link org.hemwright.pattern.piece.Mark.Split} asks
 * for. A part in work knows of every edge from which stretch of the whole piece it comes; so what
 * the whole says of its corners, notches, openings and intakes can be said of the parts.
 *
 * <p>{@link org.hemwright.pattern.split.SplitRun} is a pure function from a run and some splits to
 * an ordinary run: the parts stand in the place of the piece, seams run along the parts, the seam
 * that joins them comes first, and a step of making sews it before the piece is used.
 *
 * <p>Millimetres, in the piece's own plane. Nothing is moved: the parts lie where the piece lay. A
 * cut that cannot be made is a finding. Open {@link org.hemwright.pattern.split.SplitRun} first.
 */
@NullMarked
package org.hemwright.pattern.split;

import org.jspecify.annotations.NullMarked;
