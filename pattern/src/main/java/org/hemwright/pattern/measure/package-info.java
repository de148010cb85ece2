/**
 * What a size run measures: lengths of edges and seams at the stitch line, areas, finished girths,
 * elastics.
 *
 * <p>Millimetres and square millimetres, unrounded, by size name in the chart's order; a size that
 * lacks a piece lacks its values. Nothing here is judged: checks do that. Open {@link
 * org.hemwright.pattern.measure.Measurements} first; {@link org.hemwright.pattern.measure.SeamWalk}
 * walks one seam.
 */
@NullMarked
package org.hemwright.pattern.measure;

import org.jspecify.annotations.NullMarked;
