package org.hemwright.exchange.chart;

import java.util.List;
import org.hemwright.pattern.finding.Origin;

/**
 * A file's cells as texts with places, before anything is known of sizes or measurements.
 *
 * @param file the file's name
 * @param rows rows that hold something, comments left out; each row's entries stand in their
 *     columns, blank ones included
 * @param decimalComma whether the file writes 38,5 for 38.5, as spreadsheets do that part cells
 *     with semicolons
 */
record ChartTable(String file, List<List<Entry>> rows, boolean decimalComma) {
  ChartTable {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * One cell.
   *
   * @param text without blanks at its ends
   * @param origin where it stands; in a spreadsheet, the row and column counted from 1
   */
  record Entry(String text, Origin origin) {
    boolean blank() {
      return text.isEmpty();
    }

    /** Whether the row or column that this cell heads is the designer's own note. */
    boolean comment() {
      return text.startsWith("#");
    }
  }

  /** Whether a row says something: not blank throughout, not a comment. */
  static boolean speaks(List<Entry> row) {
    return row.stream().anyMatch(entry -> !entry.blank()) && !row.get(0).comment();
  }
}
