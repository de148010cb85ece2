/**
 * The domain: what a sewing pattern is, apart from how it is written, checked, laid or printed.
 *
 * <p>Everything here is an immutable value: millimetres, radians and plain ratios inside, x to the
 * right and y up in the piece's own plane. A {@link org.hemwright.pattern.Pattern} holds what is
 * the same in every size; a {@link org.hemwright.pattern.SizedPattern} holds the pieces and seams
 * of one size; a {@link org.hemwright.pattern.SizeRun} is a pattern with all its sizes, and is what
 * every later stage (checks, cloth, paper, booklet) reads. Nothing here reads a file or judges a
 * pattern.
 *
 * <p>Open {@link org.hemwright.pattern.SizeRun} first, then {@link
 * org.hemwright.pattern.piece.Piece}.
 */
@NullMarked
package org.hemwright.pattern;

import org.jspecify.annotations.NullMarked;
