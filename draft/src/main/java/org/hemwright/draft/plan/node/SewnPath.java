package org.hemwright.draft.plan.node;

import org.hemwright.geometry.Path;
import org.hemwright.pattern.piece.SewnEdge;

/**
 * A path on which something is taken in, so that lengths along it are told as sewn.
 *
 * @param path as drawn
 * @param sewn what is taken in, in its direction
 */
public record SewnPath(Path path, SewnEdge sewn) {}
