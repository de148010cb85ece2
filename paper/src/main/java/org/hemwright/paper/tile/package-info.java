/**
 * Cuts a big sheet into the pages that a home printer or a copy shop prints.
 *
 * <p>A page shows a window of the sheet inside a frame that keeps clear of the paper's edge. Pages
 * that hold no part of a piece are left out. Row letters run downward, column numbers to the right.
 * Where two printed pages meet, a numbered diamond lies half on each.
 *
 * <p>The frame of 190 × 254 mm lies centred on a page of 210 × 279.4 mm: the width of A4 and the
 * height of Letter, the largest page that both papers hold. On either it keeps 10 mm and more from
 * every edge; and since one of its sides is the paper's own, a printer that fits the page to the
 * sheet against our request still prints it at its true size on a borderless sheet. Open {@link
 * org.hemwright.paper.tile.GroupSheet} first.
 */
@NullMarked
package org.hemwright.paper.tile;

import org.jspecify.annotations.NullMarked;
