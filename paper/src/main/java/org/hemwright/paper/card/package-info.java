/**
 * The reference card as a page to print: black squares at known places, and two lines to hold a
 * ruler against. It is laid beside a paper piece that is to be photographed.
 *
 * <p>One page that prints on A4 and on US Letter alike (mm, origin at the lower left corner of the
 * card's frame). Open {@link org.hemwright.paper.card.CardPage} first.
 */
@NullMarked
package org.hemwright.paper.card;

import org.jspecify.annotations.NullMarked;
