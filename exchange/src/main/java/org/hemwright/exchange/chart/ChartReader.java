package org.hemwright.exchange.chart;

import java.util.Locale;
import java.util.Optional;
import org.hemwright.exchange.table.CsvTable;
import org.hemwright.exchange.table.Table;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;

/**
 * Reads a size chart: {@code sizes.csv} as a text editor or a spreadsheet saves it, or a
 * spreadsheet's own {@code .xlsx}.
 *
 * <p>A row is a size and its first cell, headed {@code size}, the size's name; the other headings
 * are measurements with their unit in round brackets, {@code hip (cm)}. A chart with the sizes
 * across is understood too. Cells are parted with commas, semicolons or tabs; lines end either way;
 * a line that starts with {@code #}, or a column headed so, is the designer's own note. A blank
 * cell is a gap.
 */
public final class ChartReader {
  /** No chart that a person made is larger; a larger file is refused unread. */
  public static final int MOST_BYTES = 4 << 20;

  static final int MOST_SIZES = 400;
  static final int MOST_MEASUREMENTS = 400;

  /** A chart may lie either way, and have rows and columns of notes. */
  private static final CsvTable.Limits LIMITS =
      new CsvTable.Limits(4 * MOST_SIZES, 4 * MOST_MEASUREMENTS);

  private ChartReader() {}

  /**
   * Reads a chart.
   *
   * @param file the name that places in findings carry; its ending tells the sort of file
   * @param content the file's bytes
   */
  public static ReadChart read(String file, byte[] content) {
    ChartProblems problems = new ChartProblems(file);
    Optional<SizeChart> chart =
        table(file, content, problems).flatMap(table -> ChartLayout.chart(table, problems));
    return new ReadChart(chart, problems.inOrder());
  }

  /** The sentences for every finding of a chart. */
  public static Messages messages() {
    return Messages.beside(ChartReader.class, "chart.properties");
  }

  static Optional<Table> table(String file, byte[] content, ChartProblems problems) {
    if (content.length > MOST_BYTES) {
      problems.file("chart-too-large", Argument.of((long) MOST_BYTES >> 20));
      return Optional.empty();
    }
    if (file.toLowerCase(Locale.ROOT).endsWith(".xlsx") || SpreadsheetTable.looksPacked(content)) {
      return SpreadsheetTable.read(file, content, problems);
    }
    CsvTable.Parsed parsed = CsvTable.read(file, content, LIMITS);
    parsed
        .slips()
        .forEach(
            (slip, place) -> {
              switch (slip) {
                case ENCODING -> problems.add(Finding.fail("chart-encoding", file).at(place));
                case QUOTE -> problems.add(Finding.fail("chart-quote", file).at(place));
                case TOO_MANY -> problems.file("chart-too-many", Argument.of(MOST_SIZES));
              }
            });
    return parsed.table();
  }
}
