package org.hemwright.workroom.bodies;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.workroom.history.Splice;

/**
 * The cells of a text table, each with the stretch of text it takes. Comments and blank lines
 * belong to no row. Rows and columns count from 0; the first row holds the headings.
 *
 * @param separator what parts cells: a comma, a semicolon or a tab
 * @param rows the cells of each row
 */
record ChartCells(char separator, List<List<Cell>> rows) {
  ChartCells {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * One cell.
   *
   * @param said what it says, without quotes and blanks round it
   * @param from where it starts in the text
   * @param to where it ends, before the separator
   */
  record Cell(String said, int from, int to) {}

  /** Parts a text into cells. */
  static ChartCells of(String text) {
    char separator = separator(text);
    List<List<Cell>> rows = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = text.indexOf('\n', at);
      end = end < 0 ? text.length() : end;
      String line = text.substring(at, end);
      if (!line.isBlank() && !line.startsWith("#")) {
        rows.add(row(text, at, end, separator));
      }
      at = end + 1;
    }
    return new ChartCells(separator, rows);
  }

  private static char separator(String text) {
    String first =
        text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .findFirst()
            .orElse("");
    char best = ',';
    for (char each : new char[] {',', ';', '\t'}) {
      if (count(first, each) > count(first, best)) {
        best = each;
      }
    }
    return best;
  }

  private static long count(String line, char sign) {
    return line.chars().filter(c -> c == sign).count();
  }

  private static List<Cell> row(String text, int start, int end, char separator) {
    List<Cell> cells = new ArrayList<>();
    int from = start;
    boolean quoted = false;
    for (int i = start; i <= end; i++) {
      if (i < end && text.charAt(i) == '"') {
        quoted = !quoted;
      }
      if (i == end || (text.charAt(i) == separator && !quoted)) {
        cells.add(new Cell(said(text.substring(from, i)), from, i));
        from = i + 1;
      }
    }
    return cells;
  }

  private static String said(String written) {
    String bare = written.strip();
    return bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"")
        ? bare.substring(1, bare.length() - 1).replace("\"\"", "\"")
        : bare;
  }

  /** A value as it is written in a cell. */
  private String written(String value) {
    String bare = value.strip().replace('\n', ' ').replace('\r', ' ');
    boolean plain = bare.indexOf(separator) < 0 && bare.indexOf('"') < 0;
    return plain ? bare : "\"" + bare.replace("\"", "\"\"") + "\"";
  }

  /**
   * The changes that put a block of values in the table, its first at a row and column. Rows and
   * cells that are not there yet are added at the end.
   *
   * @param file the table's name
   * @param text what these cells are of
   */
  List<Splice> with(String file, String text, int row, int column, List<List<String>> block) {
    StringBuilder now = new StringBuilder(text);
    int shift = 0;
    for (int r = 0; r < block.size(); r++) {
      List<String> values = block.get(r);
      if (row + r < rows.size()) {
        List<Cell> cells = rows.get(row + r);
        StringBuilder more = new StringBuilder();
        for (int c = 0; c < values.size(); c++) {
          if (column + c < cells.size()) {
            Cell cell = cells.get(column + c);
            if (!cell.said().equals(values.get(c).strip())) {
              String written = written(values.get(c));
              now.replace(cell.from() + shift, cell.to() + shift, written);
              shift += written.length() - (cell.to() - cell.from());
            }
          } else {
            int missing = c == 0 || more.isEmpty() ? column + c - cells.size() : 0;
            more.append(String.valueOf(separator).repeat(missing + 1))
                .append(written(values.get(c)));
          }
        }
        int end = cells.get(cells.size() - 1).to() + shift;
        now.insert(end, more);
        shift += more.length();
      } else {
        if (!now.isEmpty() && now.charAt(now.length() - 1) != '\n') {
          now.append('\n');
        }
        now.append(String.valueOf(separator).repeat(column));
        now.append(
            String.join(String.valueOf(separator), values.stream().map(this::written).toList()));
        now.append('\n');
      }
    }
    String after = now.toString();
    return after.equals(text) ? List.of() : List.of(Splice.between(file, text, after));
  }
}
