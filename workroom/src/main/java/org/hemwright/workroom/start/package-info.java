/**
 * The page before a folder is open: folders that were opened last, sound blocks to begin a garment
 * with, whole garments to look at. And, once one is open, the way back to that page and whether the
 * designer was shown round.
 *
 * <p>It opens nothing itself but asks a {@link org.hemwright.workroom.start.Opener}. Nothing is
 * written into a folder that is there already. Open {@link org.hemwright.workroom.start.StartPage}
 * first.
 */
@NullMarked
package org.hemwright.workroom.start;

import org.jspecify.annotations.NullMarked;
