package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;

/** Neighbouring lines of one kind, set in columns. */
final class Columns {
  private static final String BETWEEN = "   ";

  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a line by its cells; of neighbours the first two stand one blank apart, others three. */
  void add(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  /** The lines, each column as wide as its widest cell that has another after it. */
  List<String> lines() {
    List<Integer> widths = new ArrayList<>();
    for (List<String> row : rows) {
      for (int i = 0; i + 1 < row.size(); i++) {
        if (i == widths.size()) {
          widths.add(0);
        }
        widths.set(i, Math.max(widths.get(i), width(row.get(i))));
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, List<Integer> widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.size(); i++) {
      line.append(row.get(i));
      if (i + 1 < row.size()) {
        line.append(" ".repeat(widths.get(i) - width(row.get(i))));
        line.append(i == 0 || rows.size() == 1 ? " " : BETWEEN);
      }
    }
    return line.toString();
  }

  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
