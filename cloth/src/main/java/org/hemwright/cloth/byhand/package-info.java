/**
 * Layings that the designer arranged by hand, kept in her folder as a table that a person can read,
 * and taken for the search's own wherever they still hold.
 *
 * <p>Millimetres, on the table as {@link org.hemwright.cloth.rule} has it. A laying by hand is held
 * against the same rules as every other, by the exact checker; one that holds no longer is told and
 * not used. Nothing is moved silently: {@link org.hemwright.cloth.byhand.HandMoves} says where a
 * piece came to lie, and why not where it was put. Open {@link
 * org.hemwright.cloth.byhand.OwnLayings} first.
 */
@NullMarked
package org.hemwright.cloth.byhand;

import org.jspecify.annotations.NullMarked;
