/**
 * A piece as it was and as it is, one laid on the other, to look at.
 *
 * <p>Takes a piece that a comparison found again and gives a sheet in millimetres, in the plane of
 * the old piece, turned so that its grain points upward. What lies between the two cut lines is
 * tinted, and where they lie farthest apart is measured. Open {@link
 * org.hemwright.paper.overlay.Overlay} first.
 */
@NullMarked
package org.hemwright.paper.overlay;

import org.jspecify.annotations.NullMarked;
