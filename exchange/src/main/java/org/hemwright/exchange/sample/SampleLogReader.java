package org.hemwright.exchange.sample;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.exchange.sample.SampleHeading.Column;
import org.hemwright.exchange.table.CsvTable;
import org.hemwright.exchange.table.Table;
import org.hemwright.exchange.table.Table.Entry;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.LengthUnit;
import org.hemwright.pattern.quantity.Reading;
import org.hemwright.pattern.sample.SampleEntry;
import org.hemwright.pattern.sample.SampleLog;

/**
 * Reads a sample log.
 *
 * <p>Its columns, in any order: {@code date} (2026-11-25), {@code size}, {@code fabric}, {@code
 * where}, {@code pinned out (cm)} or {@code let out (cm)}, {@code drafted (cm)}, {@code note};
 * lengths in the unit of their heading. Date, size and place are needed. A line or column that
 * starts with {@code #} is the designer's own.
 */
public final class SampleLogReader {
  private static final int MOST_LINES = 5000;
  private static final CsvTable.Limits LIMITS = new CsvTable.Limits(MOST_LINES, 100);
  private static final List<Column> NEEDED = List.of(Column.DATE, Column.SIZE, Column.WHERE);
  private static final int LONGEST = 40;

  private final Table table;
  private final List<Finding> findings;
  private final Map<Column, Integer> places = new EnumMap<>(Column.class);
  private final Map<Column, LengthUnit> units = new EnumMap<>(Column.class);

  private SampleLogReader(Table table, List<Finding> findings) {
    this.table = table;
    this.findings = findings;
  }

  /**
   * Reads a log.
   *
   * @param file the name that places in findings carry
   */
  public static ReadSamples read(String file, byte[] content) {
    List<Finding> findings = new ArrayList<>();
    CsvTable.Parsed parsed = CsvTable.read(file, content, LIMITS);
    parsed
        .slips()
        .forEach(
            (slip, place) -> {
              switch (slip) {
                case ENCODING -> findings.add(told("sample-encoding", place).build());
                case QUOTE -> findings.add(told("sample-quote", place).build());
                case TOO_MANY ->
                    findings.add(
                        told("sample-too-many", place)
                            .with("most", Argument.of(MOST_LINES))
                            .build());
              }
            });
    List<SampleEntry> entries =
        parsed
            .table()
            .map(table -> new SampleLogReader(table, findings).entries())
            .orElse(List.of());
    findings.sort(Comparator.comparing(finding -> finding.origin().orElse(new Origin(file, 1, 1))));
    return new ReadSamples(new SampleLog(entries), findings);
  }

  /** The sentences for every finding of a log. */
  public static Messages messages() {
    return Messages.beside(SampleLogReader.class, "samples.properties");
  }

  private static Finding.Builder told(String code, Origin place) {
    return Finding.warn(code, SampleLog.FILE).at(place);
  }

  private static Finding.Builder told(String code, Entry entry) {
    String text = entry.text();
    String read = text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    return told(code, entry.origin()).with("read", read);
  }

  private List<SampleEntry> entries() {
    if (table.rows().isEmpty()) {
      return List.of();
    }
    List<Entry> headings = table.rows().get(0);
    for (int i = 0; i < headings.size(); i++) {
      heading(headings.get(i), i);
    }
    List<String> lacking =
        NEEDED.stream().filter(c -> !places.containsKey(c)).map(Column::word).toList();
    if (!lacking.isEmpty()) {
      findings.add(
          told("sample-heading-lacking", headings.get(0).origin())
              .with("lacking", Argument.of(lacking))
              .build());
      return List.of();
    }
    List<SampleEntry> entries = new ArrayList<>();
    for (List<Entry> row : table.rows().subList(1, table.rows().size())) {
      row(row).ifPresent(entries::add);
    }
    return entries;
  }

