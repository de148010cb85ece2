package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.Notions;

/**
 * What a pattern measures, as tables for a person: a row for each size, in the unit that the
 * document puts first.
 */
public final class MeasureTable {
  private final Measurements measured;
  private final BodyTable body;
  private final List<Notions> notions;
  private final boolean inches;
  private final StringBuilder text = new StringBuilder();

  private MeasureTable(
      Measurements measured, BodyTable body, List<Notions> notions, Details.Units units) {
    this.measured = measured;
    this.notions = notions;
    this.body = body;
    this.inches = units == Details.Units.INCHES;
  }

  /** The tables, one below the other. */
  public static String of(
      Measurements measured, BodyTable body, List<Notions> notions, Details.Units units) {
    return new MeasureTable(measured, body, notions, units).whole();
  }

  private String whole() {
    text.append("Lengths in ")
        .append(inches ? "inches" : "centimetres")
        .append(", areas in square ")
        .append(inches ? "inches" : "centimetres")
        .append(", at the stitch line, one copy opened.\n");
    for (Measurements.OfPiece piece : measured.pieces()) {
      List<TextTable.Column> columns = new ArrayList<>();
      columns.add(column("area", piece.area(), this::area));
      piece.edges().forEach(edge -> columns.add(column(edge.name(), edge.length(), this::length)));
      table(piece.name(), columns);
    }
    for (Measurements.OfSeam seam : measured.seams()) {
      List<TextTable.Column> columns = new ArrayList<>();
      for (Measurements.OfLayer layer : seam.layers()) {
        columns.add(column(layer.name(), layer.length(), this::length));
      }
      table("seam " + seam.name(), columns);
    }
    table(
        "girths",
        measured.girths().stream()
            .map(level -> column(level.view() + " " + level.level(), level.girth(), this::length))
            .toList());
    for (Measurements.OfElastic elastic : measured.elastics()) {
      table(
          "elastic " + elastic.name(),
          List.of(
              column("width", elastic.width(), this::length),
              column("finished", elastic.finished(), this::length),
              column("cut", elastic.cut(), this::length)));
    }
    body();
    notions();
    return text.toString();
  }

  /** Thread and what else is bought by the size, a table for each view. */
  private void notions() {
    for (String view : notions.stream().map(Notions::view).distinct().toList()) {
      Map<String, Map<String, String>> columns = new LinkedHashMap<>();
      for (Notions each : notions) {
        if (each.view().equals(view)) {
          NotionsCells.of(each, inches)
              .forEach(
                  (heading, cell) ->
                      columns
                          .computeIfAbsent(heading, name -> new LinkedHashMap<>())
                          .put(each.size(), cell));
        }
      }
      table(
          "notions, view " + view,
          columns.entrySet().stream()
              .map(
                  column ->
                      new TextTable.Column(
                          column.getKey(),
                          measured.sizes().stream()
                              .map(size -> column.getValue().getOrDefault(size, ""))
                              .toList()))
              .toList());
    }
  }

  private void body() {
    BodyColumns columns =
        BodyColumns.of(body, inches ? Details.Units.INCHES : Details.Units.CENTIMETRES);
    if (columns.tables().isEmpty()) {
      return;
    }
    text.append("\n").append(BodyColumns.TITLE).append("\n");
    text.append(BodyColumns.key(body.comfort())).append("\n");
    for (BodyColumns.Titled table : columns.tables()) {
      table(
          table.title(),
          table.columns().stream()
              .map(column -> new TextTable.Column(column.heading(), column.cells()))
              .toList());
    }
  }

  private void table(String title, List<TextTable.Column> columns) {
    if (!columns.isEmpty()) {
      text.append('\n').append(title).append('\n');
      text.append(new TextTable("size", measured.sizes(), columns).text());
    }
  }

  private TextTable.Column column(
      String heading, Map<String, Double> values, DoubleFunction<String> shown) {
    List<String> cells = new ArrayList<>();
    for (String size : measured.sizes()) {
      Double value = values.get(size);
      cells.add(value == null ? "" : shown.apply(value));
    }
    return new TextTable.Column(heading, cells);
  }

  private String length(double mm) {
    return inches
        ? String.format(Locale.ROOT, "%.3f", mm / 25.4)
        : String.format(Locale.ROOT, "%.2f", mm / 10);
  }

  private String area(double squareMillimetres) {
    double unit = inches ? 25.4 * 25.4 : 100;
    return String.format(Locale.ROOT, "%.1f", squareMillimetres / unit);
  }
}
