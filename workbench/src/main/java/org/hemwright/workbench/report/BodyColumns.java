package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.Details;

/**
 * How the garment goes round the body, as titled tables with a row for each size, for the terminal
 * and the page alike.
 *
 * @param tables in order
 */
public record BodyColumns(List<Titled> tables) {
  /** What stands above them. */
  public static final String TITLE = "How the garment goes round the body";

  public BodyColumns {
    tables = List.copyOf(tables);
  }

  /**
   * One table.
   *
   * @param title what it is of
   * @param columns heading and cells, a cell for each size; blank where nothing is known
   */
  public record Titled(String title, List<Column> columns) {
    public Titled {
      columns = List.copyOf(columns);
    }
  }

  /** A column with a cell for each size of the table. */
  public record Column(String heading, List<String> cells) {
    public Column {
      cells = List.copyOf(cells);
    }
  }

  /** The tables, in the unit that the document puts first. */
  public static BodyColumns of(BodyTable table, Details.Units units) {
    return new Maker(table, units == Details.Units.INCHES).all();
  }

  private record Maker(BodyTable table, boolean inches) {
    BodyColumns all() {
      List<Titled> tables = new ArrayList<>();
      for (BodyTable.Line<BodyTable.Girth> line : table.girths()) {
        tables.add(
            new Titled(
                of(line.view(), "girth at " + shown(line.name())),
                fit(line, BodyTable.Girth::fit, "round")));
      }
      for (BodyTable.Line<BodyTable.Opening> line : table.openings()) {
        tables.add(opening(line));
      }
      for (BodyTable.Line<BodyTable.Held> line : table.elastics()) {
        tables.add(elastic(line));
      }
      for (BodyTable.Line<BodyTable.Rise> line : table.rises()) {
        tables.add(
            new Titled(
                "rise of " + shown(line.name()) + ", its band counted in",
                fit(line, BodyTable.Rise::fit, "up")));
      }
      return new BodyColumns(tables);
    }

    private String of(String view, String what) {
      boolean several =
          Stream.concat(
                      table.girths().stream().map(BodyTable.Line::view),
                      table.openings().stream().map(BodyTable.Line::view))
                  .distinct()
                  .count()
              > 1;
      return several ? "view " + view + ", " + what : what;
    }

    private <T> List<Column> fit(
        BodyTable.Line<T> line, Function<T, BodyTable.Fit> fit, String direction) {
      return List.of(
          lengths("body", line, value -> fit.apply(value).body()),
          lengths("finished", line, value -> OptionalDouble.of(fit.apply(value).finished())),
          lengths("ease", line, value -> fit.apply(value).ease()),
          texts(
              "cloth lies " + direction,
              line,
              value -> fit.apply(value).way().name().toLowerCase(Locale.ROOT)),
          shares("it stretches", line, value -> OptionalDouble.of(fit.apply(value).stretch())),
          shares("worn it takes", line, value -> fit.apply(value).needed()),
          shares("share used", line, value -> fit.apply(value).used()));
    }

    private Titled opening(BodyTable.Line<BodyTable.Opening> line) {
      BodyTable.Opening any = line.bySize().values().iterator().next();
      List<Column> columns = new ArrayList<>();
      columns.add(lengths(shown(any.over()), line, BodyTable.Opening::body));
      columns.add(lengths("as it lies", line, value -> OptionalDouble.of(value.length())));
      if (line.bySize().values().stream().anyMatch(value -> value.slit() > 0)) {
        columns.add(lengths("slit", line, value -> OptionalDouble.of(value.slit())));
      }
      columns.add(texts("stiffest", line, value -> value.kind() + " " + shown(value.stiffest())));
      columns.add(shares("it stretches", line, value -> OptionalDouble.of(value.stretch())));
      columns.add(lengths("reaches", line, value -> OptionalDouble.of(value.reach())));
      columns.add(lengths("to spare", line, BodyTable.Opening::spare));
      return new Titled(
          of(line.view(), "opening " + shown(line.name()) + " over the " + shown(any.over())),
          columns);
    }

    private Titled elastic(BodyTable.Line<BodyTable.Held> line) {
      BodyTable.Held any = line.bySize().values().iterator().next();
      List<Column> columns = new ArrayList<>();
      columns.add(lengths("width", line, value -> OptionalDouble.of(value.width())));
      columns.add(lengths("casing", line, BodyTable.Held::casing));
      columns.add(lengths("cut", line, value -> OptionalDouble.of(value.cut())));
      columns.add(lengths("finished", line, value -> OptionalDouble.of(value.finished())));
      if (!any.round().isBlank()) {
        columns.add(lengths("holds " + shown(any.round()), line, BodyTable.Held::held));
      }
      columns.add(lengths("stretched", line, value -> OptionalDouble.of(value.stretched())));
      if (!any.over().isBlank()) {
        columns.add(lengths("passes " + shown(any.over()), line, BodyTable.Held::passed));
      }
      return new Titled("elastic " + shown(line.name()), columns);
    }

    private <T> Column texts(String heading, BodyTable.Line<T> line, Function<T, String> cell) {
      List<String> cells = new ArrayList<>();
      for (String size : table.sizes()) {
        T value = line.bySize().get(size);
        cells.add(value == null ? "" : cell.apply(value));
      }
      return new Column(heading, cells);
    }

    private <T> Column lengths(
        String heading, BodyTable.Line<T> line, Function<T, OptionalDouble> mm) {
      return texts(
          heading,
          line,
          value -> mm.apply(value).stream().mapToObj(this::length).findFirst().orElse(""));
    }

    private <T> Column shares(
        String heading, BodyTable.Line<T> line, Function<T, OptionalDouble> share) {
      return texts(
          heading,
          line,
          value ->
              share.apply(value).stream()
                  .mapToObj(each -> String.format(Locale.ROOT, "%.0f%%", each * 100))
                  .findFirst()
                  .orElse(""));
    }

    private String length(double mm) {
      return inches
          ? String.format(Locale.ROOT, "%.2f", mm / 25.4)
          : String.format(Locale.ROOT, "%.1f", mm / 10);
    }

    private static String shown(String name) {
      return name.replace('_', ' ');
    }
  }

  /** How to read the shares. */
  public static String key(double comfort) {
    return ("Worn it takes: how far the cloth stretches on the body. Share used: of the stretch"
            + " that the cloth has that way; up to %.0f%% is comfortable. Stiffest: what"
            + " reaches least of cloth, band, seam and elastic.")
        .formatted(comfort * 100);
  }
}
