/**
 * Construction: what the steps of a making do to the cloth, followed from the first to the last.
 *
 * <p>{@link org.hemwright.pattern.construction.Assembly} follows the steps of one view in one size.
 * Cloth is known by its cut copies ({@link org.hemwright.pattern.construction.Part}) and the sides
 * of their edges ({@link org.hemwright.pattern.construction.Strip}); a seam is sewn in passes
 * ({@link org.hemwright.pattern.construction.Pass}), one for a left and one for a right. Of each
 * step it says what was sewn and which edges it dealt with ({@link
 * org.hemwright.pattern.construction.Done}); thread is counted from that. Where a step cannot be
 * done, comes too late, or is missing, it notes a {@link
 * org.hemwright.pattern.construction.Trouble}; the checks tell them.
 *
 * <p>A making is followed once for a size: its {@link org.hemwright.pattern.construction.Assembly}
 * is the record that every question is answered from.
 *
 * <p>A step's choice of stitches counts as each of them in turn. Lengths are millimetres. It
 * refuses nothing: a step that makes no sense is a trouble, and the rest is followed as if it had
 * been done. Open {@link org.hemwright.pattern.construction.Assembly} first.
 */
@NullMarked
package org.hemwright.pattern.construction;

import org.jspecify.annotations.NullMarked;
