/**
 * A seam walked: its second layer rolled along its first, stitch line on stitch line, as one trues
 * a pattern on the table.
 *
 * <p>Both layers are walked the same length at each step, so that what is left at the end is what
 * one is longer than the other, and notches are seen to meet or not. Millimetres in the planes of
 * the pieces, angles in radians. Open {@link org.hemwright.workroom.walk.WalkView} first.
 */
@NullMarked
package org.hemwright.workroom.walk;

import org.jspecify.annotations.NullMarked;
