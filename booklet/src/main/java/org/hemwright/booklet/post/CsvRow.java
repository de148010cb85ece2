package org.hemwright.booklet.post;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of a text table (RFC 4180; semicolons are taken for commas where the first row has more of
 * them, as some spreadsheets write).
 *
 * @param line where it starts, from 1
 */
record CsvRow(int line, List<String> cells) {
  CsvRow {
    cells = List.copyOf(cells);
  }

  static List<CsvRow> all(String text) {
    String first = text.lines().findFirst().orElse("");
    char comma =
        first.chars().filter(c -> c == ';').count() > first.chars().filter(c -> c == ',').count()
            ? ';'
            : ',';
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
}
