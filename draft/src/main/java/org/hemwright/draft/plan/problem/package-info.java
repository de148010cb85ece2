/**
 * What is told when a document cannot be planned or evaluated: {@code Problems} collects findings
 * over the text, {@code Failure} says why one value could not be worked out in one size.
 */
@NullMarked
package org.hemwright.draft.plan.problem;

import org.jspecify.annotations.NullMarked;
