/**
 * A piece in every size of a group, stacked and drawn as the maker cuts it (handbook section 6).
 *
 * <p>Takes pieces from a size run with their cut lines, moves their stack points to one point,
 * turns the grain upward and draws: cut lines told apart by size, one line where sizes coincide,
 * notches, fold, hem and stitch lines, marks, and the words that a piece carries, set inside it
 * where they fit. Millimetres; the stack point is the origin. It judges nothing but whether words
 * fit, which is a finding. Open {@link org.hemwright.paper.nest.Nest} first, then {@link
 * org.hemwright.paper.nest.PieceDrawing}.
 */
@NullMarked
package org.hemwright.paper.nest;

import org.jspecify.annotations.NullMarked;
