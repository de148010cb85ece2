package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Steps pasted from a spreadsheet.
 *
 * <p>Two columns are an across and an up step for each corner, in order. As many columns as there
 * are steps between the sizes are a row for across and a row for up, corner by corner. A row or
 * first column of words is passed over; a blank cell is nothing.
 */
public final class PastedSteps {
  private PastedSteps() {}

  /**
   * The rules; absent where the block has neither shape or a cell is no number.
   *
   * @param text cells parted by tabs, rows by line ends
   * @param mm how long the pasted unit is
   * @param edges the edges at whose ends the corners are, in order
   * @param sizes the names of all sizes
   */
  public static Optional<List<CornerRule>> rules(
      String text, double mm, List<String> edges, List<String> sizes) {
    List<List<OptionalDouble>> rows = new ArrayList<>();
    for (String line : text.split("\\R", -1)) {
      List<String> cells = new ArrayList<>(List.of(line.split("\t", -1)));
      if (line.isBlank() || cells.stream().noneMatch(PastedSteps::isNumber)) {
        continue;
      }
      if (cells.size() > 1 && !isNumber(cells.get(0)) && !cells.get(0).isBlank()) {
        cells.remove(0);
      }
      if (!cells.stream().allMatch(cell -> cell.isBlank() || isNumber(cell))) {
        return Optional.empty();
      }
      rows.add(cells.stream().map(cell -> number(cell, mm)).toList());
    }
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    int steps = sizes.size() - 1;
    boolean pairs = width == 2 && rows.size() <= edges.size();
    boolean each = width == steps && steps > 0 && rows.size() <= 2 * edges.size();
    if (rows.isEmpty() || (!pairs && !each)) {
      return Optional.empty();
    }
    List<CornerRule> rules = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      rules.add(
          pairs
              ? new CornerRule(
                  edges.get(i), every(cell(rows, i, 0), sizes), every(cell(rows, i, 1), sizes))
              : new CornerRule(
                  edges.get(i),
                  StepWords.of(row(rows, 2 * i, steps), sizes),
                  StepWords.of(row(rows, 2 * i + 1, steps), sizes)));
    }
    return Optional.of(rules);
  }

  private static String every(double step, List<String> sizes) {
    return sizes.size() < 2 ? "" : StepWords.of(List.of(step), sizes);
  }

  private static double cell(List<List<OptionalDouble>> rows, int row, int column) {
    return row < rows.size() && column < rows.get(row).size()
        ? rows.get(row).get(column).orElse(0)
        : 0;
  }

  private static List<Double> row(List<List<OptionalDouble>> rows, int row, int steps) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      values.add(cell(rows, row, i));
    }
    return values;
  }

  private static boolean isNumber(String cell) {
    return plain(cell).matches("-?[0-9]*\\.?[0-9]+");
  }

  private static String plain(String cell) {
    String text = cell.strip().replace('\u2212', '-').replaceAll("^\\+", "");
    return text.matches("-?[0-9]*,[0-9]+") ? text.replace(',', '.') : text;
  }

  private static OptionalDouble number(String cell, double mm) {
    return cell.isBlank()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(plain(cell)) * mm);
  }
}
