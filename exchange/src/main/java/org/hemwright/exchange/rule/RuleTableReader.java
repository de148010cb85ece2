package org.hemwright.exchange.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.table.CsvTable;
import org.hemwright.exchange.table.Table;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RuleTable;

/**
 * Reads a rule table.
 *
 * <p>Its first four columns are headed {@code piece}, {@code edge}, {@code at} and {@code step
 * (mm)} ({@code cm} and {@code in} likewise); each column after them is headed by two neighbouring
 * sizes, {@code 8 to 10}. At is {@code start}, {@code end}, {@code 40% from start}, {@code 12 cm
 * from end} or {@code dot hip}; step is {@code right}, {@code left}, {@code up} or {@code down}. A
 * blank cell is no step; a number may be less than 0.
 */
public final class RuleTableReader {
  /** A larger file is refused unread. */
  public static final int MOST_BYTES = 4 << 20;

  private static final CsvTable.Limits LIMITS = new CsvTable.Limits(5000, 500);
  private static final int TOLD = 100;
  private static final List<String> FIRST = List.of("piece", "edge", "at");
  private static final Pattern STEP = Pattern.compile("step \\((mm|cm|in)\\)");
  private static final Pattern SIZES = Pattern.compile("(.{1,40}?)\\s+to\\s+(.{1,40})");
  private static final Pattern FROM =
      Pattern.compile("([0-9.]{1,12})\\s*(%|mm|cm|in)\\s+from\\s+(start|end)");
  private static final Pattern NUMBER =
      Pattern.compile(
          "([-\u2212]?)\\s*(?:([0-9]{1,9}(?:\\.[0-9]{1,9})?)|(?:([0-9]{1,6})\\s+)?([0-9]{1,6})/([0-9]{1,6}))");
  private static final Map<String, Double> MM = Map.of("mm", 1.0, "cm", 10.0, "in", 25.4);

  private final String file;
  private final List<Finding> findings = new ArrayList<>();

  private RuleTableReader(String file) {
    this.file = file;
  }

  /**
   * Reads a table.
   *
   * @param file the name that places in findings carry
   */
  public static ReadRules read(String file, byte[] content) {
    RuleTableReader reader = new RuleTableReader(file);
    Optional<RuleTable> table = reader.table(content);
    return new ReadRules(
        reader.findings.isEmpty() ? table : Optional.empty(),
        reader.findings.subList(0, Math.min(TOLD, reader.findings.size())));
  }

  /** The sentences for every finding of a rule table. */
  public static Messages messages() {
    return Messages.beside(RuleTableReader.class, "rule.properties");
  }

  private Optional<RuleTable> table(byte[] content) {
    Origin start = new Origin(file, 1, 1);
    if (content.length > MOST_BYTES) {
      findings.add(Finding.fail("rules-too-large", file).at(start).build());
      return Optional.empty();
    }
    CsvTable.Parsed parsed = CsvTable.read(file, content, LIMITS);
    parsed
        .slips()
        .forEach(
            (slip, place) ->
                findings.add(
                    (slip == CsvTable.Slip.ENCODING
                            ? Finding.fail("rules-encoding", file)
                            : slip == CsvTable.Slip.QUOTE
                                ? Finding.fail("rules-quote", file)
                                : Finding.fail("rules-too-large", file))
                        .at(place)
                        .build()));
    if (parsed.table().isEmpty() || !findings.isEmpty()) {
      return Optional.empty();
    }
    List<List<Table.Entry>> rows = parsed.table().get().rows();
    Optional<Headings> headings = rows.isEmpty() ? Optional.empty() : headings(rows.get(0));
    if (headings.isEmpty()) {
      if (findings.isEmpty()) {
        findings.add(Finding.fail("rules-headings", file).at(start).build());
      }
      return Optional.empty();
    }
    List<RuleTable.Rule> rules = new ArrayList<>();
    for (List<Table.Entry> row : rows.subList(1, rows.size())) {
      rule(row, headings.get()).ifPresent(rules::add);
    }
    return Optional.of(new RuleTable(file, rules));
  }

  /** The unit of the steps, and the sizes of each column after the fourth. */
  private record Headings(double mm, List<String[]> sizes) {
    Headings {
      sizes = List.copyOf(sizes);
    }
  }

