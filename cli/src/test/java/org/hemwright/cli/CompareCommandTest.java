package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two versions of a pattern compared at the command line. */
class CompareCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void twoVersions() throws IOException {
    write("old", SmallSquare.DOCUMENT);
    write("new", SmallSquare.DOCUMENT.replace("1.0", "1.1").replace("by 20 cm", "by 21 cm"));
  }

  private void write(String name, String document) throws IOException {
    Path home = Files.createDirectories(folder.resolve(name));
    Files.writeString(home.resolve("pattern.hem"), document);
    Files.writeString(home.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n12,100\n");
  }

  private int compare(String... more) {
    String[] arguments = new String[3 + more.length];
    arguments[0] = "compare";
    arguments[1] = folder.resolve("old").toString();
    arguments[2] = folder.resolve("new").toString();
    System.arraycopy(more, 0, arguments, 3, more.length);
    return console.run(arguments);
  }

  @Test
  void aFolderIsTheSameAsItself() throws IOException {
    write("new", SmallSquare.DOCUMENT);
    assertThat(compare()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out()).isEqualTo("Nothing changed.\n");
    assertThat(console.err()).isEmpty();
  }

  @Test
  void tellsWhatChangedAndWhichPagesToPrintAgain() {
    assertThat(compare("--on", "a4")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out().lines())
        .contains(
            "  Version 1.1; it was 1.0.",
            "  The cut line of square lies 10 mm from where it was in every size.",
            "  square.right is 10 mm longer in every size: 20 cm became 21 cm.",
            "Pages to print again");
    assertThat(console.out()).contains("small-square-1.1-pages-a4.pdf: ").contains("A1");
  }

  /** 1/2 in is 12.7 mm. */
  @Test
  void aDocumentInInchesIsToldInInches() throws IOException {
    String inches = SmallSquare.DOCUMENT.replace("sizes from", "units inches\nsizes from");
    write("old", inches.replace("by 20 cm", "by 8 in"));
    write("new", inches.replace("1.0", "1.1").replace("by 20 cm", "by 8 1/2 in"));
    assertThat(compare("--on", "letter", "--size", "8")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out().lines())
        .contains(
            "  The cut line of square lies 1/2 in \u00b7 12.7 mm from where it was in size 8.",
            "  square.right is 1/2 in \u00b7 12.7 mm longer in size 8: 8 in \u00b7 20.32 cm became"
                + " 8 1/2 in \u00b7 21.59 cm.");
  }

  @Test
  void jsonHasTheMillimetresOfEachSize() throws IOException {
    assertThat(compare("--json", "--on", "a4", "--size", "8,12")).isEqualTo(ExitCode.ALL_WELL);
    JsonNode answer = JSON.readTree(console.out());
    assertThat(answer.get("same").asBoolean()).isFalse();
    assertThat(answer.get("changes"))
        .anySatisfy(
            change -> {
              assertThat(change.get("what").asText()).isEqualTo("edge-length");
              assertThat(change.get("subject").asText()).isEqualTo("square.left");
              assertThat(change.get("by_size").get("12").get("was_mm").asDouble()).isEqualTo(200);
              assertThat(change.get("by_size").get("12").get("is_mm").asDouble()).isEqualTo(210);
              assertThat(change.get("by_size").has("10")).isFalse();
            });
    assertThat(answer.get("print_again").get(0).get("pages"))
        .anySatisfy(page -> assertThat(page.get("name").asText()).isEqualTo("A1"));
  }

  @Test
  void drawsTheOldLineAgainstTheNew() throws IOException {
    Path seen = folder.resolve("seen");
    assertThat(compare("--on", "a4", "--out", seen.toString())).isEqualTo(ExitCode.ALL_WELL);
    Path picture = seen.resolve("compare-square-size-8.svg");
    assertThat(Files.readString(picture))
        .startsWith("<?xml")
        .contains("Version 1.0")
        .contains("Version 1.1")
        .contains("10 mm");
    assertThat(seen.resolve("compare-square-size-8.png")).isNotEmptyFile();
  }

  @Test
  void aFolderThatCannotBeReadIsToldWithItsPlace() throws IOException {
    write("new", SmallSquare.DOCUMENT.replace("hip / 4", "hipp / 4"));
    assertThat(compare()).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("pattern.hem:11:");
    assertThat(console.out()).isEmpty();
    console.clear();
    write("new", SmallSquare.DOCUMENT);
    assertThat(compare("--size", "9")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("did you mean 8 or 10?");
  }
}
