/**
 * What was pinned out or let out of sewn samples, and whether the document has changed there since.
 *
 * <p>Millimetres. An entry names a place, as {@code measure} names it, and how long that was
 * drafted when the sample was cut; what it is now is measured in the run, so that the answer needs
 * nothing but the folder. An entry without that length is answered "not known", never guessed.
 *
 * <p>Open {@link org.hemwright.pattern.sample.SampleAnswers} first.
 */
@NullMarked
package org.hemwright.pattern.sample;

import org.jspecify.annotations.NullMarked;
