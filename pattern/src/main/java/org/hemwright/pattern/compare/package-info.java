/**
 * What changed between two versions of a pattern: two size runs in, changes out.
 *
 * <p>Millimetres and radians. A piece is found again by its name; one whose name is gone by its
 * shape, or by its number and edges. A new piece is laid on the old one before anything is
 * measured, so that a piece that only lies elsewhere in its own plane has not changed: see {@link
 * org.hemwright.pattern.compare.Laying}. A size is compared where both versions have it.
 *
 * <p>Lengths within a hundredth of a millimetre are the same, cut lines within what is printed as
 * one line. Nothing is judged here, and nothing is read or drawn.
 *
 * <p>Open {@link org.hemwright.pattern.compare.Comparison} first.
 */
@NullMarked
package org.hemwright.pattern.compare;

import org.jspecify.annotations.NullMarked;
