package org.hemwright.pattern.piece;

import org.hemwright.geometry.Point;

/**
 * Where one edge ends and the next begins.
 *
 * @param before the name of the edge that ends here, in the direction of the outline
 * @param after the name of the edge that begins here
 * @param point the corner, on the stitch line
 * @param finish how the cut line turns
 */
public record Corner(String before, String after, Point point, CornerFinish finish) {}
