package org.hemwright.exchange.table;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.exchange.table.Table.Entry;
import org.hemwright.exchange.text.FileText;
import org.hemwright.pattern.finding.Origin;

/** Parts a text table into cells, each with its line and column. */
public final class CsvTable {
  private static final CsvFactory FACTORY =
      CsvFactory.builder()
          .enable(CsvParser.Feature.WRAP_AS_ARRAY)
          .enable(CsvParser.Feature.ALLOW_COMMENTS)
          .enable(CsvParser.Feature.TRIM_SPACES)
          .build();

  private final String file;
  private final String text;
  private final Limits limits;
  private final List<List<Entry>> rows = new ArrayList<>();
  private List<Entry> row = new ArrayList<>();

  private CsvTable(String file, String text, Limits limits) {
    this.file = file;
    this.text = text;
    this.limits = limits;
  }

  /**
   * More than this no table of its kind has.
   *
   * @param rows that hold something
   * @param cells in one row
   */
  public record Limits(int rows, int cells) {}

  /** What can stand in the way. */
  public enum Slip {
    /** From here on the bytes are no text. */
    ENCODING,
    /** A quote that opens here is not closed; what follows was not read. */
    QUOTE,
    /** There is more than the limits allow; nothing was read. */
    TOO_MANY
  }

  /**
   * A table as far as it could be read.
   *
   * @param table absent where there is too much of it
   * @param slips what stood in the way, with its place
   */
  public record Parsed(Optional<Table> table, Map<Slip, Origin> slips) {
    public Parsed {
      slips = Collections.unmodifiableMap(new EnumMap<>(slips));
    }
  }

  /**
   * Parses a table.
   *
   * @param file the name that places carry
   */
  public static Parsed read(String file, byte[] content, Limits limits) {
    Map<Slip, Origin> slips = new EnumMap<>(Slip.class);
    FileText decoded = FileText.of(file, content);
    decoded.unreadable().ifPresent(place -> slips.put(Slip.ENCODING, place));
    String text = decoded.text();
    char separator = separator(text);
    CsvTable table = new CsvTable(file, withoutSeparatorLine(text), limits);
    try (CsvParser parser = FACTORY.createParser(table.text)) {
      parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
      if (!table.readAll(parser)) {
        slips.put(Slip.TOO_MANY, new Origin(file, 1, 1));
        return new Parsed(Optional.empty(), slips);
      }
    } catch (JacksonException problem) {
      table.endRow();
      slips.put(Slip.QUOTE, table.quoteLeftOpen(problem.getLocation()));
    } catch (IOException problem) {
      throw new UncheckedIOException("a text in memory was not read", problem);
    }
    return new Parsed(Optional.of(new Table(file, table.rows, separator == ';')), slips);
  }

  /** Whether the whole text was read; false when it has more cells than any chart. */
  private boolean readAll(CsvParser parser) throws IOException {
    for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
      if (token == JsonToken.VALUE_STRING) {
        row.add(entry(parser));
        if (row.size() > limits.cells()) {
          return false;
        }
      } else if (token == JsonToken.END_ARRAY) {
        endRow();
        if (rows.size() > limits.rows()) {
          return false;
        }
      }
    }
    return true;
  }

  private void endRow() {
    if (!row.isEmpty() && Table.speaks(row)) {
      rows.add(row);
    }
    row = new ArrayList<>();
  }

  private Entry entry(JsonParser parser) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    int blanks = 0;
    int offset = (int) at.getCharOffset();
    while (offset + blanks < text.length() && text.charAt(offset + blanks) == ' ') {
      blanks++;
    }
    return new Entry(
        parser.getText().strip(), new Origin(file, at.getLineNr(), at.getColumnNr() + blanks));
  }

  /** Where the last quote before the parser gave up stands that opens a cell. */
  private Origin quoteLeftOpen(JsonLocation gaveUp) {
    List<Entry> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
    Origin from = last.isEmpty() ? new Origin(file, 1, 1) : last.get(last.size() - 1).origin();
    int start = offsetOf(from);
    int quote = text.indexOf('"', start + (last.isEmpty() ? 0 : 1));
    int at = quote < 0 ? Math.min((int) gaveUp.getCharOffset(), text.length()) : quote;
    int line = from.line();
    int lineStart = start - (from.column() - 1);
    for (int i = start; i < at; i++) {
      if (text.charAt(i) == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    return new Origin(file, line, Math.max(1, at - lineStart + 1));
  }

  private int offsetOf(Origin origin) {
    int offset = 0;
    for (int line = 1; line < origin.line(); line++) {
      offset = text.indexOf('\n', offset) + 1;
    }
    return offset + origin.column() - 1;
  }

  /** The sign that parts cells: the commonest of three in the first line that is no comment. */
  /** A title above a table has few signs of any kind: the first line with two of one sign tells. */
  private static final int LINES_LOOKED_AT = 20;

  private static char separator(String text) {
    List<String> lines =
        text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .limit(LINES_LOOKED_AT)
            .toList();
    String first = lines.isEmpty() ? "" : lines.get(0);
    if (first.startsWith("sep=") && first.length() == 5) {
      return first.charAt(4);
    }
    // Nobody types a tab in words, and a spreadsheet's clipboard has nothing else.
    if (lines.stream().anyMatch(line -> count(unquoted(line), '\t') > 1)) {
      return '\t';
    }
    return lines.stream()
        .map(CsvTable::unquoted)
        .filter(line -> count(line, most(line)) > 1)
        .findFirst()
        .map(CsvTable::most)
        .orElse(most(unquoted(first)));
  }

  private static String unquoted(String line) {
    return line.replaceAll("\"[^\"]*\"", "");
  }

  /** The sign that a line has most of; a comma where it has none. */
  private static char most(String line) {
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(line, candidate) > count(line, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char sign) {
    return text.chars().filter(c -> c == sign).count();
  }

  /** Some spreadsheets put {@code sep=;} first; it becomes a comment of the same length. */
  private static String withoutSeparatorLine(String text) {
    return text.startsWith("sep=") ? "#" + text.substring(1) : text;
  }
}
