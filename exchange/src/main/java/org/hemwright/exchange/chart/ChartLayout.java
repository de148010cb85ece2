package org.hemwright.exchange.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import org.hemwright.exchange.table.Table;
import org.hemwright.exchange.table.Table.Entry;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * Finds sizes and measurements in a table, whichever way it lies, and reads its numbers.
 *
 * <p>The side on which more entries end in a unit holds the headings; where neither does, sizes run
 * down.
 */
final class ChartLayout {
  private final Table table;
  private final ChartProblems problems;

  private ChartLayout(Table table, ChartProblems problems) {
    this.table = table;
    this.problems = problems;
  }

  /** The chart; absent when it has no sizes or too many. */
  static Optional<SizeChart> chart(Table table, ChartProblems problems) {
    return new ChartLayout(table, problems).chart();
  }

  private Optional<SizeChart> chart() {
    List<List<Entry>> grid = table.rows();
    if (grid.isEmpty()) {
      problems.file("chart-empty", Argument.of(table.file()));
      return Optional.empty();
    }
    if (sizesRunAcross(grid)) {
      grid = turned(grid);
    }
    List<List<Entry>> sizeRows = grid.subList(1, grid.size());
    List<Entry> headings = grid.get(0);
    if (sizeRows.size() > ChartReader.MOST_SIZES) {
      problems.file("chart-too-many", Argument.of(ChartReader.MOST_SIZES));
      return Optional.empty();
    }
    if (headings.size() - 1 > ChartReader.MOST_MEASUREMENTS) {
      problems.file("chart-too-many", Argument.of(ChartReader.MOST_MEASUREMENTS));
      return Optional.empty();
    }
    List<List<Entry>> named = namedRows(sizeRows);
    if (named.isEmpty()) {
      problems.file("chart-no-sizes", Argument.of(table.file()));
      return Optional.empty();
    }
    List<Size> sizes = new ArrayList<>();
    for (List<Entry> row : named) {
      sizes.add(new Size(sizes.size(), row.get(0).text()));
    }
    tellCellsWithoutHeading(headings, named);
    return Optional.of(new SizeChart(table.file(), sizes, columns(headings, named)));
  }

  private static boolean sizesRunAcross(List<List<Entry>> grid) {
    long unitsAcross =
        grid.get(0).stream().skip(1).filter(entry -> ChartHeading.hasUnit(entry.text())).count();
    long unitsDown =
        grid.stream().skip(1).filter(row -> ChartHeading.hasUnit(row.get(0).text())).count();
    return unitsDown > unitsAcross;
  }

  /** The same table with rows for columns; a cell that a short row lacks becomes a blank one. */
  private static List<List<Entry>> turned(List<List<Entry>> grid) {
    int width = grid.stream().mapToInt(List::size).max().orElse(0);
    List<List<Entry>> turned = new ArrayList<>();
    for (int x = 0; x < width; x++) {
      int column = x;
      List<Entry> row = grid.stream().map(cells -> cell(cells, column)).toList();
      if (x == 0 || Table.speaks(row)) {
        turned.add(row);
      }
    }
    return turned;
  }

  /** The rows that have a size of their own. */
  private List<List<Entry>> namedRows(List<List<Entry>> rows) {
    Map<String, Origin> seen = new LinkedHashMap<>();
    List<List<Entry>> named = new ArrayList<>();
    for (List<Entry> row : rows) {
      Entry name = row.get(0);
      if (name.blank()) {
        problems.add(Finding.fail("chart-size-blank", table.file()).at(name.origin()));
      } else if (seen.containsKey(name.text())) {
        Origin first = seen.getOrDefault(name.text(), name.origin());
        problems.add(
            problems.at("chart-size-twice", name.text(), name).with("first", first.toString()));
      } else {
        seen.put(name.text(), name.origin());
        named.add(row);
      }
    }
    return named;
  }

  private List<SizeChart.Column> columns(List<Entry> headings, List<List<Entry>> rows) {
    Map<String, SizeChart.Column> columns = new LinkedHashMap<>();
    for (int x = 1; x < headings.size(); x++) {
      int place = x;
      Entry entry = headings.get(x);
      if (entry.blank() || entry.comment()) {
        continue;
      }
      Optional<ChartHeading> heading = ChartHeading.read(entry, problems);
      if (heading.isEmpty()) {
        continue;
      }
      String name = heading.get().name();
      SizeChart.Column before = columns.get(name);
      if (before != null) {
        problems.add(
            problems
                .at("chart-heading-twice", name, entry)
                .with("first", before.origin().toString()));
        continue;
      }
      columns.put(name, column(heading.get(), entry, rows, row -> cell(rows.get(row), place)));
    }
    return List.copyOf(columns.values());
  }

  private SizeChart.Column column(
      ChartHeading heading, Entry entry, List<List<Entry>> rows, IntFunction<Entry> cellOf) {
    List<SizeChart.Cell> cells = new ArrayList<>();
    for (int y = 0; y < rows.size(); y++) {
      Entry cell = cellOf.apply(y);
      cells.add(new SizeChart.Cell(value(heading, rows.get(y).get(0), cell), cell.origin()));
    }
    return new SizeChart.Column(
        heading.name(), entry.text(), heading.unit().kind(), cells, entry.origin());
  }

  private OptionalDouble value(ChartHeading heading, Entry size, Entry cell) {
    if (cell.blank()) {
      return OptionalDouble.empty();
    }
    CellNumber read = CellNumber.read(cell.text(), heading.unit(), table.decimalComma());
    if (read instanceof CellNumber.Value value) {
      double held = heading.unit().held(value.number());
      if (held <= MOST) {
        return OptionalDouble.of(held);
      }
      read = new CellNumber.Unread("chart-out-of-range", "");
    }
    CellNumber.Unread unread = (CellNumber.Unread) read;
    problems.add(
        problems
            .at(unread.code(), heading.name(), cell)
            .with("measurement", heading.name())
            .with("size", size.text())
            .with("unit", heading.unit().word())
            .with("unit_name", heading.unit().words())
            .with("better", unread.better())
            .sizes(List.of(size.text())));
    return OptionalDouble.empty();
  }

  /** Ten metres, or ten thousand of anything: more is a slip of the pen. */
  private static final double MOST = 10_000;

  private void tellCellsWithoutHeading(List<Entry> headings, List<List<Entry>> rows) {
    for (List<Entry> row : rows) {
      for (int x = 1; x < row.size(); x++) {
        boolean headed = x < headings.size() && !headings.get(x).blank();
        if (!headed && !row.get(x).blank()) {
          problems.add(
              problems
                  .at("chart-cell-unheaded", table.file(), row.get(x))
                  .with("size", row.get(0).text())
                  .sizes(List.of(row.get(0).text())));
        }
      }
    }
  }

  /** The cell in a column, or a blank one where the row ends before it. */
  private static Entry cell(List<Entry> row, int column) {
    return column < row.size() ? row.get(column) : new Entry("", row.get(row.size() - 1).origin());
  }
}
