/**
 * Which printed pages of an old version a maker must print again to have the new one.
 *
 * <p>Both versions are drawn as their print files draw them, and each new page is laid over the old
 * page of the same name and group. What stands above a page's frame (version, page number) is left
 * out. A page is to be printed again when a line on it, a mark, or what its words say is not where
 * or as it was, to what is printed as one line; dashes that only begin elsewhere are no change, and
 * words that only stand elsewhere are told apart. Millimetres.
 *
 * <p>Open {@link org.hemwright.paper.reprint.Reprint} first.
 */
@NullMarked
package org.hemwright.paper.reprint;

import org.jspecify.annotations.NullMarked;
