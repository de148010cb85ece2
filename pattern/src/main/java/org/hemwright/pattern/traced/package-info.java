/**
 * Outlines that were drawn elsewhere: lines with their names, exact, in millimetres with y upward,
 * wherever they lay on the drawing.
 *
 * <p>Nothing here says what a line is for. The pattern document says it, by the names that the
 * designer gave her layers and lines; see the traced pieces of {@code draft}. How an outline grows
 * from size to size is said here: by outlines drawn for several sizes, or by rule.
 *
 * <p>The card that straightens a photograph of a paper piece is measured here too, for those who
 * print it and those who find it.
 *
 * <p>Open {@link org.hemwright.pattern.traced.TracedDrawing} first.
 */
@NullMarked
package org.hemwright.pattern.traced;

import org.jspecify.annotations.NullMarked;
