/**
 * Nodes of traced pieces: an outline taken from a drawing and graded, and what lies on and in it,
 * carried from the drawing to each size.
 *
 * <p>What the drawing holds is the same in every size, and is taken from it once, while the plan is
 * made; a node only grades. Millimetres, y upward, where the drawing had it.
 *
 * <p>Open {@link org.hemwright.draft.plan.trace.TracedShapeNode} first.
 */
@NullMarked
package org.hemwright.draft.plan.trace;

import org.jspecify.annotations.NullMarked;
