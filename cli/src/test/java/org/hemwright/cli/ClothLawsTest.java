package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.cli.OddThings.cell;
import static org.hemwright.cli.OddThings.plain;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Laws of the rows that {@code cloth} answers, on {@link OddThings}. */
class ClothLawsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private OddThings things;

  @BeforeEach
  void oddThings() throws IOException {
    things = OddThings.in(folder);
  }

  private static double length(JsonNode row) {
    return row.get("fits").asBoolean() ? row.get("length_mm").asDouble() : Double.POSITIVE_INFINITY;
  }

  @Test
  void neverMoreForWiderClothNorForAllPiecesNorWithoutNapNorOnSingleClothAlsoWhereAsked()
      throws IOException {
    List<JsonNode> rows = things.rows();
    rows.addAll(things.rows("--width", "100cm,125cm"));
    Map<String, List<JsonNode>> bySize = new LinkedHashMap<>();
    for (JsonNode row : rows) {
      bySize.computeIfAbsent(cell(row, "fabric", "size"), none -> new ArrayList<>()).add(row);
    }
    bySize.values().forEach(ClothLawsTest::assertLaws);
  }

  /** On rows of one cloth and size. */
  private static void assertLaws(List<JsonNode> rows) {
    for (JsonNode one : rows) {
      for (JsonNode other : rows) {
        boolean wider = one.get("width_mm").asDouble() <= other.get("width_mm").asDouble();
        boolean fewer = cell(one, "view").compareTo(cell(other, "view")) <= 0;
        boolean nap = one.get("nap").asBoolean() || !other.get("nap").asBoolean();
        boolean single = cell(other, "fold").equals("single");
        boolean best = other.get("best").asBoolean();
        if (wider && fewer && nap && (single || cell(one, "fold").equals(cell(other, "fold")))) {
          if (other.get("fits").asBoolean() || single) {
            assertThat(length(other)).as("%s, %s", one, other).isLessThanOrEqualTo(length(one));
          }
        }
        if (wider && fewer && nap && best && one.get("fits").asBoolean()) {
          for (String unit : List.of("m", "yd")) {
            assertThat(other.get("buy").get(unit).asDouble())
                .as("%s, %s", one, other)
                .isLessThanOrEqualTo(one.get("buy").get(unit).asDouble());
          }
        }
      }
    }
  }

  @Test
  void whatIsBoughtIsEnoughInBothUnitsAndLessThanAStepTooMuch() throws IOException {
    for (String shrink : List.of("0%", "3.3%")) {
      for (JsonNode row : things.rows("--shrink", shrink)) {
        if (row.get("fits").asBoolean()) {
          double share = Double.parseDouble(shrink.replace("%", "")) / 100;
          double exact = row.get("length_mm").asDouble() / (1 - share);
          assertThat(row.get("bought_mm").asDouble()).isCloseTo(exact, within(1e-6));
          assertStep(row.get("buy").get("m").asDouble() * 10, exact / 100);
          assertStep(row.get("buy").get("yd").asDouble() * 8, exact / 114.3);
        }
      }
    }
  }

  private static void assertStep(double steps, double exact) {
    assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9));
    assertThat(steps).isGreaterThanOrEqualTo(exact - 2e-4).isLessThan(exact + 1);
  }

  /** What is cut apart, by fabric, width and size: as the table says, and as {@code check} does. */
  @Test
  void theTableAndCheckCutApartTheSameOnTheSameWidths() throws IOException {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    for (JsonNode row : things.rows()) {
      if (row.get("fits").asBoolean()) {
        table
            .computeIfAbsent(cell(row, "fabric", "width_mm", "size"), none -> new TreeSet<>())
            .add(row.get("variant").isNull() ? "" : row.get("variant").asText());
      }
    }
    assertThat(table.values()).allMatch(each -> each.size() == 1);
    Set<String> apart = new TreeSet<>();
    table.forEach(
        (where, variants) ->
            variants.stream().filter(v -> !v.isEmpty()).forEach(v -> apart.add(where)));
    // 60, 86, 112 and 130 cm and twice 1 cm, against the width less twice 1.5 cm of selvedge
    assertThat(apart)
        .containsExactlyInAnyOrder(
            "main 900 S/M",
            "main 900 2T",
            "main 900 XXL",
            "main 1117.6 2T",
            "main 1117.6 XXL",
            "main 1180 XXL",
            "velvet 1120 2T",
            "velvet 1120 XXL");
    things.console().clear();
    things.console().run("check", folder.toString(), "--json");
    Set<String> checked = new TreeSet<>();
    for (JsonNode check : JSON.readTree(things.console().out()).get("checks")) {
      String message = check.get("message").asText();
      if (message.contains("is cut apart")) {
        Matcher where = Pattern.compile("On (\\w+) ([0-9.]+) cm").matcher(message);
        assertThat(where.find()).isTrue();
        String width = plain(Double.parseDouble(where.group(2)) * 10);
        check
            .get("sizes")
            .forEach(size -> checked.add(where.group(1) + " " + width + " " + size.asText()));
      }
    }
    // 44 in are 111.76 cm, which is told to a millimetre, as the table tells it
    Set<String> told = new TreeSet<>();
    apart.forEach(where -> told.add(where.replace(" 1117.6 ", " 1118 ")));
    assertThat(checked).isEqualTo(told);
  }

  @Test
  void aFoldNeedsTheSameWhetherOthersAreShownOrNot() throws IOException {
    List<JsonNode> every = things.rows("--view", "A", "--fabric", "main", "--size", "XS,2T");
    for (String fold : List.of("single", "lengthwise")) {
      List<JsonNode> alone =
          things.rows("--view", "A", "--fabric", "main", "--size", "XS,2T", "--fold", fold);
      assertThat(alone).isNotEmpty().allMatch(row -> cell(row, "fold").equals(fold));
      assertThat(alone)
          .filteredOn(row -> row.get("fits").asBoolean())
          .allMatch(row -> row.get("best").asBoolean());
      assertThat(alone.stream().map(row -> cell(row, "nap", "size", "width_mm", "length_mm")))
          .containsExactlyInAnyOrderElementsOf(
              every.stream()
                  .filter(row -> cell(row, "fold").equals(fold))
                  .map(row -> cell(row, "nap", "size", "width_mm", "length_mm"))
                  .toList());
    }
  }
}
