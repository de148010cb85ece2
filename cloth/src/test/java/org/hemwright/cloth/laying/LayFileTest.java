package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
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
  void holesAreFilledAndThatIsTold() throws Exception {
    String text =
        TWO.replace("\"cuff\",", "\"cuff\", \"holes\": [[[0.2, 0.2], [0.4, 0.2], [0.4, 0.4]]],");
    LayFile file = LayFile.read("two.json", text);
    assertThat(file.problem().totalArea()).as("as without holes").isEqualTo(4.0);
    assertThat(file.notes()).hasSize(1);
    Finding note = file.notes().get(0);
    assertThat(note.origin().orElseThrow().line()).isEqualTo(3);
    assertThat(Wording.of(Laying.messages()).message(note))
        .isEqualTo(
            "Shape cuff has 1 hole. Holes are filled: nothing is laid in them, and they count as"
                + " the shape's area.");
    assertThat(LayFile.read("two.json", TWO).notes()).isEmpty();
  }

  /** The same outline in ways that files of this kind write it. */
  @Test
  void anOutlineIsTheSameHoweverItIsWritten() throws Exception {
    String[] ways = {
      "[[0,0],[3,0],[3,1],[1,1],[1,3],[0,3]]",
      "[[0,3],[1,3],[1,1],[3,1],[3,0],[0,0]]",
      "[[0,0],[3,0],[3,1],[1,1],[1,3],[0,3],[0,0]]",
      "[[0,0],[0,0],[3,0],[3,1],[3,1],[1,1],[1,3],[0,3]]",
      "[[0,0],[1,0],[2.5,0],[3,0],[3,1],[2,1.0],[1,1],[1,2],[1,3],[0,3],[0,1e0]]",
      "[[-100,7],[-97,7],[-97,8],[-99,8],[-99,10],[-100,10]]"
    };
    for (double unit : new double[] {1, 1e-9, 1e12}) {
      for (String way : ways) {
        String text =
            "{\"stripWidth\": 4, \"items\": [{\"id\": 0, \"demand\": 3,"
                + " \"allowedRotationsDegrees\": [0, 180.0], \"shape\": "
                + way
                + "}]}";
        StripProblem read = LayFile.read("l.json", text).problem();
        StripProblem problem = scaled(read, unit);
        Layout layout =
            new Laying(problem).lay(new LayBudget(20_000, 1), LayWatcher.PATIENT).layout();
        assertThat(layout.length() / unit)
            .as(way + " in units of " + unit)
            .isCloseTo(5, org.assertj.core.api.Assertions.within(1e-6));
      }
    }
  }

  private static StripProblem scaled(StripProblem problem, double unit) {
    List<LooseShape> shapes =
        problem.shapes().stream()
            .map(
                shape ->
                    new LooseShape(
                        shape.id(),
                        shape.demand(),
                        shape.turns(),
                        shape.outline().stream()
                            .map(corner -> new Spot(corner.x() * unit, corner.y() * unit))
                            .toList()))
            .toList();
    return new StripProblem(problem.name(), problem.stripWidth() * unit, shapes);
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
    String one = item("[[0,0],[1,0],[0,1]]");
    refused(
        "", "1:1", "The file holds no JSON object. Write one object, with stripWidth and items.");
    refused("[]", "1:1", "The file holds no JSON object.");
    refused(
        "{\"stripWidth\": 4, \"items\": [",
        "1:29",
        "The file ends before the list that begins at line 1, column 28 is closed."
            + " Write the rest of it, and close it with ].");
    refused(
        "{\"stripWidth\": NaN, \"items\": []}",
        "1:16",
        "NaN stands here, where a value should be.");
    refused(
        "{\"stripWidth\": 1, \"stripWidth\": 2}",
        "1:19",
        "The field stripWidth stands a second time in one object. Keep one of the two.");
    refused(
        "{\"stripWidth\": 4, \"items\": []}",
        "1:1",
        "There is no shape to lay. Give at least one.");
    refused("{\"items\": []}", "1:13", "stripWidth is missing. Give the strip's width.");
    refused("{\"stripWidth\": 4}", "1:17", "items is missing. Give the shapes to lay.");
    refused(
        "{\"stripWidth\": \"4\", \"items\": []}",
        "1:16",
        "stripWidth is no number. Write a number.");
    refused(
        "{\"stripWidth\": 1e999, \"items\": []}",
        "1:16",
        "stripWidth is larger than any number that can be worked with. Look for a slip in it.");
    refused(
        "{\"stripWidth\": -4, \"items\": [" + one + "]}",
        "1:1",
        "The strip is -4.0 wide. Give a width above 0, in the unit of the shapes.");
    refused(
        "{\"stripWidth\": 4, \"items\": {}} ", "1:28", "items is no list. Write a list of shapes.");
    refused(
        "{\"stripWidth\": 4, \"items\": [1]}",
        "1:29",
        "This is no shape. Write an object with id, demand, allowedRotationsDegrees and shape.");
    refused("[".repeat(100_000), "1:1", "The file holds no JSON object.");
    refused("{\"a\":" + "[".repeat(100_000), "1:100006", "The file ends before the list");
    refused(
        "{\"a\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}",
        "1:",
        "longer or deeper in one another than can be worked with. Look for a slip in them.");
    refused(file("[[0,0],[1,0]]"), "1:29", "Shape 1 has 2 corners. Give it at least three.");
    refused(
        file("[[0,0],[1,0],[2,0]]"),
        "1:29",
        "Shape 1 has no area. Give it at least three corners that are not in line.");
    refused(file("[[0,0],[1,0],[2]]"), "1:", "This corner has 1 number. Give it two: x and y.");
    refused(file("[[0,0],[1,0],{}]"), "1:", "This is no corner. Write a list of two numbers.");
    refused(file("[[0,0],[1,0],[\"x\",2]]"), "1:", "a coordinate is no number. Write a number.");
    refused(
        file("[[0,0],[1,0],[1e300,2]]"),
        "1:29",
        "Shape 1 has a corner at 1.0E300, 2.0, far outside any strip 4.0 wide."
            + " Look whether the shape and the strip are in one unit.");
    refused(
        file("[[0,0],[1,1],[1,0],[0,1]]"),
        "1:29",
        "The outline of shape 1 meets itself near 1.0, 0.0."
            + " Let it go round once without crossing or touching itself.");
    refused(file("[[0,0],[2,0],[2,2],[1,0],[0,2]]"), "1:29", "meets itself near");
    refused(file("[[0,0],[2,0],[1,0],[1,1]]"), "1:29", "meets itself near");
    refused(
        file("[[0,0],[5,0],[5,5],[0,5]]"),
        "1:29",
        "Shape 1 fits the strip of 4.0 in none of its turns."
            + " Allow it another turn, or take a wider strip.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":0"),
        "1:",
        "demand is 0. Write a whole number from 1 to 2000.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":1.5"),
        "1:",
        "demand is 1.5.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("\"demand\":1", "\"demand\":1e9"),
        "1:",
        "demand is 1e9.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("\"id\":1", "\"id\":null"),
        "1:35",
        "This is no id. Write a whole number, or a text of 1 to 200 letters.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("\"id\":1,", ""),
        "1:29",
        "This shape has no id. Give it one that no other shape has.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("[0]", "[]"),
        "1:",
        "allowedRotationsDegrees names no rotation. Give at least 0.");
    refused(
        file("[[0,0],[1,0],[0,1]]").replace("[0]", "{}"),
        "1:",
        "allowedRotationsDegrees is no list. Write a list of numbers.");
    refused(
        file("[[0,0],[1,0],[0,1]]") + "1",
        "1:",
        "There is more after the end of the object. Take it out.");
    refused(
        "{\"stripWidth\": 4, \"items\": [" + one + "," + one + "]}",
        "1:",
        "Two shapes have the id 1. Give each its own.");
  }

  /** Each breaks one rule of RFC 8259; the place is counted by hand. */
  @Test
  void brokenJsonIsToldInPlainWordsWithItsPlace() {
    refused(
        "{\"items\": [\n1}", "2:2", "} stands here, and the list that begins at line 1, column 11");
    refused("{\"items\": [\r\n1 2]}", "2:3", "2 stands here, where a comma or the end of the list");
    refused("{\"items\": [1,\n]}", "1:13", "A comma stands before ], and nothing between them.");
    refused("{\"a\": 1,}", "1:8", "A comma stands before }, and nothing between them.");
    refused("{\"items\": [1,,2]}", "1:14", "There is nothing before this comma.");
    refused("{items: []}", "1:2", "items stands here, where the name of a field should be.");
    refused("{\"items\" []}", "1:10", "[ stands here, where the colon after items should be.");
    refused("{\"items\": }", "1:11", "} stands here, where a value should be.");
    refused("{\"items\": True}", "1:11", "True stands here, where a value should be.");
    for (String slip : List.of("01", "1.", "+1", ".5", "1e", "0x10", "-")) {
      refused("{\"items\": " + slip + "}", "1:11", slip.equals("-") ? "-" : slip + " is not how");
    }
    refused(
        "{\"name\": \"a\tb\"}",
        "1:12",
        "A tab stands in the text that begins at line 1, column 10");
    refused("{\"name\": \"a\\q\"}", "1:12", "After this backslash stands none of the letters");
    refused("{\"name\": \"a\\u12\"}", "1:12", "Write \\\\ for the backslash itself.");
    refused(
        "{\"name\": \"a", "1:12", "before the text that begins at line 1, column 10 is closed.");
    refused("{\"name\": \"a\nb\"}", "1:12", "The line ends within the text that begins at line 1");
    refused("{\"name\": \"a\u0001b\"}", "1:12", "A character that no page shows, U+0001,");
    refused("{\"name\": 'a'}", "1:10", "' stands here, where a value should be.");
    refused("{\"a\": 1} // more", "1:10", "There is more after the end of the object.");
  }

  @Test
  void everySlipOfOneLetterIsToldInOurOwnWords() {
    String text = TWO.strip();
    for (int at = 0; at < text.length(); at++) {
      for (String letter :
          List.of("", "]", "}", "[", "{", ",", ":", "\"", "'", "x", "\u0001", "\\")) {
        String slip = text.substring(0, at) + letter + text.substring(at + 1);
        assertThat(problems(slip))
            .as(slip)
            .noneMatch(line -> line.contains("Source"))
            .noneMatch(line -> line.contains("deeper in one another"))
            .allMatch(line -> line.matches("(?s)f\\.json:[1-5]:[0-9]+: .*"));
      }
    }
  }

  @Test
  void aStripOfAWidthBeyondReckoningIsToldItsTrueBound() {
    String square = file("[[0,0],[1,0],[1,1],[0,1]]");
    refused(
        square.replace("\"stripWidth\": 4", "\"stripWidth\": 1e300"),
        "1:1",
        "The strip is 1.0E300 wide, and the widest that can be worked with is 1.0E100.");
    refused(
        square.replace("\"stripWidth\": 4", "\"stripWidth\": 1e-300"),
        "1:1",
        "The strip is 1.0E-300 wide, and the narrowest that can be worked with is 1.0E-100.");
  }

  @Test
  void whatIsTooMuchForOneStripIsSaid() {
    String square = file("[[0,0],[1,0],[1,1],[0,1]]");
    refused(
        square
            .replace("\"demand\":1", "\"demand\":1500")
            .replace(
                "]}]}",
                "]},"
                    + item("[[0,0],[1,0],[0,1]]")
                        .replace("\"id\":1", "\"id\":2")
                        .replace("\"demand\":1", "\"demand\":1500")
                    + "]}"),
        "1:1",
        "There are 3000 copies to lay. Lay at most 2000 on one strip.");
    refused(
        square.replace("\"demand\":1", "\"demand\":2000").replace("[1,", "[1000,"),
        "1:1",
        "Laid in a row the shapes are more than 65536 times as long as the strip is wide."
            + " Look whether shapes and strip are in one unit.");
    StringBuilder round = new StringBuilder("[");
    for (int i = 0; i <= 1000; i++) {
      double angle = 2 * Math.PI * i / 1001;
      round.append(i == 0 ? "" : ",").append("[" + Math.cos(angle) + "," + Math.sin(angle) + "]");
    }
    refused(file(round + "]"), "1:29", "Shape 1 has 1001 corners. Simplify it to 1000 or fewer.");
  }

  @Test
  void aLaneBeyondTheStripIsSaid() {
    LooseShape shape =
        new LooseShape(
            "front", 1, LooseShapes.FIXED, LooseShapes.box(1, 1), List.of(new Lane.Between(3, 5)));
    assertThatThrownBy(() -> new StripProblem("p", 4, List.of(shape)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Shape front is held between 3.0 and 5.0, beyond the strip of 4.0.");
  }

  @Test
  void allProblemsAreNamedNotOnlyTheFirst() {
    String text =
        "{\"stripWidth\": 4,\n \"items\": [\n  "
            + item("[[0,0],[1,0]]")
            + ",\n  "
            + item("[[0,0],[true,0]]").replace("\"id\":1", "\"id\":2")
            + "]}";
    assertThat(problems(text)).hasSize(2);
    assertThat(problems(text).get(0)).startsWith("f.json:3:3: Shape 1 has 2 corners.");
    assertThat(problems(text).get(1)).startsWith("f.json:4:").contains("is no number.");
  }

  private static String item(String shape) {
    return "{\"id\":1,\"demand\":1,\"allowedRotationsDegrees\":[0],\"shape\":" + shape + "}";
  }

  private static String file(String shape) {
    return "{\"stripWidth\": 4, \"items\": [" + item(shape) + "]}";
  }

  private static void refused(String text, String place, String problem) {
    assertThat(problems(text))
        .as(text.length() > 200 ? text.substring(0, 200) : text)
        .allMatch(line -> line.startsWith("f.json:"))
        .anyMatch(line -> line.startsWith("f.json:" + place) && line.contains(problem));
  }

  private static List<String> problems(String text) {
    try {
      LayFile.read("f.json", text);
      return List.of();
    } catch (LayFileRefused refused) {
      Wording wording = Wording.of(Laying.messages());
      return refused.problems().stream().map(wording::line).toList();
    }
  }

  @Test
  void everyPrefixOfAFileIsRefusedOrReadWithoutAnyOtherFailure() {
    for (int end = 0; end < TWO.strip().length(); end++) {
      String prefix = TWO.substring(0, end);
      assertThatThrownBy(() -> LayFile.read("f.json", prefix)).isInstanceOf(LayFileRefused.class);
    }
  }
}
