/**
 * One pattern piece in one size: edges, corners, allowances, notches and marks on the stitch line,
 * and what follows from them on the cloth: the cut line, notches on it, hem fold lines, and the
 * piece opened over its fold.
 *
 * <p>Millimetres and radians, x right and y up in the piece's own plane; lines round a piece run
 * counter-clockwise, the inside to their left. A cut line keeps within 0.05 mm of the true offset,
 * is simple, and comes out alike on every machine; it is built from the edges' own curves.
 *
 * <p>{@link org.hemwright.pattern.piece.AddedAllowance} works in four steps:
 *
 * <ol>
 *   <li>each edge's stitch line is moved outward by its allowance;
 *   <li>at each corner the two lines are trimmed, run on, or joined as the finish says; a
 *       turned-back allowance gets its neighbour's cut line, folded out over the edge;
 *   <li>the parts are put together, and loops within an allowance are cut off;
 *   <li>what crosses itself still, or is nearer to its stitch line than the allowance, is refused.
 * </ol>
 *
 * <p>It refuses, with findings and never with an exception: allowances that leave an edge no room,
 * cut lines of two edges that run through one another, hems that bend more sharply than they are
 * deep, turn-unders deeper than their hem.
 *
 * <p>Open {@link org.hemwright.pattern.piece.Piece} first, then {@link
 * org.hemwright.pattern.piece.AddedAllowance} and {@link org.hemwright.pattern.piece.OpenedPiece}.
 */
@NullMarked
package org.hemwright.pattern.piece;

import org.jspecify.annotations.NullMarked;
