/**
 * Finds room for words inside a drawing, and sets words in blocks that may go there.
 *
 * <p>A {@link org.hemwright.paper.label.Room} knows an area and the lines in it and finds the place
 * for a box, upright or turned, that touches none of them; a {@link
 * org.hemwright.paper.label.TextBlock} is words set in lines. Millimetres. Places are found on a
 * grid of a millimetre, so that the answer is the same on every machine. Open {@code Room} first.
 */
@NullMarked
package org.hemwright.paper.label;

import org.jspecify.annotations.NullMarked;
