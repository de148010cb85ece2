package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Laying loose shapes from a file, and checking a layout of them. */
class LayCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Two right-angled triangles, which make one rectangle of 3 by 2, and a square. */
  private static final String SHAPES =
      """
      {"name": "scraps", "stripWidth": 2, "items": [
        {"id": 0, "demand": 2, "allowedRotationsDegrees": [0, 180], "shape": [[0,0],[3,0],[0,2]]},
        {"id": "patch", "demand": 1, "allowedRotationsDegrees": [0],
         "shape": [[5,5],[7,5],[7,7],[5,7]]}
      ]}
      """;

  @TempDir Path folder;

  private final Console console = new Console();
  private Path shapes = Path.of("");

  @BeforeEach
  void someShapes() throws IOException {
    shapes = file("shapes.json", SHAPES);
  }

  @Test
  void laysAndTellsWhereEachShapeGoes() throws IOException {
    assertThat(console.run("lay", shapes.toString(), "--work", "200000"))
        .isEqualTo(ExitCode.ALL_WELL);

    JsonNode answer = JSON.readTree(console.out());
    assertThat(answer.get("length").asDouble()).isCloseTo(5, within(1e-9));
    assertThat(answer.get("density").asDouble()).isCloseTo(1, within(1e-9));
    assertThat(answer.get("complete").asBoolean()).isTrue();
    assertThat(answer.get("placements")).hasSize(3);
    JsonNode first = answer.get("placements").get(0);
    assertThat(first.fieldNames()).toIterable().containsExactly("id", "rotationDegrees", "x", "y");
    assertThat(first.get("id").isInt()).isTrue();
    assertThat(answer.get("placements").get(2).get("id").asText()).isEqualTo("patch");
    assertThat(console.err()).contains("scraps: 3 shapes on a length of 5.0000, density 100.00 %");
  }

  @Test
  void withJsonNothingIsSaidBesideIt() throws IOException {
    assertThat(console.run("lay", shapes.toString(), "--json", "--work", "1000")).isZero();
    assertThat(JSON.readTree(console.out()).has("placements")).isTrue();
    assertThat(console.err()).isEmpty();
  }

  @Test
  void workAndSeedDecideTheLayout() {
    String square = "[[0,0],[1.1,0],[1,1.2],[0,1]]";
    String text =
        SHAPES.replace("[[0,0],[3,0],[0,2]]", square).replace("\"demand\": 2", "\"demand\": 9");
    assertThat(layout(text, "--work", "50000", "--seed", "7"))
        .isEqualTo(layout(text, "--work", "50000", "--seed", "7"))
        .isNotEqualTo(layout(text, "--work", "50000", "--seed", "8"));
  }

  private String layout(String text, String... options) {
    console.clear();
    String[] args = new String[options.length + 2];
    args[0] = "lay";
    args[1] = file("other.json", text).toString();
    System.arraycopy(options, 0, args, 2, options.length);
    assertThat(console.run(args)).isEqualTo(ExitCode.ALL_WELL);
    return console.out();
  }

  @Test
  void secondsEndItEarlyAndSaySo() throws IOException {
    String many = SHAPES.replace("\"demand\": 2", "\"demand\": 9").replace("[3,0]", "[2.9,0.1]");
    Path file = file("many.json", many);
    assertThat(
            console.run(
                "lay", file.toString(), "--work", "1000000000000", "--seconds", "0.01", "--json"))
        .isEqualTo(ExitCode.ALL_WELL);
    JsonNode answer = JSON.readTree(console.out());
    assertThat(answer.get("complete").asBoolean()).isFalse();
    assertThat(answer.get("placements")).hasSize(10);
  }

  @Test
  void checksALayout() throws IOException {
    assertThat(console.run("lay", shapes.toString(), "--work", "200000", "--json")).isZero();
    Path layout = file("layout.json", console.out());
    console.clear();
    assertThat(console.run("lay", shapes.toString(), "--check", layout.toString())).isZero();
    assertThat(console.out()).isEqualTo("Nothing overlaps, and all lie as the problem asks.\n");
    assertThat(console.err()).isEmpty();
    console.clear();
    assertThat(console.run("lay", shapes.toString(), "--check", layout.toString(), "--json"))
        .isZero();
    assertThat(JSON.readTree(console.out()).get("checks").get(0).get("status").asText())
        .isEqualTo("ok");
  }

  @Test
  void saysWhatSpeaksAgainstALayoutAndWhere() {
    Path layout =
        file(
            "layout.json",
            """
            {"length": 4, "placements": [
              {"id": 0, "rotationDegrees": 0, "x": 0, "y": 0},
              {"id": 0, "rotationDegrees": 90, "x": 4, "y": 0},
              {"id": "patch", "rotationDegrees": 0, "x": -4, "y": -5}
            ]}
            """);
    assertThat(console.run("lay", shapes.toString(), "--check", layout.toString()))
        .isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.out()).isEmpty();
    assertThat(console.err().lines())
        .containsExactly(
            layout
                + ":2:3: Shape 0 at 0.0, 0.0 overlaps shape patch at -4.0, -5.0; move them apart.",
            layout + ":2:3: Shape 0 at 0.0, 0.0 overlaps shape 0 at 4.0, 0.0; move them apart.",
            layout
                + ":3:3: Shape 0 at 4.0, 0.0 is turned by 90 degrees, which it is not allowed;"
                + " turn it by 0 and 180 degrees.",
            layout
                + ":3:3: Shape 0 at 4.0, 0.0 stands over the edge of the strip, of its lane or of"
                + " the stated length, by 1.0; move it inward, or state the length that the layout"
                + " takes.",
            layout
                + ":3:3: Shape 0 at 4.0, 0.0 overlaps shape patch at -4.0, -5.0; move them apart.");
  }

  @Test
  void aLayoutFileMustBeOne() {
    Path layout = file("layout.json", "{\"length\": -1, \"placements\": [{\"id\": 0, \"x\": 1}]}");
    assertThat(console.run("lay", shapes.toString(), "--check", layout.toString()))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err().lines())
        .containsExactly(
            layout
                + ":1:12: length is not above 0; write what it measures, in the unit of the"
                + " shapes.",
            layout + ":1:31: y is missing; give where the shape's origin lies.");
  }

  @Test
  void filesThatCannotBeLaidAreToldWithTheirPlaces() throws IOException {
    Path absent = folder.resolve("absent.json");
    assertThat(console.run("lay", absent.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains(absent + ":1:1: There is no file " + absent + "; look whether its name");
    console.clear();
    assertThat(console.run("lay", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("cannot be read");
    console.clear();
    Path crossing =
        file("bad.json", SHAPES.replace("[[0,0],[3,0],[0,2]]", "[[0,0],[1,1],[1,0],[0,1]]"));
    assertThat(console.run("lay", crossing.toString(), "--json")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains(crossing + ":2:3: The outline of shape 0 meets itself near 1.0, 0.0; let it go");
    assertThat(JSON.readTree(console.out()).get("problems").get(0).get("id").asText())
        .isEqualTo("lay-crossing");
    console.clear();
    Files.write(folder.resolve("latin.json"), new byte[] {'{', '"', (byte) 0xe9, '"'});
    assertThat(console.run("lay", folder.resolve("latin.json").toString())).isEqualTo(2);
    assertThat(console.err())
        .contains("latin.json:1:3: From here on the file holds letters that are not");
  }

  @Test
  void numbersThatMakeNoSenseAreMended() {
    assertThat(console.run("lay", shapes.toString(), "--work", "0"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).isEqualTo("--work 0: give at least 1" + System.lineSeparator());
    console.clear();
    assertThat(console.run("lay", shapes.toString(), "--seconds", "NaN"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("--seconds NaN: give more than 0");
    console.clear();
    assertThat(console.run("lay", shapes.toString(), "--work", "much"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("much").contains("; ");
  }

  private Path file(String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
