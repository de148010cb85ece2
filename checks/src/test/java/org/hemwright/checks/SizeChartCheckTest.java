package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.junit.jupiter.api.Test;

/**
 * Slips in size charts. The charts are a published one (ASTM D5585-11e1, as its publisher's page
 * prints it, read in place) and the invented ones of the examples; the proportions are those of the
 * survey that the product carries (ANSUR II; see docs/survey/figures.py).
 */
class SizeChartCheckTest {
  private static final String DOCUMENT =
      """
      language 1
      pattern "Strip"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 12
      for %s

      fabric main woven
        widths 150 cm

      piece strip "Strip" number 1
        cut 1 of main
        rectangle (%s) / 20 by 6 cm, edges low, right, high, left
        allowance low none, right none, high none, left none
        grain up
      """;

  private static SizeChart chart(String csv) {
    return ChartReader.read("sizes.csv", csv.getBytes(StandardCharsets.UTF_8))
        .chart()
        .orElseThrow();
  }

  /** A run of a document that uses some columns, for some people. */
  private static List<String> told(String csv, String people, String used) {
    SizeRun run =
        Drafting.draft("pattern.hem", DOCUMENT.formatted(people, used), chart(csv))
            .run()
            .orElseThrow();
    return Told.by("size-chart", run);
  }

  private static final String WOMEN =
      """
      size,bust (cm),hip (cm),shoulder (cm)
      8,84,92,11.8
      10,88,96,12
      12,92,100,12.2
      14,97,105,12.4
      16,102,110,12.6
      18,107,115,12.8
      20,113,121,13
      """;

  @Test
  void aChartThatIsAllRightIsSilent() {
    assertThat(told(WOMEN, "women", "bust + hip + shoulder")).isEmpty();
  }

  @Test
  void aColumnThatNothingUsesIsTold() {
    assertThat(told(WOMEN, "women", "bust + hip"))
        .containsExactly(
            "WARN: No piece uses shoulder (cm), and no level, opening or elastic names it. / Take"
                + " the column out, start its heading with `#`, or keep it for choosing a size and"
                + " accept this.");
  }

  /** Two digits exchanged: the cell itself is told, not the one after it. */
  @Test
  void exchangedDigitsAreToldInTheirOwnCell() {
    assertThat(told(WOMEN.replace("107,115", "170,115"), "women", "bust + hip + shoulder"))
        .first()
        .asString()
        .startsWith("WARN: bust (cm) is 170 cm in size 18, 62.5 cm off the 107.5 cm");
    assertThat(told(WOMEN.replace("84,92", "48,92"), "women", "bust + hip + shoulder"))
        .first()
        .asString()
        .startsWith("WARN: bust (cm) is 48 cm in size 8");
    assertThat(told(WOMEN.replace("113,121", "131,121"), "women", "bust + hip + shoulder"))
        .first()
        .asString()
        .startsWith("WARN: bust (cm) is 131 cm in size 20");
    assertThat(told(WOMEN.replace("12.4", "14.2"), "women", "bust + hip + shoulder"))
        .first()
        .asString()
        .startsWith("WARN: shoulder (cm) is 14.2 cm in size 14");
    assertThat(told(WOMEN.replace("97,105", "79,105"), "women", "bust + hip + shoulder"))
        .first()
        .asString()
        .startsWith("WARN: bust (cm) goes back by 13 cm in size 14, from 92 cm to 79 cm.");
  }

  /** A bust of 118 on a hip of 88: few of the surveyed women are near it, each alone is common. */
  @Test
  void measurementsThatDoNotGoTogetherAreTold() {
    String top = "size,bust (cm),hip (cm)\n12,112,90\n14,114,92\n16,116,94\n";
    List<String> told = told(top, "women", "bust + hip");
    assertThat(told).hasSize(1);
    assertThat(told.get(0))
        .startsWith("WARN: bust (cm) of 112 cm and hip (cm) of 90 cm do not go together")
        .contains("in every size");
  }

