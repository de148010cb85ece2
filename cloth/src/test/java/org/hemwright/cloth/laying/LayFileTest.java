package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayFileTest {

  private static final String TWO =
      """
      {"name": "two", "stripWidth": 4, "note": {"any": ["thing"]}, "items": [
        {"id": 0, "demand": 2, "allowedRotationsDegrees": [0, 180], "shape": [[0, 0], [2, 0], [0, 1.5]]},
        {"id": "cuff", "shape": [[0, 0], [0, 1], [1, 1], [1, 0]]}
      ]}
      """;

  @Test
  void readsShapesAndKeepsKindsOfIds() throws Exception {
    LayFile file = LayFile.read("two.json", TWO);
    assertThat(file.problem().name()).isEqualTo("two");
    assertThat(file.problem().copies()).isEqualTo(3);
    assertThat(file.problem().totalArea()).isEqualTo(4.0);
    assertThat(file.problem().shapes().get(0).turns()).containsExactly(Turn.AS_DRAWN, Turn.HALF);
    assertThat(file.problem().shapes().get(1).turns()).containsExactly(Turn.AS_DRAWN);
    assertThat(file.textIds()).containsExactly("cuff");
  }

  @Test
  void theRelaxedWidthTakesThePlaceOfTheNominalOne() throws Exception {
    String text =
        TWO.replace("\"stripWidth\": 4", "\"stripWidth\": 4, \"relaxedStripWidth\": 4.0004");
    assertThat(LayFile.read("two.json", text).problem().stripWidth()).isEqualTo(4.0004);
  }

  @Test
  void writesWhatTheFileAsksFor() throws Exception {
    LayFile file = LayFile.read("two.json", TWO);
    Layout layout =
        new Layout(
            2.5,
            List.of(
                new Placement("0", Turn.HALF, 2, 1.5),
                new Placement("0", Turn.AS_DRAWN, 0.1, 2),
                new Placement("cuff", Turn.AS_DRAWN, 1.25, 0)));
    String text = file.write(new LayResult(layout, true, 17));
    JsonNode json = new ObjectMapper().readTree(text);
    assertThat(json.get("length").doubleValue()).isEqualTo(2.5);
    assertThat(json.get("density").doubleValue()).isEqualTo(0.4);
    assertThat(json.get("complete").booleanValue()).isTrue();
    assertThat(json.get("placements")).hasSize(3);
    assertThat(json.get("placements").get(0).get("id").isInt()).isTrue();
    assertThat(json.get("placements").get(0).get("rotationDegrees").doubleValue()).isEqualTo(180);
    assertThat(json.get("placements").get(1).get("x").doubleValue()).isEqualTo(0.1);
    assertThat(json.get("placements").get(2).get("id").isTextual()).isTrue();
  }

  @Test
  void readsEveryPublishedInstanceWithItsArea() throws Exception {
    assumeTrue(PublishedInstances.present(), "../shared/data/strip-packing is not here");
    // Pieces and areas: the table in ../shared/data/strip-packing/README.md.
    checkCounts("shirts", 99, 2160);
    checkCounts("swim", 48, 25445023.8);
    checkCounts("albano", 24, 42656785);
    checkCounts("dagli", 30, 3034.5);
    checkCounts("jakobs1", 25, 392);
    checkCounts("poly4b", 60, 1547);
  }

  private static void checkCounts(String name, int copies, double area) throws Exception {
    StripProblem problem = PublishedInstances.problem(name);
    assertThat(problem.copies()).as(name).isEqualTo(copies);
    assertThat(problem.totalArea())
        .as(name)
        .isCloseTo(area, org.assertj.core.api.Assertions.withinPercentage(0.0001));
  }

  @Test
  void hostileInputEndsInPlainProblemsWithTheirPlaces() {
    refused("", "f.json:1:1: the file must be one JSON object");
    refused("[]", "the file must be one JSON object");
    refused("{\"stripWidth\": 4, \"items\": [", "this is not JSON");
    refused("{\"stripWidth\": NaN, \"items\": []}", "this is not JSON");
    refused("{\"stripWidth\": 1, \"stripWidth\": 2, \"items\": []}", "this is not JSON");
    refused("{\"stripWidth\": 4, \"items\": []}", "there is no shape to lay");
    refused("{\"items\": []}", "stripWidth is missing");
    refused("{\"stripWidth\": 4}", "items is missing");
    refused("{\"stripWidth\": \"4\", \"items\": []}", "stripWidth must be a number");
    refused("{\"stripWidth\": 1e999, \"items\": []}", "larger than any number");
    refused("{\"stripWidth\": -4, \"items\": [" + item("[[0,0],[1,0],[0,1]]") + "]}", "above 0");
    refused("{\"stripWidth\": 4, \"items\": {}} ", "items must be a list");
    refused("{\"stripWidth\": 4, \"items\": [1, null]}", "each of the items must be an object");
    refused("[".repeat(100_000), "the file must be one JSON object");
    refused("{\"a\":" + "[".repeat(100_000), "this is not JSON");
    refused(file("[[0,0],[1,0]]"), "has 2 corners; it needs at least three");
    refused(file("[[0,0],[1,0],[2,0]]"), "has no area");
    refused(file("[[0,0],[1,0],[2]]"), "this corner has 1 numbers; it needs two");
    refused(file("[[0,0],[1,0],[\"x\",2]]"), "a coordinate must be a number");
    refused(file("[[0,0],[1,0],[1e300,2]]"), "check the units");
    refused(file("[[0,0],[1,1],[1,0],[0,1]]"), "meets itself");
    refused(file("[[0,0],[2,0],[2,2],[1,0],[0,2]]"), "meets itself");
    refused(file("[[0,0],[2,0],[1,0],[1,1]]"), "meets itself");
    refused(file("[[0,0],[5,0],[5,5],[0,5]]"), "fits the strip of 4.0 in none of its turns");
    refused(file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":0"), "demand is 0");
    refused(file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":1.5"), "demand is 1.5");
    refused(file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":1e9"), "demand is 1e9");
    refused(file("[[0,0],[1,0],[0,1]]").replace("\"id\":1", "\"id\":null"), "an id must be");
    refused(file("[[0,0],[1,0],[0,1]]").replace("[0]", "[]"), "names no rotation");
    refused(file("[[0,0],[1,0],[0,1]]") + "1", "there is more after the end");
    String one = item("[[0,0],[1,0],[0,1]]");
    refused(
        "{\"stripWidth\": 4, \"items\": [" + one + "," + one + "]}", "two shapes have the id 1");
  }

  @Test
  void allProblemsAreNamedNotOnlyTheFirst() {
    String text =
        "{\"stripWidth\": 4,\n \"items\": [\n  "
            + item("[[0,0],[1,0]]")
            + ",\n  "
            + item("[[0,0],[true,0]]").replace("\"id\":1", "\"id\":2")
            + "]}";
    assertThatThrownBy(() -> LayFile.read("f.json", text))
        .isInstanceOfSatisfying(
            LayFileRefused.class,
            refused -> {
              assertThat(refused.problems()).hasSize(2);
              assertThat(refused.problems().get(0)).startsWith("f.json:3:3: shape 1 has 2 corners");
              assertThat(refused.problems().get(1))
                  .startsWith("f.json:4:")
                  .contains("must be a number");
            });
  }

  private static String item(String shape) {
    return "{\"id\":1,\"demand\":1,\"allowedRotationsDegrees\":[0],\"shape\":" + shape + "}";
  }

  private static String file(String shape) {
    return "{\"stripWidth\": 4, \"items\": [" + item(shape) + "]}";
  }

  private static void refused(String text, String problem) {
    assertThatThrownBy(() -> LayFile.read("f.json", text))
        .as(text.length() > 200 ? text.substring(0, 200) : text)
        .isInstanceOfSatisfying(
            LayFileRefused.class,
            e ->
                assertThat(e.problems())
                    .allMatch(p -> p.startsWith("f.json:"))
                    .anyMatch(p -> p.contains(problem)));
  }

  @Test
  void everyPrefixOfAFileIsRefusedOrReadWithoutAnyOtherFailure() {
    for (int end = 0; end < TWO.strip().length(); end++) {
      String prefix = TWO.substring(0, end);
      assertThatThrownBy(() -> LayFile.read("f.json", prefix)).isInstanceOf(LayFileRefused.class);
    }
  }
}
