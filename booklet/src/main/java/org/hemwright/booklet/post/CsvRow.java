package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of a text table (RFC 4180; semicolons or tabs are taken for commas where the first row has
 * more of them, as some spreadsheets write).
 *
 * @param line where it starts, from 1
 */
record CsvRow(int line, List<String> cells) {
  CsvRow {
    cells = List.copyOf(cells);
  }

  static List<CsvRow> all(String text) {
    char comma = separator(text.lines().findFirst().orElse(""));
    List<CsvRow> rows = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    int line = 1;
    int started = 1;
    for (int i = text.startsWith("\uFEFF") ? 1 : 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
      }
      if (quoted) {
        if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
          cell.append('"');
          i++;
        } else if (c == '"') {
          quoted = false;
        } else {
          cell.append(c);
        }
      } else if (c == '"') {
        quoted = true;
      } else if (c == comma) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else if (c == '\n') {
        cells.add(cell.toString());
        cell.setLength(0);
        rows.add(new CsvRow(started, cells));
        cells = new ArrayList<>();
        started = line;
      } else if (c != '\r') {
        cell.append(c);
      }
    }
    if (!cells.isEmpty() || !cell.isEmpty()) {
      cells.add(cell.toString());
      rows.add(new CsvRow(started, cells));
    }
    return rows;
  }

  /** Whichever the first row has most of, as spreadsheets of all countries write. */
  private static char separator(String first) {
    char most = ',';
    for (char each : new char[] {';', '\t'}) {
      if (count(first, each) > count(first, most)) {
        most = each;
      }
    }
    return most;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }
}
