/**
 * What is added by pointing, told as lines of the document: the ways that the language has to say a
 * point, a line, a curve, a notch, a seam or a piece by what was pointed at.
 *
 * <p>A way is a whole new text; all bytes that stood there stay. Lengths in it are rounded to the
 * step of the document's unit, so that a thing may lie up to half a step from where it was pointed
 * at. Millimetres in the plane of the piece. Pure: nothing here keeps a state or reads a file.
 *
 * <p>It does not judge what it writes: whoever offers a way drafts it first. Open {@link
 * org.hemwright.draft.add.Adding} first, then {@link org.hemwright.draft.add.Pick}.
 */
@NullMarked
package org.hemwright.draft.add;

import org.jspecify.annotations.NullMarked;
