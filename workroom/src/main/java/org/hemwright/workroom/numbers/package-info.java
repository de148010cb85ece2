/**
 * The lines that make a selected thing what it is, and the numbers in them, typed in any unit.
 *
 * <p>What is typed is shown on the table and as the line that will be written before it is. It
 * refuses what is no number of the quantity that stands there. Open {@link
 * org.hemwright.workroom.numbers.NumbersView} first.
 */
@NullMarked
package org.hemwright.workroom.numbers;

import org.jspecify.annotations.NullMarked;
