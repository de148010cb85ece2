package org.hemwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.QuantityKind;

/** Size charts for tests, from lines such as {@code size,waist (cm)} and {@code 8,66}. */
public final class Charts {
  private Charts() {}

  /** A chart of these lines; numbers in centimetres, a blank cell is missing. */
  public static SizeChart of(String text) {
    List<String[]> rows = new ArrayList<>();
    for (String line : text.lines().toList()) {
      if (!line.isBlank() && !line.startsWith("#")) {
        rows.add(line.strip().split(",", -1));
      }
    }
    String[] headings = rows.get(0);
    List<Size> sizes = new ArrayList<>();
    for (int r = 1; r < rows.size(); r++) {
      sizes.add(new Size(r - 1, rows.get(r)[0]));
    }
    List<SizeChart.Column> columns = new ArrayList<>();
    for (int c = 1; c < headings.length; c++) {
      List<SizeChart.Cell> cells = new ArrayList<>();
      double unit = headings[c].contains("(in)") ? 25.4 : 10;
      for (int r = 1; r < rows.size(); r++) {
        String cell = rows.get(r)[c].strip();
        cells.add(
            new SizeChart.Cell(
                cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(cell) * unit),
                new Origin("sizes.csv", r + 1, c + 1)));
      }
      String name =
          headings[c].replaceAll("\\(.*\\)", "").strip().toLowerCase(Locale.ROOT).replace(' ', '_');
      columns.add(
          new SizeChart.Column(
              name, headings[c], QuantityKind.LENGTH, cells, new Origin("sizes.csv", 1, c + 1)));
    }
    return new SizeChart("sizes.csv", sizes, columns);
  }

  /** Whole numbers, decimals and {@code 26 1/4}. */
  private static double number(String text) {
    double sum = 0;
    for (String word : text.split(" ", -1)) {
      String[] parts = word.split("/", -1);
      sum +=
          parts.length == 1
              ? Double.parseDouble(word)
              : Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }
    return sum;
  }
}
