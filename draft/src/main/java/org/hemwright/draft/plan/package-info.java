/**
 * A document becomes a plan once, and the plan gives the values of every size.
 *
 * <p>{@code Plan.of} resolves names in two families and their scopes, checks quantities, finds
 * cycles and fixes which pieces and edges there are, over the whole document and before any size.
 * What is wrong is told all at once, and the rest is planned all the same. {@code Plan.evaluate}
 * fills the values: lengths in millimetres, angles in radians. A value that cannot be makes what
 * depends on it unknown; only the first cause is told, sizes grouped. Work is counted, never timed.
 *
 * <p>Nothing here reads a file or keeps a state between calls. Open {@link
 * org.hemwright.draft.plan.Plan} first, then {@link org.hemwright.draft.plan.Evaluation}.
 */
@NullMarked
package org.hemwright.draft.plan;

import org.jspecify.annotations.NullMarked;