  /** Where no survey reaches there is no data, which is never a warning. */
  @Test
  void ofThoseWhomNoSurveyHoldsNothingIsSaid() {
    String top = "size,bust (cm),hip (cm)\n12,112,90\n14,114,92\n16,116,94\n";
    assertThat(told(top, "children", "bust + hip")).isEmpty();
    assertThat(told(top, "women, plus", "bust + hip")).isEmpty();
    String large = "size,bust (cm),hip (cm)\n12,170,140\n14,174,144\n16,178,148\n";
    assertThat(told(large, "women", "bust + hip")).isEmpty();
  }

  /** The survey's waist goes round the navel: a smaller one is no slip, a larger one is. */
  @Test
  void aWaistIsBoundedFromAbove() {
    String slim = "size,waist (cm),hip (cm)\n12,62,104\n14,64,106\n16,66,108\n";
    assertThat(told(slim, "women", "waist + hip")).isEmpty();
    String exchanged = "size,waist (cm),hip (cm)\n12,104,92\n14,106,94\n16,108,96\n";
    assertThat(told(exchanged, "women", "waist + hip"))
        .anyMatch(words -> words.contains("do not go together"));
  }

  /**
   * Every printed row of ASTM D5585-11e1, uneven as it is: nothing is found, with or without a sex.
   */
  @Test
  void thePublishedChartIsSilent() throws IOException {
    Path file = shared("astm-d5585-11e1-misses-girths-partial.csv");
    assumeTrue(Files.exists(file), "../shared/data/body is not here");
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String line : Files.readAllLines(file).subList(1, Files.readAllLines(file).size())) {
      String[] cells = line.split(",", -1);
      rows.computeIfAbsent(cells[0], name -> new ArrayList<>()).add(cells[2]);
    }
    assertThat(rows).hasSize(9);
    Map<String, String> names =
        Map.of(
            "Chest/bust girth", "bust",
            "Head girth", "head",
            "Mid-neck girth", "neck",
            "Neck base girth", "neck_base");
    List<String> headings = new ArrayList<>();
    List<String> used = new ArrayList<>();
    for (String row : rows.keySet()) {
      String name =
          names.getOrDefault(row, row.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "_"));
      String held = name.replaceAll("_$", "");
      headings.add(held + " (in)");
      used.add(held);
    }
    List<String> sizes = List.of("00", "0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20");
    StringBuilder csv = new StringBuilder("size," + String.join(",", headings) + "\n");
    for (int i = 0; i < sizes.size(); i++) {
      int row = i;
      csv.append(sizes.get(i))
          .append(',')
          .append(
              rows.values().stream()
                  .map(printed -> printed.get(row))
                  .collect(Collectors.joining(",")))
          .append('\n');
    }
    assertThat(told(csv.toString(), "women", String.join(" + ", used))).isEmpty();
  }

  /** EN 13402-3's classes of women's bust, 74 to 131 cm, by their middles. */
  @Test
  void thePublishedClassesAreSilent() throws IOException {
    Path file = shared("en13402-3-women-bust-classes.csv");
    assumeTrue(Files.exists(file), "../shared/data/body is not here");
    StringBuilder csv = new StringBuilder("size,bust (cm)\n");
    List<String> lines = Files.readAllLines(file);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      double middle = (Double.parseDouble(cells[1]) + Double.parseDouble(cells[2])) / 2;
      csv.append(cells[0]).append(',').append(middle).append('\n');
    }
    assertThat(told(csv.toString(), "women", "bust")).isEmpty();
  }

  private static Path shared(String name) {
    for (Path p = Path.of("").toAbsolutePath(); p != null; p = p.getParent()) {
      Path file = p.resolve("shared/data/body").resolve(name);
      if (Files.exists(file)) {
        return file;
      }
    }
    return Path.of("shared/data/body").resolve(name);
  }
}
