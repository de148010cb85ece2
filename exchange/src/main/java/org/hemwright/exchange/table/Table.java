package org.hemwright.exchange.table;

import java.util.List;
import org.hemwright.pattern.finding.Origin;

/**
 * A file's cells as texts with places, before anything is known of what they mean.
 *
 * @param file the file's name
 * @param rows rows that hold something, comments left out; each row's entries stand in their
 *     columns, blank ones included
 * @param decimalComma whether the file writes 38,5 for 38.5, as spreadsheets do that part cells
 *     with semicolons
 */
public record Table(String file, List<List<Entry>> rows, boolean decimalComma) {
  public Table {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * One cell.
   *
   * @param text without blanks at its ends
   * @param origin where it stands; in a spreadsheet, the row and column counted from 1
   */
  public record Entry(String text, Origin origin) {
    /** Whether nothing stands in it. */
    public boolean blank() {
      return text.isEmpty();
    }

    /** Whether the row or column that this cell heads is the designer's own note. */
    public boolean comment() {
      return text.startsWith("#");
    }
  }

  /** Whether a row says something: not blank throughout, not a comment. */
  public static boolean speaks(List<Entry> row) {
    return row.stream().anyMatch(entry -> !entry.blank()) && !row.get(0).comment();
  }
}
