package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands as a person or a script meets them. */
class MainTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void aSmallPattern() throws IOException {
    document(SmallSquare.DOCUMENT);
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n2T,52\n");
  }

  @Test
  void helpNamesEveryCommandAndTeachesByExample() {
    assertThat(console.run("--help")).isEqualTo(ExitCode.ALL_WELL);
    List<String> commands = HemwrightCommand.names();
    assertThat(console.out()).contains(commands);
    for (String command : commands) {
      console.clear();
      assertThat(console.run(command, "--help")).as(command).isEqualTo(ExitCode.ALL_WELL);
      assertThat(console.out()).as(command).contains("Examples:").contains("hemwright " + command);
      assertThat(console.out().lines().allMatch(line -> line.length() <= 100)).as(command).isTrue();
    }
    assertThat(console.err()).isEmpty();
  }

  @Test
  void argumentsThatCannotBeReadAreToldPlainly() {
    assertThat(console.run("draw", "--as", "gif")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("draw", "--per-mm", "x")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("paper", "--on", "a5")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("compare", "one")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err().lines())
        .containsExactly(
            "hemwright draw: --as gif: it takes png, svg or dxf; hemwright draw --help shows what"
                + " there is",
            "hemwright draw: --per-mm x: “x” is no number; hemwright draw --help shows what there"
                + " is",
            "hemwright paper: --on a5: it takes either, a4, letter, a0 or roll; hemwright paper"
                + " --help shows what there is",
            "hemwright compare: NEW is missing; hemwright compare --help shows what there is");
  }

  @Test
  void whatIsAcceptedIsShownWithItsReasonAndNoLongerFails() throws IOException {
    String faulty = document() + "seam ends square.left with square.lower\n";
    document(faulty + "accept seam-length on seam ends because \"It is eased\"\n");

    assertThat(console.run("check", folder.toString())).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.err())
        .contains("pattern.hem:16:1: accepted: In seam ends ")
        .contains(". Because: It is eased");
    assertThat(console.out()).contains(" accepted.");

    console.clear();
    assertThat(console.run("check", folder.toString(), "--json")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(JSON.readTree(console.out()).get("checks"))
        .anySatisfy(
            check -> {
              assertThat(check.get("status").asText()).isEqualTo("accepted");
              assertThat(check.path("because").asText()).isEqualTo("It is eased");
            });

    console.clear();
    document(faulty + "accept seam-length on seam end because \"It is eased\"\n");
    assertThat(console.run("check", folder.toString())).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err())
        .contains("worth a look: The document accepts what `seam-length` finds");
  }

  @Test
  void withoutACommandItShowsHelp() {
    assertThat(console.run()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out()).contains("Start here:");
  }

  @Test
  void measuresAsTables() {
    assertThat(console.run("measure", folder.toString())).isEqualTo(ExitCode.ALL_WELL);

    assertThat(console.out().lines().map(String::strip))
        .contains(
            "size   area  lower  right  upper   left", "8     460.0  23.00  20.00  23.00  20.00");
    assertThat(console.err()).isEmpty();
  }

  @Test
  void measuresAsJsonInMillimetres() throws IOException {
    assertThat(console.run("measure", folder.toString(), "--json", "--size", "2T,10")).isZero();

    JsonNode answer = JSON.readTree(console.out());
    assertThat(answer.get("sizes")).extracting(JsonNode::asText).containsExactly("10", "2T");
    JsonNode piece = answer.get("pieces").get(0);
    assertThat(piece.get("name").asText()).isEqualTo("square");
    assertThat(piece.get("area_mm2").get("10").asDouble()).isEqualTo(240.0 * 200);
    assertThat(piece.get("edges").get(0).get("name").asText()).isEqualTo("lower");
    assertThat(piece.get("edges").get(0).get("length_mm").get("2T").asDouble()).isEqualTo(130);
    assertThat(piece.get("edges").get(0).get("length_mm").has("8")).isFalse();
    assertThat(answer.get("seams").isArray()).isTrue();
    assertThat(console.err()).isEmpty();
  }

  @Test
  void checksAsJsonSayOfEachCheckHowItEnded() throws IOException {
    assertThat(console.run("check", folder.toString(), "--json")).isEqualTo(ExitCode.ALL_WELL);

    JsonNode checks = JSON.readTree(console.out()).get("checks");
    assertThat(checks.size()).isGreaterThan(3);
    JsonNode first = checks.get(0);
    assertThat(first.fieldNames())
        .toIterable()
        .containsExactly(
            "id",
            "status",
            "subject",
            "sizes",
            "found",
            "expected",
            "unit",
            "message",
            "place",
            "mend");
    assertThat(first.get("status").asText()).isEqualTo("ok");
    assertThat(first.get("sizes")).extracting(JsonNode::asText).containsExactly("8", "10", "2T");
  }

  @Test
  void aCheckThatFailsEndsWithOne() throws IOException {
    document(document() + "seam ends square.left with square.lower\n");

    assertThat(console.run("check", folder.toString())).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err()).contains("pattern.hem:16:1: ").contains("; ");
    console.clear();
    assertThat(console.run("check", folder.toString(), "--json")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(JSON.readTree(console.out()).get("checks"))
        .anySatisfy(
            check -> {
              assertThat(check.get("status").asText()).isEqualTo("fail");
              assertThat(check.get("place").get("file").asText()).isEqualTo("pattern.hem");
              assertThat(check.get("place").get("line").asInt()).isEqualTo(16);
              assertThat(check.get("mend").asText()).isNotEmpty();
            });
  }

  @Test
  void everyProblemOfTheInputIsToldWithItsPlaceAndItsMend() throws IOException {
    document(document().replace("hip / 4", "hipp / 4").replace("20 cm", "20"));
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,\"92,5\"\n10,96\n");

    assertThat(console.run("measure", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.out()).isEmpty();
    assertThat(console.err().lines())
        .hasSizeGreaterThan(2)
        .allMatch(line -> line.matches(".*(pattern\\.hem|sizes\\.csv):\\d+:\\d+: .*; .*"));
    assertThat(console.err())
        .contains(
            folder.resolve("sizes.csv")
                + ":2:3: hip in size 8 reads “92,5”, with a comma where the decimal point belongs;"
                + " write 92.5.");
  }

  @Test
  void withJsonTheProblemsAreJsonToo() throws IOException {
    document(document().replace("hip / 4", "hipp / 4"));

    assertThat(console.run("check", folder.toString(), "--json")).isEqualTo(ExitCode.INPUT_WRONG);
    JsonNode problem = JSON.readTree(console.out()).get("problems").get(0);
    assertThat(problem.get("status").asText()).isEqualTo("fail");
    assertThat(problem.get("place").get("line").asInt()).isEqualTo(11);
    assertThat(console.err()).contains("pattern.hem:11:");
  }

  @Test
  void anUnknownSizeNamesItsNeighbours() {
    assertThat(console.run("measure", folder.toString(), "--size", "9"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .isEqualTo(
            "--size 9: the chart has no size “9”; did you mean 8 or 10? It has 8, 10, 2T."
                + System.lineSeparator());
    console.clear();
    assertThat(console.run("measure", folder.toString(), "--size", "2t,7x")).isEqualTo(2);
    assertThat(console.err().lines())
        .containsExactly(
            "--size 2t: the chart has no size “2t”; did you mean 2T? It has 8, 10, 2T.",
            "--size 7x: the chart has no size “7x”; it has 8, 10, 2T.");
  }

  @Test
  void argumentsThatAreNotKnownAreMended() {
    assertThat(console.run("mesure")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("did you mean").contains("measure");
    console.clear();
    assertThat(console.run("measure", "--jsn")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("--jsn").contains("; ");
    assertThat(console.err().lines()).hasSize(1);
  }

  @Test
  void completionIsAScriptForTheShell() {
    assertThat(console.run("completion")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out()).contains("complete -F").contains("measure").contains("--json");
  }

  @Test
  void whateverLineOfADocumentIsLostOrDoubledNoExceptionComesThrough() throws IOException {
    List<String> lines = document().lines().toList();
    for (int lost = 0; lost < lines.size(); lost++) {
      StringBuilder without = new StringBuilder();
      StringBuilder doubled = new StringBuilder();
      for (int i = 0; i < lines.size(); i++) {
        without.append(i == lost ? "" : lines.get(i) + "\n");
        doubled.append(lines.get(i)).append('\n').append(i == lost ? lines.get(i) + "\n" : "");
      }
      for (String text : List.of(without.toString(), doubled.toString())) {
        document(text);
        assertThat(console.run("check", folder.toString())).as(text).isLessThan(3);
        assertThat(console.err())
            .as(text)
            .doesNotContain("Exception")
            .doesNotContain("fault of the");
        console.clear();
      }
    }
  }

  private String document() throws IOException {
    return Files.readString(folder.resolve("pattern.hem"));
  }

  private void document(String text) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), text);
  }
}
