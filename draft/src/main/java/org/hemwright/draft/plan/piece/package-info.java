/**
 * A piece as nodes: its outline put together from edges, then allowances, corners, notches, grain
 * and marks, and last the {@link org.hemwright.pattern.piece.Piece} itself.
 *
 * <p>Edges may be named in either sense round the piece and drawn in either direction; {@code
 * OutlineNode} turns them so that they join and run counter-clockwise, and refuses a gap wider than
 * {@link org.hemwright.geometry.Tolerance#SAME_POINT}. Open {@code OutlineNode} first, then {@code
 * PieceNode}.
 */
@NullMarked
package org.hemwright.draft.plan.piece;

import org.jspecify.annotations.NullMarked;
