package org.hemwright.pattern.piece;

/**
 * An edge of a piece that has been opened over its fold.
 *
 * @param edge the edge as it lies on the opened piece: the path runs counter-clockwise round the
 *     whole, the name is that of the drawing
 * @param mirrored whether it lies on the half that is not drawn
 */
public record OpenedEdge(Edge edge, boolean mirrored) {}
