/**
 * What every name in a document stands for.
 *
 * <p>There are two families, numbers and drawn things, and in each a name is given once in its
 * scope: the document, a part or a piece. Two pieces of one name have separate sizes and scopes of
 * their own; seen from outside they are one. Open {@code Scope} first, then {@code Lookup}.
 */
@NullMarked
package org.hemwright.draft.plan.name;

import org.jspecify.annotations.NullMarked;
