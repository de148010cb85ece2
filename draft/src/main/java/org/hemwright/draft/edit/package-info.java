/**
 * What a designer takes hold of on the drawing, told as changes of the text: which numbers of hers
 * a drag changes, and to what.
 *
 * <p>A drag changes the literals of the statement that says the thing, or else of a dial or {@code
 * let} that this statement names, or else adds legs to it ({@code then right 3 mm}); values are
 * rounded to the step of the unit that she wrote (see {@link
 * org.hemwright.draft.syntax.LiteralEdit}). All other bytes of the text stay. Millimetres in the
 * plane of the piece. Pure: nothing here keeps a state or reads a file.
 *
 * <p>It refuses to hold what has no number of hers to change. Open {@link
 * org.hemwright.draft.edit.Grips} first, then {@link org.hemwright.draft.edit.Drag}.
 */
@NullMarked
package org.hemwright.draft.edit;

import org.jspecify.annotations.NullMarked;
