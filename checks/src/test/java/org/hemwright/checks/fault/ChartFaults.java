package org.hemwright.checks.fault;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.checks.bench.BenchRow;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/** Slips of the pen in the size chart of a garment; the finding names the very cell. */
final class ChartFaults {
  private ChartFaults() {}

  static List<BenchRow> rows(List<Garment> garments) {
    BenchRow digits = new BenchRow("a chart cell with two digits exchanged");
    BenchRow points = new BenchRow("a chart cell whose decimal point is lost");
    BenchRow doubled = new BenchRow("a chart cell with a digit twice");
    BenchRow unit = new BenchRow("a chart cell in the other unit");
    BenchRow heading = new BenchRow("a chart heading with the other unit");
    BenchRow sizes = new BenchRow("two neighbouring cells of a chart exchanged");
    for (Garment garment : garments) {
      for (Cell cell : cells(garment)) {
        String text = cell.text();
        for (int i = 1; i < text.length(); i++) {
          char one = text.charAt(i - 1);
          char other = text.charAt(i);
          if (Character.isDigit(one) && Character.isDigit(other) && one != other) {
            String swapped = text.substring(0, i - 1) + other + one + text.substring(i + 1);
            digits.add(cell.where(swapped), cell.told(swapped));
          }
        }
        if (text.contains(".")) {
          String lost = text.replace(".", "");
          points.add(cell.where(lost), cell.told(lost));
        }
        String twice = text.charAt(0) + text;
        doubled.add(cell.where(twice), cell.told(twice));
        String other = cell.otherUnit();
        unit.add(cell.where(other), cell.told(other));
      }
      headings(garment, heading);
      exchanged(garment, sizes);
    }
    return List.of(digits, points, doubled, unit, heading, sizes);
  }

  private static List<String> lines(Garment garment) {
    return new ArrayList<>(garment.csv().lines().toList());
  }

  private static int headingLine(List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith("size,")) {
        return i;
      }
    }
    throw new AssertionError("no headings");
  }

  private static List<Cell> cells(Garment garment) {
    List<String> lines = lines(garment);
    int first = headingLine(lines);
    List<String> headings = List.of(lines.get(first).split(",", -1));
    List<Cell> cells = new ArrayList<>();
    for (int y = first + 1; y < lines.size(); y++) {
      List<String> row = List.of(lines.get(y).split(",", -1));
      for (int x = 1; x < row.size(); x++) {
        cells.add(new Cell(garment, y, x, row.get(0), headings.get(x), row.get(x)));
      }
    }
    return cells;
  }

  private record Cell(Garment garment, int y, int x, String size, String heading, String text) {
    String where(String other) {
      return "%s, %s in %s: %s for %s".formatted(garment.name(), heading, size, other, text);
    }

    String otherUnit() {
      double value = number(text);
      return String.format(
          Locale.ROOT, "%.1f", heading.contains("(cm)") ? value / 2.54 : value * 2.54);
    }

    Set<String> told(String other) {
      List<String> lines = lines(garment);
      List<String> row = new ArrayList<>(List.of(lines.get(y).split(",", -1)));
      row.set(x, other);
      lines.set(y, String.join(",", row));
      List<Finding> findings = check(garment, String.join("\n", lines) + "\n");
      return findings.stream()
              .anyMatch(
                  finding ->
                      finding.sizes().contains(size)
                          && finding.origin().filter(o -> o.line() == y + 1).isPresent())
          ? Set.of("size-chart")
          : Set.of();
    }
  }

  private static double number(String text) {
    double sum = 0;
    for (String part : text.strip().split(" +", -1)) {
      String[] fraction = part.split("/", -1);
      sum +=
          fraction.length == 2
              ? Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1])
              : Double.parseDouble(part);
    }
    return sum;
  }

  private static void headings(Garment garment, BenchRow row) {
    List<String> lines = lines(garment);
    int first = headingLine(lines);
    String[] headings = lines.get(first).split(",", -1);
    for (int x = 1; x < headings.length; x++) {
      String[] changed = headings.clone();
      changed[x] =
          headings[x].contains("(cm)")
              ? headings[x].replace("(cm)", "(in)")
              : headings[x].replace("(in)", "(cm)");
      List<String> other = lines(garment);
      other.set(first, String.join(",", changed));
      String name = headings[x].replaceFirst(" \\(.*", "").replace(' ', '_');
      boolean told =
          check(garment, String.join("\n", other) + "\n").stream()
              .anyMatch(finding -> finding.subject().equals(name) || isUnit(finding));
      row.add(garment.name() + ", " + changed[x], told ? Set.of("size-chart") : Set.of());
    }
  }

  /** With two columns it cannot be told which of the two has the wrong unit. */
  private static boolean isUnit(Finding finding) {
    return finding.code().equals("chart-mixed");
  }

  private static void exchanged(Garment garment, BenchRow row) {
    List<String> lines = lines(garment);
    int first = headingLine(lines);
    int columns = lines.get(first).split(",", -1).length;
    for (int x = 1; x < columns; x++) {
      for (int y = first + 1; y + 1 < lines.size(); y++) {
        String[] one = lines.get(y).split(",", -1);
        String[] two = lines.get(y + 1).split(",", -1);
        if (!one[x].equals(two[x])) {
          String kept = one[x];
          one[x] = two[x];
          two[x] = kept;
          List<String> other = lines(garment);
          other.set(y, String.join(",", one));
          other.set(y + 1, String.join(",", two));
          List<String> both = List.of(one[0], two[0]);
          boolean told =
              check(garment, String.join("\n", other) + "\n").stream()
                  .anyMatch(finding -> finding.sizes().stream().anyMatch(both::contains));
          row.add(
              garment.name() + ", column " + x + " in " + both,
              told ? Set.of("size-chart") : Set.of());
        }
      }
    }
  }

  /** What the check of charts says of the garment with another chart. */
  private static List<Finding> check(Garment garment, String csv) {
    var read = ChartReader.read("sizes.csv", csv.getBytes(StandardCharsets.UTF_8));
    List<Finding> found = new ArrayList<>(read.findings());
    SizeChart chart = read.chart().orElseThrow();
    Pattern old = garment.run().pattern();
    Pattern pattern =
        new Pattern(
            old.details(),
            chart,
            old.base(),
            old.fabrics(),
            old.dials(),
            old.views(),
            old.pieces(),
            old.paper(),
            old.acceptances(),
            old.making());
    StandardChecks.with(CheckSettings.HANDBOOK).stream()
        .filter(check -> check.id().equals("size-chart"))
        .flatMap(check -> check.check(new SizeRun(pattern, garment.run().sizes())).stream())
        .filter(finding -> finding.status() != Status.OK)
        .forEach(found::add);
    return found;
  }
}
