/**
 * Drawings in SVG, as any drawing program saves them: their lines become a {@link
 * org.hemwright.pattern.traced.TracedDrawing}, exact, in millimetres, y upward.
 *
 * <p>Read are paths and all basic shapes, groups, layers, symbols and {@code use}, transforms, view
 * boxes, units, and style rules as far as they hide things. Straight stretches stay straight,
 * quadratic and cubic curves are kept exactly, arcs become cubics within {@link
 * org.hemwright.geometry.Tolerance#ARC}. Words, pictures and whatever else is no line are listed.
 *
 * <p>A file can reach nothing: entities, other files and style sheets from elsewhere are refused,
 * as are files that are too large, too deep, or made to grow; each in a finding. Work is capped by
 * count, so that any file is read or refused in two seconds.
 *
 * <p>Open {@link org.hemwright.exchange.drawing.DrawingReader} first.
 */
@NullMarked
package org.hemwright.exchange.drawing;

import org.jspecify.annotations.NullMarked;
