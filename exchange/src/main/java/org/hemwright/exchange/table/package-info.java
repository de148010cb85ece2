/**
 * Text tables as a text editor or a spreadsheet saves them: cells as texts, each with its line and
 * column, before anything is known of what they mean.
 *
 * <p>Cells are parted with commas, semicolons or tabs, lines end either way, and a line that starts
 * with {@code #} is a note. What stands in the way is told as slips, for each reader's own words; a
 * table larger than its reader takes is refused.
 *
 * <p>Open {@link org.hemwright.exchange.table.CsvTable} first.
 */
@NullMarked
package org.hemwright.exchange.table;

import org.jspecify.annotations.NullMarked;
