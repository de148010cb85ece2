package org.hemwright.exchange.chart;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.hemwright.exchange.table.Table;
import org.hemwright.exchange.table.Table.Entry;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.jspecify.annotations.Nullable;

/**
 * Reads the cells of a spreadsheet file: the sheet named {@code sizes}, or else the first. The
 * value that was saved beside a formula is read; nothing is calculated here.
 */
final class SpreadsheetTable {
  private static final Pattern DATE_FORMAT = Pattern.compile(".*[dmyhs].*");
  private static final Pattern LITERALS = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*]");

  /** Rows that are looked at, empty ones included. */
  private static final int MOST_ROWS = 20_000;

  private final String file;
  private final ChartProblems problems;

  private SpreadsheetTable(String file, ChartProblems problems) {
    this.file = file;
    this.problems = problems;
  }

  /** Whether the bytes start as a packed file does, whatever its name ends in. */
  static boolean looksPacked(byte[] content) {
    return content.length > 3 && content[0] == 'P' && content[1] == 'K' && content[2] < 9;
  }

  static Optional<Table> read(String file, byte[] content, ChartProblems problems) {
    Optional<byte[]> safe = RepackedSpreadsheet.of(content);
    if (safe.isEmpty()) {
      problems.file("chart-spreadsheet", Argument.of(file));
      return Optional.empty();
    }
    return new SpreadsheetTable(file, problems).read(safe.get());
  }

  // The reader meets a broken file with exceptions of many sorts.
  @SuppressWarnings("CatchingUnchecked")
  private Optional<Table> read(byte[] content) {
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(content), new ReadingOptions(true, true))) {
      Sheet sheet =
          workbook
              .getSheets()
              .filter(candidate -> candidate.getName().equalsIgnoreCase("sizes"))
              .findFirst()
              .orElseGet(workbook::getFirstSheet);
      return rows(sheet);
    } catch (IOException | RuntimeException broken) {
      problems.file("chart-spreadsheet", Argument.of(file));
      return Optional.empty();
    }
  }

  private Optional<Table> rows(Sheet sheet) throws IOException {
    List<List<Entry>> rows = new ArrayList<>();
    int seen = 0;
    try (Stream<Row> stream = sheet.openStream()) {
      Iterator<Row> each = stream.iterator();
      while (each.hasNext()) {
        List<Entry> entries = entries(each.next());
        seen++;
        if (entries.size() > 4 * ChartReader.MOST_MEASUREMENTS
            || rows.size() > 4 * ChartReader.MOST_SIZES
            || seen > MOST_ROWS) {
          problems.file("chart-too-many", Argument.of(ChartReader.MOST_SIZES));
          return Optional.empty();
        }
        if (!entries.isEmpty() && Table.speaks(entries)) {
          rows.add(entries);
        }
      }
    }
    return Optional.of(new Table(file, rows, false));
  }

  /** The row's cells up to the last one that holds something. */
  private List<Entry> entries(Row row) {
    int width = row.getCellCount();
    while (width > 0 && isEmpty(row.getOptionalCell(width - 1).orElse(null))) {
      width--;
    }
    List<Entry> entries = new ArrayList<>();
    for (int x = 0; x < width; x++) {
      Origin origin = new Origin(file, Math.max(1, row.getRowNum()), x + 1);
      entries.add(new Entry(text(row.getOptionalCell(x).orElse(null), origin).strip(), origin));
    }
    return entries;
  }

  private static boolean isEmpty(@Nullable Cell cell) {
    return cell == null || cell.getType() == CellType.EMPTY;
  }

  private String text(@Nullable Cell cell, Origin origin) {
    if (cell == null || isEmpty(cell)) {
      return "";
    }
    Object value = cell.getValue();
    if (value == null || value.toString().isEmpty()) {
      if (cell.getType() == CellType.FORMULA) {
        problems.add(Finding.fail("chart-formula", file).at(origin));
      }
      return "";
    }
    if (!(value instanceof BigDecimal number)) {
      return value.toString();
    }
    // Shortest decimal that means the same double: a spreadsheet saves 38.3 as 38.299999999999997.
    BigDecimal plain = BigDecimal.valueOf(number.doubleValue());
    if (isDate(cell)) {
      problems.add(Finding.fail("chart-date", file).with("read", plain.toPlainString()).at(origin));
      return "";
    }
    if (format(cell).contains("%")) {
      return plain.movePointRight(2).stripTrailingZeros().toPlainString() + "%";
    }
    return plain.stripTrailingZeros().toPlainString();
  }

  private static String format(Cell cell) {
    String format = cell.getDataFormatString();
    return format == null ? "" : LITERALS.matcher(format).replaceAll("");
  }

  /** Formats 14 to 22 and 45 to 47 are dates and times without saying so (ECMA-376, 18.8.30). */
  private static boolean isDate(Cell cell) {
    Integer id = cell.getDataFormatId();
    return (id != null && ((14 <= id && id <= 22) || (45 <= id && id <= 47)))
        || (!format(cell).equals("General") && DATE_FORMAT.matcher(format(cell)).matches());
  }
}
