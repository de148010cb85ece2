package org.hemwright.draft.plan;

import org.hemwright.pattern.piece.PieceCard;

/**
 * A piece as planned.
 *
 * @param card what it says of itself
 * @param slot the slot of the piece
 */
record PiecePlan(PieceCard card, int slot) {}