  private Optional<Headings> headings(List<Table.Entry> row) {
    for (int i = 0; i < FIRST.size(); i++) {
      if (row.size() <= i || !row.get(i).text().toLowerCase(Locale.ROOT).equals(FIRST.get(i))) {
        return Optional.empty();
      }
    }
    Matcher step = STEP.matcher(row.size() > 3 ? row.get(3).text().toLowerCase(Locale.ROOT) : "");
    if (!step.matches()) {
      return Optional.empty();
    }
    List<String[]> sizes = new ArrayList<>();
    for (Table.Entry heading : row.subList(4, row.size())) {
      Matcher two = SIZES.matcher(heading.text());
      if (heading.blank() || heading.comment()) {
        sizes.add(new String[0]);
      } else if (two.matches()) {
        sizes.add(new String[] {two.group(1), two.group(2)});
      } else {
        tell("rules-sizes", heading);
        return Optional.empty();
      }
    }
    return Optional.of(new Headings(MM.getOrDefault(step.group(1), 1.0), sizes));
  }

  private void tell(String code, Table.Entry entry) {
    String read = entry.text();
    Finding.Builder finding =
        switch (code) {
          case "rules-sizes" -> Finding.fail("rules-sizes", file);
          case "rules-at" -> Finding.fail("rules-at", file);
          case "rules-way" -> Finding.fail("rules-way", file);
          case "rules-number" -> Finding.fail("rules-number", file);
          default -> Finding.fail("rules-name", file);
        };
    findings.add(
        finding
            .with("read", read.length() <= 40 ? read : read.substring(0, 39) + "…")
            .at(entry.origin())
            .build());
  }

  private Optional<RuleTable.Rule> rule(List<Table.Entry> row, Headings headings) {
    if (row.size() < 4) {
      tell("rules-name", row.get(0));
      return Optional.empty();
    }
    Optional<RulePlace> place = place(row.get(2).text());
    String way = row.get(3).text().toLowerCase(Locale.ROOT);
    boolean known = List.of("right", "left", "up", "down").contains(way);
    if (row.get(0).blank() || row.get(1).blank()) {
      tell("rules-name", row.get(0));
    } else if (place.isEmpty()) {
      tell("rules-at", row.get(2));
    } else if (!known) {
      tell("rules-way", row.get(3));
    } else {
      double sign = way.equals("left") || way.equals("down") ? -1 : 1;
      return Optional.of(
          new RuleTable.Rule(
              row.get(0).text(),
              row.get(1).text(),
              place.get(),
              way.equals("up") || way.equals("down"),
              steps(row, headings, sign),
              row.get(0).origin()));
    }
    return Optional.empty();
  }

  private List<RuleTable.Step> steps(List<Table.Entry> row, Headings headings, double sign) {
    List<RuleTable.Step> steps = new ArrayList<>();
    for (int x = 4; x < row.size(); x++) {
      Table.Entry cell = row.get(x);
      if (cell.blank()) {
        continue;
      }
      OptionalDouble number = number(cell.text());
      String[] sizes =
          x - 4 < headings.sizes().size() ? headings.sizes().get(x - 4) : new String[0];
      if (number.isEmpty() || sizes.length == 0) {
        tell("rules-number", cell);
      } else {
        steps.add(
            new RuleTable.Step(sizes[0], sizes[1], sign * number.getAsDouble() * headings.mm()));
      }
    }
    return steps;
  }

  private static OptionalDouble number(String text) {
    Matcher parts = NUMBER.matcher(text);
    if (!parts.matches()) {
      return OptionalDouble.empty();
    }
    double value;
    if (parts.group(2) != null) {
      value = Double.parseDouble(parts.group(2));
    } else {
      double whole = parts.group(3) == null ? 0 : Double.parseDouble(parts.group(3));
      value = whole + Double.parseDouble(parts.group(4)) / Double.parseDouble(parts.group(5));
    }
    if (!Double.isFinite(value)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(parts.group(1).isEmpty() ? value : -value);
  }

  private static Optional<RulePlace> place(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.equals("start") || lower.equals("end")) {
      return Optional.of(new RulePlace.End(lower.equals("end")));
    }
    if (lower.startsWith("dot ") && text.length() > 4) {
      return Optional.of(new RulePlace.Dot(text.substring(4).strip()));
    }
    Matcher from = FROM.matcher(lower);
    if (!from.matches()) {
      return Optional.empty();
    }
    OptionalDouble amount = number(from.group(1));
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    boolean end = from.group(3).equals("end");
    Double mm = MM.get(from.group(2));
    return Optional.of(
        mm == null
            ? new RulePlace.Share(amount.getAsDouble() / 100, end)
            : new RulePlace.Distance(amount.getAsDouble() * mm, end));
  }
}
