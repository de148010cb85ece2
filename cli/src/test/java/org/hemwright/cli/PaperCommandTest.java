package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Printing from the command line: which files come of which options. */
class PaperCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void aBagInTwoViews() throws IOException {
    Files.writeString(
        folder.resolve("pattern.hem"),
        """
        language 1
        pattern "Two bags"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base S
        fabric main woven
          widths 115 cm
        piece side "Bag side" number 1
          cut 2 of main
          rectangle width by 40 cm, edges lower, right, upper, left
          allowance 1 cm
          grain along left
        piece strap "Strap" number 2
          cut 1 of main
          rectangle 60 cm by 10 cm, edges lower, right, upper, left
          allowance 1 cm
          grain along left
        view plain "Without a strap"
          pieces side
        view strapped "With a strap"
          pieces side, strap
        """);
    Files.writeString(folder.resolve("sizes.csv"), "size,width (cm)\nS,30\nL,36\n");
  }

  private int run(String... arguments) {
    String[] all =
        Stream.concat(Stream.of(arguments), Stream.of("--out", folder.resolve("made").toString()))
            .toArray(String[]::new);
    return console.run(all);
  }

  private List<String> made() throws IOException {
    Path made = folder.resolve("made");
    try (Stream<Path> files = Files.walk(made)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> made.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void onePaperMakesOneFile() throws IOException {
    assertThat(run("paper", folder.toString(), "--on", "a4")).isZero();
    assertThat(made()).containsExactly("two-bags-1.0-pages-a4.pdf");
  }

  @Test
  void thePartsOfASplitArePrintedInItsPlace() throws IOException {
    Path document = folder.resolve("pattern.hem");
    String text =
        Files.readString(document)
            .replace(
                "view plain",
                """
                  point half_low on lower at 50% from start
                  point half_up on upper at 50% from start
                  split halves is half_low to half_up, allowance 1 cm
                view plain\
                """);
    Files.writeString(document, text);
    assertThat(run("paper", folder.toString(), "--on", "a4", "--cut-apart", "strap.halves"))
        .isZero();
    try (PDDocument pdf =
        Loader.loadPDF(folder.resolve("made/two-bags-1.0-pages-a4.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("Strap, part 1 of 2", "Strap, part 2 of 2", "2a", "2b");
    }
    assertThat(run("paper", folder.toString(), "--cut-apart", "strap.thirds")).isEqualTo(2);
    assertThat(console.err()).contains("--cut-apart strap.thirds", "strap.halves");
  }

  @Test
  void aViewHasItsOwnFilesAndFewerPages() throws IOException {
    assertThat(run("paper", folder.toString(), "--on", "either", "--json")).isZero();
    JsonNode group = JSON.readTree(console.out()).at("/files/0/groups/0");
    assertThat(group.at("/pages_of_view/strapped/S").asInt())
        .isEqualTo(group.at("/pages_of_size/S").asInt());
    assertThat(group.at("/pages_of_view/plain/S").asInt())
        .isLessThan(group.at("/pages_of_size/S").asInt());
    console.clear();
    assertThat(run("paper", folder.toString(), "--on", "either", "--view", "plain", "--json"))
        .isZero();
    JsonNode file = JSON.readTree(console.out()).at("/files/0");
    assertThat(file.get("name").asText()).isEqualTo("view-plain/two-bags-1.0-view-plain-pages.pdf");
    assertThat(file.at("/groups/0/pages").asInt()).isLessThan(group.get("pages").asInt());
    assertThat(made())
        .containsExactly("two-bags-1.0-pages.pdf", "view-plain/two-bags-1.0-view-plain-pages.pdf");
  }

  @Test
  void anUnknownViewIsToldWithTheViewsThatThereAre() {
    assertThat(run("paper", folder.toString(), "--view", "plian")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(run("publish", folder.toString(), "--view", "B")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err().lines())
        .containsExactly(
            "--view plian: the pattern has no view “plian”; did you mean plain? It has plain,"
                + " strapped.",
            "--view B: the pattern has no view “B”; it has plain, strapped.");
  }

  @Test
  void oneSizeHasAFolderOfItsOwn() throws IOException {
    assertThat(run("paper", folder.toString(), "--on", "letter", "--size", "S")).isZero();
    assertThat(run("paper", folder.toString(), "--on", "a0", "--size", "S", "--view", "plain"))
        .isZero();
    assertThat(made())
        .containsExactly(
            "size-s/two-bags-1.0-size-s-pages-letter.pdf",
            "view-plain/size-s/two-bags-1.0-view-plain-size-s-a0.pdf");
  }

  @Test
  void stitchLinesAreShownWhereAskedFor() throws IOException {
    String[] asked = {"paper", folder.toString(), "--on", "a4"};
    byte[] hidden = pages(asked);
    byte[] shown = pages("paper", folder.toString(), "--on", "a4", "--stitch-lines");
    byte[] left = pages("paper", folder.toString(), "--on", "a4", "--no-stitch-lines");
    assertThat(shown).isNotEqualTo(hidden);
    assertThat(left).isEqualTo(hidden);
    Files.writeString(
        folder.resolve("pattern.hem"),
        Files.readString(folder.resolve("pattern.hem")) + "paper\n  stitch lines shown\n");
    assertThat(pages(asked)).isEqualTo(shown);
    assertThat(pages("paper", folder.toString(), "--on", "a4", "--no-stitch-lines"))
        .isEqualTo(hidden);
  }

  @Test
  void aPublicationHoldsPicturesAndTheManifestListsEveryFile() throws IOException {
    assertThat(run("publish", folder.toString(), "--on", "a4,a0")).isZero();
    List<String> made = made();
    String home = Files.readString(folder.resolve("made/current.txt")).strip() + "/";
    assertThat(made)
        .contains(
            home + "two-bags-1.0-pages-a4.pdf",
            home + "two-bags-1.0-a0.pdf",
            home + "pictures/two-bags-1.0-sizes-s-to-l.svg",
            home + "pictures/two-bags-1.0-sizes-s-to-l.png",
            home + "pictures/two-bags-1.0-size-s.svg",
            home + "pictures/two-bags-1.0-size-s.png");
    JsonNode manifest = JSON.readTree(folder.resolve("made/" + home + "manifest.json").toFile());
    List<String> listed = manifest.findValuesAsText("name");
    assertThat(listed.stream().map(name -> home + name))
        .containsAll(made.stream().filter(name -> name.startsWith(home + "p")).toList());
    // The same input makes the same publication, byte for byte, hence the same folder.
    assertThat(run("publish", folder.toString(), "--on", "a4,a0")).isZero();
    assertThat(made()).isEqualTo(made);
    // One size has its own picture, and no other.
    assertThat(run("publish", folder.toString(), "--on", "a4", "--size", "L")).isZero();
    String single = Files.readString(folder.resolve("made/current.txt")).strip() + "/pictures/";
    assertThat(made().stream().filter(name -> name.startsWith(single)))
        .containsExactly(single + "two-bags-1.0-size-l.png", single + "two-bags-1.0-size-l.svg");
  }

  private byte[] pages(String... arguments) throws IOException {
    assertThat(run(arguments)).isZero();
    return Files.readAllBytes(folder.resolve("made/two-bags-1.0-pages-a4.pdf"));
  }
}
