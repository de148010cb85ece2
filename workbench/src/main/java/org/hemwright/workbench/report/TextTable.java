package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table in plain text: columns set to the right, a table too wide for a terminal parted into
 * several that each start with the first column.
 *
 * @param first heading of the first column
 * @param rows what the first column says
 * @param columns the others, each with a cell for each row
 */
record TextTable(String first, List<String> rows, List<Column> columns) {
  private static final int WIDEST = 96;
  private static final String GAP = "  ";

  TextTable {
    rows = List.copyOf(rows);
    columns = List.copyOf(columns);
  }

  /** One column. */
  record Column(String heading, List<String> cells) {
    Column {
      cells = List.copyOf(cells);
    }

    int width() {
      return Math.max(heading.length(), cells.stream().mapToInt(String::length).max().orElse(0));
    }
  }

  String text() {
    Column names = new Column(first, rows);
    StringBuilder text = new StringBuilder();
    List<Column> band = new ArrayList<>(List.of(names));
    int width = names.width();
    for (Column column : columns) {
      int wider = width + GAP.length() + column.width();
      if (wider > WIDEST && band.size() > 1) {
        write(text, band);
        band = new ArrayList<>(List.of(names));
        wider = names.width() + GAP.length() + column.width();
      }
      band.add(column);
      width = wider;
    }
    write(text, band);
    return text.toString();
  }

  private void write(StringBuilder text, List<Column> band) {
    line(text, band, band.stream().map(Column::heading).toList());
    for (int row = 0; row < rows.size(); row++) {
      int at = row;
      line(text, band, band.stream().map(column -> column.cells().get(at)).toList());
    }
  }

  private static void line(StringBuilder text, List<Column> band, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int x = 0; x < band.size(); x++) {
      String blanks = " ".repeat(band.get(x).width() - cells.get(x).length());
      line.append(x == 0 ? cells.get(0) + blanks : GAP + blanks + cells.get(x));
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }
}
