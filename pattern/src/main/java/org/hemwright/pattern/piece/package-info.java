/**
 * One pattern piece in one size: edges, corners, allowances, notches and marks, on the stitch line,
 * counter-clockwise. Open Piece first.
 */
@NullMarked
package org.hemwright.pattern.piece;

import org.jspecify.annotations.NullMarked;
