/**
 * Notions: thread, elastic, zips, tapes, buttons and needles that the steps of a view take in one
 * size.
 *
 * <p>Everything comes from the steps and the pieces; nothing is stated twice. Thread is a range,
 * since the known methods disagree (handbook section 7); waste, tails and the spools on sale are
 * settings. Lengths are millimetres. Where a step gives a choice of stitches, the least is that of
 * the choice that takes least. Open {@link org.hemwright.pattern.notion.Notions} first.
 */
@NullMarked
package org.hemwright.pattern.notion;

import org.jspecify.annotations.NullMarked;
