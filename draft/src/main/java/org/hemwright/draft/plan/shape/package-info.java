/**
 * Shapes an outline after it is drafted: darts, pivots, slash and spread, pleats, gathers.
 *
 * <p>Millimetres and radians; lengths along an edge run counter-clockwise round the piece. What is
 * named of a place refers to the outline as drafted, and all of it happens at once, so that the
 * order of lines decides nothing but which dart is pivoted first.
 *
 * <p>An edge is drawn three times over: as drafted; as sewn, with darts and pleats closed and cuts
 * spread, where it is trued into one smooth line; and as cut, where each fold is opened again and
 * the trued line is mirrored into its cap (handbook section 1, "Darts"). Parts of the piece that
 * turn or move keep every length ({@link org.hemwright.draft.plan.shape.Opening}); where they come
 * apart they are joined by {@link org.hemwright.draft.plan.shape.Joint}s. What cannot be is a
 * finding at the line that asks for it.
 *
 * <p>Open {@link org.hemwright.draft.plan.shape.ShapedOutlineNode} first, then {@link
 * org.hemwright.draft.plan.shape.ShapedEdge}.
 */
@NullMarked
package org.hemwright.draft.plan.shape;

import org.jspecify.annotations.NullMarked;
