package org.hemwright.exchange.chart;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.table.Table;
import org.hemwright.exchange.table.Table.Entry;
import org.hemwright.pattern.finding.Finding;

/**
 * A chart in the shape she has it, and what its headings are taken to mean: nothing of it is a size
 * chart before she confirms it.
 *
 * <p>Understood are sizes across or down, titles above, blank rows and columns, headings in two
 * rows of which the upper spans several columns, notes in further columns, and inches with
 * fractions in any spelling. A unit is read where it is written, for a column or for all, and never
 * guessed. Where sizes, headings and units stand is found together, as each is known by the others.
 *
 * @param sizes the sizes' names in order
 * @param columns what has numbers, in order
 * @param leftOut what else stands there: titles, notes, columns without numbers
 * @param unread cells that are no number
 * @param ranges cells that say from where to where, of which the middle is taken
 * @param findings why nothing could be read, where that is so
 */
public record ChartProposal(
    List<String> sizes,
    List<Column> columns,
    List<String> leftOut,
    List<String> unread,
    List<String> ranges,
    List<Finding> findings) {
  private static final Pattern UNIT =
      Pattern.compile(
          "(?i)(?<![\\p{L}])(cm|mm|in|inch|inches|centimet(?:re|er)s?|\"|″)(?![\\p{L}])");
  private static final Pattern SIZES = Pattern.compile("(?i)\\s*(sizes?|gr(ö|oe|o)(ß|ss)en?)\\s*");

  /** What heads another house's names of the sizes, or numbers of rows. */
  private static final Pattern OTHER_SIZES =
      Pattern.compile("(?i)\\b(sizes?|gr(ö|oe|o)(ß|ss)en?)\\b|^row number$|^no\\.?$|^#");

  private static final Pattern RANGE =
      Pattern.compile("(.{1,20}?)\\s*(?:[-\u2013\u2014]|to)\\s*(.{1,20})");

  /** A first heading that counts the rows; elsewhere the sign starts a note. */
  private static final Pattern COUNTED = Pattern.compile("\\A\\s*#(?=\\s*[,;\t])");

  public ChartProposal {
    sizes = List.copyOf(sizes);
    columns = List.copyOf(columns);
    leftOut = List.copyOf(leftOut);
    unread = List.copyOf(unread);
    ranges = List.copyOf(ranges);
    findings = List.copyOf(findings);
  }

  private static ChartProposal nothing(List<Finding> findings) {
    return new ChartProposal(List.of(), List.of(), List.of(), List.of(), List.of(), findings);
  }

  /**
   * One column of numbers.
   *
   * @param heading as she writes it
   * @param meant the measurement that it is taken for
   * @param unit {@code cm}, {@code in} or {@code mm}, where it is written
   * @param values for each size, in her unit
   */
  public record Column(
      String heading,
      Optional<StandardMeasurement> meant,
      Optional<String> unit,
      List<OptionalDouble> values) {
    public Column {
      values = List.copyOf(values);
    }

    /** The name it gets in a document, if she agrees. */
    public String name() {
      String own =
          heading
              .toLowerCase(Locale.ROOT)
              .replaceAll("\\(.*?\\)", " ")
              .replaceAll("[^\\p{L}\\p{N}]+", "_")
              .replaceAll("^[_\\p{N}]+|_+$", "");
      return meant.map(StandardMeasurement::name).orElse(own.isEmpty() ? "column" : own);
    }
  }

  /**
   * Reads a chart.
   *
   * @param file its name; the ending tells the sort of file
   */
  public static ChartProposal of(String file, byte[] content) {
    ChartProblems problems = new ChartProblems(file);
    Optional<Table> table = ChartReader.table(file, counted(content), problems);
    if (table.isEmpty()) {
      return nothing(problems.inOrder());
    }
    ChartProposal proposal = new Layout(table.get()).proposal();
    if (proposal.columns.isEmpty() || proposal.sizes.isEmpty()) {
      problems.file("chart-empty", org.hemwright.pattern.finding.Argument.of(file));
      return nothing(problems.inOrder());
    }
    return proposal;
  }

  private static byte[] counted(byte[] content) {
    // Bytes as they are: one to a sign, whatever their encoding.
    String text = new String(content, StandardCharsets.ISO_8859_1);
    Matcher first = COUNTED.matcher(text);
    return first.find()
        ? ("row number" + text.substring(first.end())).getBytes(StandardCharsets.ISO_8859_1)
        : content;
  }

  /** A number in any spelling of charts: 38.5, 38,5, 38 1/2, 38-1/2, 38½. */
  static OptionalDouble number(String text, boolean decimalComma) {
    String plain =
        text.replace('\u00a0', ' ')
            .replaceAll("(?i)\\s*(cm|mm|in|inch|inches|\"|″|”|'')\\.?\\s*$", "")
            .replaceAll("([0-9])\\s*([¼½¾⅛⅜⅝⅞])", "$1 $2")
            .replace("¼", "1/4")
            .replace("½", "1/2")
            .replace("¾", "3/4")
            .replace("⅛", "1/8")
            .replace("⅜", "3/8")
            .replace("⅝", "5/8")
            .replace("⅞", "7/8")
            .replaceAll("([0-9])\\s*-\\s*([0-9]{1,2}/[0-9]{1,2})$", "$1 $2")
            .strip();
    CellNumber read =
        CellNumber.read(plain.isEmpty() ? "-" : plain, ChartHeading.Unit.CENTIMETRES, true);
    if (read instanceof CellNumber.Value value
        && (decimalComma || !plain.contains(",") || plain.matches("[0-9]+,[0-9]{1,2}"))) {
      return OptionalDouble.of(value.number());
    }
    return OptionalDouble.empty();
  }

  /** Finds the parts of her table. */
  private static final class Layout {
    private final boolean decimalComma;
    private final List<String> leftOut = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();
    private final List<String> ranges = new ArrayList<>();
    private List<List<String>> grid = new ArrayList<>();
    private Optional<String> unitOfAll = Optional.empty();

    Layout(Table table) {
      this.decimalComma = table.decimalComma();
      int width = table.rows().stream().mapToInt(List::size).max().orElse(0);
      for (List<Entry> row : table.rows()) {
        List<String> cells = new ArrayList<>();
        for (int x = 0; x < width; x++) {
          cells.add(x < row.size() ? row.get(x).text() : "");
        }
        grid.add(cells);
      }
    }

    ChartProposal proposal() {
      titles();
      notes();
      blankColumns();
      if (grid.isEmpty()) {
        return nothing(List.of());
      }
      if (sizesAcross()) {
        grid = turned(grid);
        blankColumns();
      }
      sizesFirst();
      List<String> headings = headings();
      List<String> sizes = new ArrayList<>();
      List<List<String>> rows = new ArrayList<>();
      Set<String> seen = new LinkedHashSet<>();
      for (List<String> row : grid) {
        String size = row.get(0).strip();
        boolean numbers = row.stream().skip(1).anyMatch(cell -> isNumber(cell));
        if (size.isEmpty() || !numbers || !seen.add(size)) {
          note(String.join(" ", row));
        } else {
          sizes.add(size);
          rows.add(row);
        }
      }
      List<Column> columns = new ArrayList<>();
      for (int x = 1; x < headings.size(); x++) {
        column(headings.get(x), x, sizes, rows).ifPresent(columns::add);
      }
      return new ChartProposal(sizes, once(columns), leftOut, unread, ranges, List.of());
    }

    private void note(String text) {
      String plain = text.replaceAll("\\s+", " ").strip();
      if (!plain.isEmpty()) {
        leftOut.add(plain.length() <= 60 ? plain : plain.substring(0, 59) + "…");
      }
    }

    private boolean isNumber(String text) {
      return !text.isBlank()
          && (number(text, decimalComma).isPresent() || middle(text).isPresent());
    }

    /** The middle of a range such as 31–33. */
    private OptionalDouble middle(String text) {
      Matcher range = RANGE.matcher(text);
      if (!range.matches()) {
        return OptionalDouble.empty();
      }
      OptionalDouble low = number(range.group(1), decimalComma);
      OptionalDouble high = number(range.group(2), decimalComma);
      return low.isPresent() && high.isPresent() && low.getAsDouble() < high.getAsDouble()
          ? OptionalDouble.of((low.getAsDouble() + high.getAsDouble()) / 2)
          : OptionalDouble.empty();
    }

    /** Rows below that hold one text alone; a unit in one is for all, if no title says another. */
    private void notes() {
      List<List<String>> kept = new ArrayList<>();
      for (List<String> row : grid) {
        if (kept.isEmpty() || row.stream().filter(cell -> !cell.isBlank()).count() > 1) {
          kept.add(row);
        } else {
          String words = String.join(" ", row);
          unitOfAll = unitOfAll.or(() -> unit(words));
          note(words);
        }
      }
      grid = kept;
    }

    /** Brings the column that is headed as sizes are to the front. */
    private void sizesFirst() {
      List<String> headings = grid.get(0);
      for (int x = 0; x < headings.size(); x++) {
        if (SIZES.matcher(headings.get(x)).matches()) {
          int column = x;
          grid.replaceAll(row -> moved(row, column));
          return;
        }
      }
    }

    private static List<String> moved(List<String> row, int column) {
      List<String> moved = new ArrayList<>(row);
      moved.add(0, moved.remove(column));
      return moved;
    }

    /** Rows above that hold one text alone; a unit in one is for all. */
    private void titles() {
      while (!grid.isEmpty()
          && grid.get(0).stream().filter(cell -> !cell.isBlank()).count() <= 1
          && grid.size() > 1) {
        String title = String.join(" ", grid.get(0));
        if (unit(title).isPresent()) {
          unitOfAll = unit(title);
        }
        note(title);
        grid = grid.subList(1, grid.size());
      }
    }

    private void blankColumns() {
      int width = grid.isEmpty() ? 0 : grid.get(0).size();
      List<Integer> kept = new ArrayList<>();
      for (int x = 0; x < width; x++) {
        int column = x;
        if (grid.stream().anyMatch(row -> !row.get(column).isBlank())) {
          kept.add(x);
        }
      }
      List<List<String>> narrow = new ArrayList<>();
      for (List<String> row : grid) {
        narrow.add(new ArrayList<>(kept.stream().map(row::get).toList()));
      }
      grid = narrow;
    }

    private boolean sizesAcross() {
      long across =
          grid.get(0).stream().filter(cell -> StandardMeasurement.meant(cell).isPresent()).count();
      long down =
          grid.stream().filter(row -> StandardMeasurement.meant(row.get(0)).isPresent()).count();
      return down > across;
    }

    private static List<List<String>> turned(List<List<String>> grid) {
      List<List<String>> turned = new ArrayList<>();
      for (int x = 0; x < grid.get(0).size(); x++) {
        int column = x;
        turned.add(new ArrayList<>(grid.stream().map(row -> row.get(column)).toList()));
      }
      return turned;
    }

    /**
     * The headings, put together where they stand in two rows, the upper spanning several columns.
     */
    private List<String> headings() {
      List<String> headings = new ArrayList<>(grid.get(0));
      grid = grid.subList(1, grid.size());
      while (!grid.isEmpty()
          && grid.get(0).stream().noneMatch(this::isNumber)
          && grid.get(0).stream().anyMatch(cell -> !cell.isBlank())) {
        String last = "";
        for (int x = 1; x < headings.size(); x++) {
          String upper = headings.get(x).isBlank() ? last : headings.get(x);
          last = upper;
          String lower = grid.get(0).get(x);
          boolean whole = StandardMeasurement.meant(lower).isPresent();
          headings.set(x, whole ? lower : (upper + " " + lower).strip());
        }
        grid = grid.subList(1, grid.size());
      }
      if (unit(headings.get(0)).isPresent()) {
        unitOfAll = unit(headings.get(0));
      }
      return headings;
    }

    private static Optional<String> unit(String text) {
      Matcher unit = UNIT.matcher(text);
      Optional<String> last = Optional.empty();
      while (unit.find()) {
        String said = unit.group(1).toLowerCase(Locale.ROOT);
        String after = text.substring(unit.end()).strip();
        boolean word = !said.equals("in") || after.isEmpty() || after.startsWith(")");
        if (word) {
          last = Optional.of(said.startsWith("c") ? "cm" : said.startsWith("m") ? "mm" : "in");
        }
      }
      return last;
    }

    private Optional<Column> column(
        String heading, int x, List<String> sizes, List<List<String>> rows) {
      List<OptionalDouble> values = new ArrayList<>();
      int numbers = 0;
      Optional<String> inCells = Optional.empty();
      List<String> odd = new ArrayList<>();
      for (int y = 0; y < rows.size(); y++) {
        String cell = rows.get(y).get(x);
        OptionalDouble value = number(cell, decimalComma);
        if (value.isEmpty() && middle(cell).isPresent()) {
          value = middle(cell);
          ranges.add(heading + ", " + sizes.get(y) + ": " + cell);
        }
        values.add(value);
        if (value.isPresent()) {
          numbers++;
          inCells = inCells.isPresent() ? inCells : unit(cell);
        } else if (!cell.isBlank()) {
          odd.add(heading + ", " + sizes.get(y) + ": " + cell);
        }
      }
      if (numbers == 0 || heading.isBlank() || OTHER_SIZES.matcher(heading).find()) {
        note(heading.isBlank() ? "a column without a heading" : heading);
        return Optional.empty();
      }
      unread.addAll(odd);
      Optional<String> unit = unit(heading);
      if (unit.isEmpty()) {
        unit = inCells.isPresent() ? inCells : unitOfAll;
      }
      return Optional.of(new Column(heading, StandardMeasurement.meant(heading), unit, values));
    }

    /** Of two columns that mean one measurement, as in cm and in inches, the first stays. */
    private List<Column> once(List<Column> columns) {
      Map<String, Column> kept = new LinkedHashMap<>();
      for (Column column : columns) {
        if (kept.putIfAbsent(column.name(), column) != null) {
          note(column.heading() + " (the same as " + kept.get(column.name()).heading() + ")");
        }
      }
      return List.copyOf(kept.values());
    }
  }
}
