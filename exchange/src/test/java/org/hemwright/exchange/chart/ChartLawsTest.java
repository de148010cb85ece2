package org.hemwright.exchange.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.junit.jupiter.api.Test;

/** What holds for every chart: seeded, so that a failure comes back. */
class ChartLawsTest {
  private static final List<String> UNITS = List.of("cm", "mm", "in");

  @Test
  void aChartMeansTheSameHoweverItIsWritten() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int round = 0; round < 400; round++) {
      int sizes = random.nextInt(1, 31);
      int measurements = random.nextInt(1, 9);
      List<List<String>> grid = new ArrayList<>();
      List<List<Double>> expected = new ArrayList<>();
      List<String> units = new ArrayList<>();
      List<String> head = new ArrayList<>(List.of("size"));
      for (int m = 0; m < measurements; m++) {
        units.add(UNITS.get(random.nextInt(UNITS.size())));
        head.add("Girth no-" + m + " (" + units.get(m) + ")");
      }
      grid.add(head);
      for (int s = 0; s < sizes; s++) {
        List<String> row = new ArrayList<>(List.of(random.nextBoolean() ? "" + s : s + "T/\"x, y"));
        List<Double> values = new ArrayList<>();
        for (int m = 0; m < measurements; m++) {
          int eighths = random.nextInt(8, 320);
          row.add(random.nextInt(9) == 0 ? "" : written(eighths, random));
          values.add(
              row.get(m + 1).isEmpty()
                  ? Double.NaN
                  : eighths
                      / 8.0
                      * (units.get(m).equals("cm") ? 10 : units.get(m).equals("in") ? 25.4 : 1));
        }
        grid.add(row);
        expected.add(values);
      }
      String text = text(random.nextBoolean() ? turned(grid) : grid, random);

      ReadChart read = ChartReader.read("sizes.csv", text.getBytes(StandardCharsets.UTF_8));

      assertThat(read.findings()).as(text).isEmpty();
      SizeChart chart = read.chart().orElseThrow();
      assertThat(chart.sizes()).as(text).hasSize(sizes);
      for (int m = 0; m < measurements; m++) {
        SizeChart.Column column = chart.column("girth_no_" + m).orElseThrow();
        for (int s = 0; s < sizes; s++) {
          double value = column.cells().get(s).value().orElse(Double.NaN);
          if (Double.isNaN(expected.get(s).get(m))) {
            assertThat(value).as(text).isNaN();
          } else {
            assertThat(value).as(text).isCloseTo(expected.get(s).get(m), within(1e-9));
          }
        }
      }
    }
  }

  @Test
  void whateverHappensToAFileItIsReadOrToldOf() {
    SplittableRandom random = new SplittableRandom(7);
    byte[] good =
        "# note\r\nsize,hip (cm),\"waist (in)\"\r\n8,92.5,29 1/4\r\n\"2T\",,31\r\n10,96,32 1/2\r\n"
            .getBytes(StandardCharsets.UTF_8);
    for (int round = 0; round < 4000; round++) {
      byte[] bytes = good.clone();
      for (int change = random.nextInt(1, 6); change > 0; change--) {
        byte[] signs = {'"', ',', ';', '\n', '\r', '#', 0, (byte) 0xC3, '\t', '-', '(', 'P'};
        bytes[random.nextInt(bytes.length)] =
            random.nextBoolean() ? signs[random.nextInt(signs.length)] : (byte) random.nextInt(256);
      }
      ReadChart read = ChartReader.read("sizes.csv", bytes);
      assertThat(read.chart().isPresent() || !read.findings().isEmpty()).isTrue();
      assertPlacesLieInTheText(read, new String(bytes, StandardCharsets.ISO_8859_1));
    }
  }

  @Test
  void everyBeginningOfAFileIsReadOrToldOf() {
    String good = "sep=;\nsize;\"hip\"\" (cm)\";waist (cm)\n\"8\";92,5;\n\"1\n0\";96;70\n";
    for (int end = 0; end <= good.length(); end++) {
      byte[] bytes = good.substring(0, end).getBytes(StandardCharsets.UTF_8);
      ReadChart read = ChartReader.read("sizes.csv", bytes);
      assertThat(read.chart().isPresent() || !read.findings().isEmpty()).isTrue();
    }
  }

  private static void assertPlacesLieInTheText(ReadChart read, String text) {
    int lines = text.split("\r\n|\r|\n", -1).length;
    for (Finding finding : read.findings()) {
      Origin origin = finding.origin().orElseThrow();
      assertThat(origin.line()).as("%s in %s", finding, text).isBetween(1, lines);
      assertThat(origin.column()).isLessThanOrEqualTo(text.length() + 1);
    }
  }

  private static String written(int eighths, SplittableRandom random) {
    int whole = eighths / 8;
    int over = eighths % 8;
    return switch (random.nextInt(3)) {
      case 0 -> Double.toString(eighths / 8.0);
      case 1 -> over == 0 ? Integer.toString(whole) : whole + " " + over + "/8";
      default -> eighths + "/8";
    };
  }

  private static List<List<String>> turned(List<List<String>> grid) {
    return IntStream.range(0, grid.get(0).size())
        .mapToObj(x -> grid.stream().map(row -> row.get(x)).toList())
        .toList();
  }

  private static String text(List<List<String>> grid, SplittableRandom random) {
    String separator = List.of(",", ";", "\t").get(random.nextInt(3));
    String end = random.nextBoolean() ? "\r\n" : "\n";
    boolean quoteAll = random.nextBoolean();
    List<String> lines =
        grid.stream()
            .map(
                row ->
                    row.stream()
                        .map(cell -> quoted(cell, quoteAll))
                        .collect(Collectors.joining(separator)))
            .collect(Collectors.toCollection(ArrayList::new));
    if (random.nextBoolean()) {
      lines.add(0, "# her own note; with, every\tseparator");
    }
    if (random.nextBoolean()) {
      lines.add(String.join(separator, Collections.nCopies(grid.get(0).size(), "")));
    }
    String last = random.nextBoolean() ? end : "";
    return (random.nextBoolean() ? "\uFEFF" : "") + String.join(end, lines) + last;
  }

  private static String quoted(String cell, boolean always) {
    boolean must = cell.contains("\"") || cell.contains(",");
    return always || must ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
