/**
 * Answers to a maker who asks which size to cut: from her measurements and the run alone, with
 * every number that was used.
 *
 * <p>Lengths in millimetres, stretch as a share. The size is chosen by the measurement that the
 * garment leaves least room for; a measurement that she does not give is left out, never guessed.
 *
 * <p>Open {@link org.hemwright.workbench.advise.Advising} first.
 */
@NullMarked
package org.hemwright.workbench.advise;

import org.jspecify.annotations.NullMarked;
