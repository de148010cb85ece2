/**
 * The size chart as a grid: its own cells, each with its place in the text, so that a changed cell
 * is a changed cell of the file and every other byte stays; a block pasted from a spreadsheet; whom
 * the chart serves.
 *
 * <p>What the cells mean is not known here: the chart is read by {@code exchange}, whose findings
 * stand beside the grid. Open {@link org.hemwright.workroom.bodies.BodiesView} first, then {@code
 * ChartCells}.
 */
@NullMarked
package org.hemwright.workroom.bodies;

import org.jspecify.annotations.NullMarked;
