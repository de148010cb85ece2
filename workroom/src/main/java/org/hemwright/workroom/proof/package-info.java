/**
 * The checks, asked again after every change, beside the room's own work: what they find, where on
 * the drawing and in the text, and what she accepts with her reason.
 *
 * <p>An answer says which revision it is of; while one is being worked out for an older text no
 * other is begun, and the newest text is asked about next. Open {@link
 * org.hemwright.workroom.proof.ProofView} first.
 */
@NullMarked
package org.hemwright.workroom.proof;

import org.jspecify.annotations.NullMarked;