  private void heading(Entry entry, int place) {
    if (entry.blank() || entry.comment()) {
      return;
    }
    Optional<Column> column = Column.of(SampleHeading.bare(entry.text()));
    if (column.isEmpty()) {
      Finding.Builder finding =
          told("sample-heading-unknown", entry).with("known", Argument.of(Column.words()));
      NearName.to(SampleHeading.bare(entry.text()), Column.words())
          .ifPresent(near -> finding.with("near", near));
      findings.add(finding.build());
      return;
    }
    if (places.containsKey(column.get())) {
      findings.add(told("sample-heading-twice", entry).build());
      return;
    }
    if (column.get().length()) {
      Optional<LengthUnit> unit = SampleHeading.unit(entry.text());
      if (unit.isEmpty()) {
        findings.add(
            told("sample-heading-unit", entry).with("column", column.get().word()).build());
        return;
      }
      units.put(column.get(), unit.get());
    }
    places.put(column.get(), place);
  }

  /** One line; nothing where it cannot be read, and all that is amiss with it is told. */
  private Optional<SampleEntry> row(List<Entry> row) {
    int before = findings.size();
    LocalDate date = date(cell(row, Column.DATE));
    needed(cell(row, Column.SIZE), Column.SIZE);
    needed(cell(row, Column.WHERE), Column.WHERE);
    OptionalDouble pinned = length(row, Column.PINNED_OUT);
    OptionalDouble let = length(row, Column.LET_OUT);
    OptionalDouble drafted = length(row, Column.DRAFTED);
    if (pinned.orElse(0) != 0 && let.orElse(0) != 0) {
      findings.add(told("sample-both", cell(row, Column.LET_OUT)).build());
    }
    tellUnheaded(row);
    if (findings.size() > before) {
      return Optional.empty();
    }
    return Optional.of(
        new SampleEntry(
            date,
            cell(row, Column.SIZE).text(),
            cell(row, Column.FABRIC).text(),
            cell(row, Column.WHERE).text(),
            let.orElse(0) - pinned.orElse(0),
            drafted,
            cell(row, Column.NOTE).text(),
            row.get(0).origin(),
            cell(row, Column.SIZE).origin(),
            cell(row, Column.WHERE).origin()));
  }

  private LocalDate date(Entry entry) {
    try {
      return LocalDate.parse(entry.text());
    } catch (DateTimeParseException unread) {
      findings.add(told(entry.blank() ? "sample-date-blank" : "sample-date", entry).build());
      return LocalDate.EPOCH;
    }
  }

  private void needed(Entry entry, Column column) {
    if (entry.blank()) {
      findings.add(told("sample-blank", entry).with("column", column.word()).build());
    }
  }

  private OptionalDouble length(List<Entry> row, Column column) {
    Entry entry = cell(row, column);
    LengthUnit unit = units.get(column);
    if (entry.blank() || unit == null) {
      return OptionalDouble.empty();
    }
    String text = table.decimalComma() ? entry.text().replace(',', '.') : entry.text();
    if (Length.read(text, unit) instanceof Reading.Read<Length> read) {
      if (read.value().mm() >= 0) {
        return OptionalDouble.of(read.value().mm());
      }
      findings.add(told("sample-negative", entry).with("column", column.word()).build());
    } else {
      findings.add(
          told("sample-number", entry)
              .with("column", column.word())
              .with("unit", unit.word())
              .build());
    }
    return OptionalDouble.empty();
  }

  private void tellUnheaded(List<Entry> row) {
    int headings = table.rows().get(0).size();
    for (Entry entry : row.subList(Math.min(headings, row.size()), row.size())) {
      if (!entry.blank()) {
        findings.add(told("sample-unheaded", entry).build());
      }
    }
  }

  /** The cell below a heading; a blank one at the line's end where the line is shorter. */
  private Entry cell(List<Entry> row, Column column) {
    Integer place = places.get(column);
    return place == null || place >= row.size()
        ? new Entry("", row.get(row.size() - 1).origin())
        : row.get(place);
  }
}
