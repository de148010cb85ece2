/**
 * The words on paper: what a piece says of itself, lengths in both units, sizes as one says them.
 *
 * <p>Words follow the document's setting for units and spelling. Blanks inside a length do not
 * break. Open {@link org.hemwright.paper.words.PieceWords} first.
 */
@NullMarked
package org.hemwright.paper.words;

import org.jspecify.annotations.NullMarked;
