/**
 * Laying pieces on cloth and what to buy.
 *
 * <p>{@code rule} says what may lie where on folded and single cloth, {@code laying} finds short
 * layings of loose shapes and knows nothing of cloth, {@code byhand} takes those that the designer
 * arranged herself, and {@code yardage} makes the table of what to buy from them. Open {@link
 * org.hemwright.cloth.yardage.YardageTable} first.
 */
@NullMarked
package org.hemwright.cloth;

import org.jspecify.annotations.NullMarked;
