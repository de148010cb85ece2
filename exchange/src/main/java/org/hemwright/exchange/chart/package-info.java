/**
 * Size charts: a text table or a spreadsheet becomes a {@link
 * org.hemwright.pattern.body.SizeChart}, every cell with its place.
 *
 * <p>The way of a file: bytes to a {@code Table} of texts with places ({@code SpreadsheetTable}, or
 * {@code CsvTable} of the package beside); the table to sizes and measurements, whichever way it
 * lies ({@code ChartLayout}); headings to names and units ({@code ChartHeading}); texts to numbers
 * ({@code CellNumber}). Lengths come out in millimetres, angles in radians, percentages as shares.
 *
 * <p>A problem becomes a finding and the rest of the chart is still read, so that all problems are
 * told at once. Nothing is repaired in silence: a number that could mean two things is left out and
 * told. A file that is too large, or made to be large once unpacked, is refused unread.
 *
 * <p>Open {@link org.hemwright.exchange.chart.ChartReader} first.
 */
@NullMarked
package org.hemwright.exchange.chart;

import org.jspecify.annotations.NullMarked;
