/**
 * How lines look on paper: inks, pens, and the style that tells one size from another.
 *
 * <p>Widths are millimetres. A cut line is 0.6 mm, a stitch line 0.3 mm and dashed, inner lines
 * 0.25 mm, words 9 points or more. Sizes are told apart by their dashes and by the labels on them;
 * colour comes second. Open {@link org.hemwright.paper.style.SizeStyles} first.
 */
@NullMarked
package org.hemwright.paper.style;

import org.jspecify.annotations.NullMarked;
