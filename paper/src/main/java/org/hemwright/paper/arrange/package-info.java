/**
 * Lays pieces on one big sheet of paper so that few pages need printing.
 *
 * <p>A sheet is a grid of tiles; x runs right from its left edge, y up, its top edge is y = 0. The
 * pieces are laid one after the other, each where it needs the fewest pages that are not in use
 * yet, in several orders, on several widths and with several turns; the best result is kept. No
 * chance is involved. Pieces never touch. Open {@link org.hemwright.paper.arrange.Arranger} first.
 */
@NullMarked
package org.hemwright.paper.arrange;

import org.jspecify.annotations.NullMarked;
