/**
 * Points, curves, paths and outlines; knows nothing of sewing.
 *
 * <p>Lengths are millimetres, angles radians, x runs right and y up. All values are immutable. What
 * cannot be is refused with a {@link org.hemwright.geometry.GeometryProblem}. Open {@link
 * org.hemwright.geometry.Path} first.
 */
@NullMarked
package org.hemwright.geometry;

import org.jspecify.annotations.NullMarked;
