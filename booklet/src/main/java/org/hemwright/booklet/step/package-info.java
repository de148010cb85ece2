/**
 * The steps in words: what to lay on what, how it is sewn and pressed, what to look at.
 *
 * <p>Sentences come from the message files; here is only which sentence says a step, and what fills
 * its places. Open {@link org.hemwright.booklet.step.StepWords} first.
 */
@NullMarked
package org.hemwright.booklet.step;

import org.jspecify.annotations.NullMarked;
