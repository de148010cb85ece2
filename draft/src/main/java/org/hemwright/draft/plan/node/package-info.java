/**
 * The nodes of a plan: each works out one value (a number, a point, a direction, a path, …) from
 * the slots of others.
 *
 * <p>Numbers are millimetres, radians or plain. A node keeps no state: {@code Values} holds one
 * size's values, {@code Program} the nodes in the order in which they are worked out, {@code
 * Typing} checks once that quantities fit. A value that cannot be is a {@link
 * org.hemwright.draft.plan.problem.Failure}, kept in its slot. Open {@code Node} first, then {@code
 * Program}.
 */
@NullMarked
package org.hemwright.draft.plan.node;

import org.jspecify.annotations.NullMarked;
