/**
 * Moments that the designer gave a name, compared with how things stand: what changed in words, and
 * each changed piece with its old line against the new. Going back to one is an edit like any
 * other, and can be undone.
 *
 * <p>The texts of a moment are worked out from the history, last revision first. Open {@link
 * org.hemwright.workroom.moments.MomentsView} first.
 */
@NullMarked
package org.hemwright.workroom.moments;

import org.jspecify.annotations.NullMarked;
