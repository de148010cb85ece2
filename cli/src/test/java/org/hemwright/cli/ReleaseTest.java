package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A version goes out, is frozen, is asked later, and is never given out otherwise. */
class ReleaseTest {
  private static final String DOCUMENT =
      SmallSquare.DOCUMENT.replace("  point corner", "  stretch across\n  point corner");

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void aSmallPattern() throws IOException {
    document(DOCUMENT);
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n12,100\n");
  }

  @Test
  void aReleaseIsFrozenWithAllThatItWasMadeFrom() throws IOException {
    assertThat(console.run("publish", folder.toString(), "--release"))
        .as(console.err())
        .isEqualTo(0);

    Path frozen = folder.resolve("releases/1.0");
    assertThat(console.out()).contains("Released as " + frozen).contains("small-square-1.0.zip");
    assertThat(frozen.resolve("pattern.hem")).hasContent(DOCUMENT);
    JsonNode said = new ObjectMapper().readTree(frozen.resolve("release.json").toFile());
    assertThat(said.get("version").asText()).isEqualTo("1.0");
    assertThat(said.get("sha256").fieldNames())
        .toIterable()
        .containsExactly("manifest.json", "pattern.hem", "run.json", "sizes.csv");
    Path published = folder.resolve("out").resolve(said.get("published_in").asText());
    assertThat(published.resolve("manifest.json"))
        .hasSameBinaryContentAs(frozen.resolve("manifest.json"));
  }

  @Test
  void theZipHoldsWhatMakersDownloadAndNothingOfTheDesigners() throws IOException {
    console.run("publish", folder.toString(), "--on", "a4");
    Path published = published();
    byte[] zip = Files.readAllBytes(published.resolve("small-square-1.0.zip"));

    List<String> names = new ArrayList<>();
    try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
        names.add(entry.getName());
        assertThat(entry.getTimeLocal()).isEqualTo("2026-11-25T00:00:00");
        String own = entry.getName().replace("small-square-1.0/", "");
        assertThat(entries.readAllBytes()).isEqualTo(Files.readAllBytes(published.resolve(own)));
      }
    }
    assertThat(names)
        .containsExactly(
            "small-square-1.0/small-square-1.0-booklet-a4-large-print.pdf",
            "small-square-1.0/small-square-1.0-booklet-a4.pdf",
            "small-square-1.0/small-square-1.0-booklet-letter.pdf",
            "small-square-1.0/small-square-1.0-booklet.html",
            "small-square-1.0/small-square-1.0-layouts-main.pdf",
            "small-square-1.0/small-square-1.0-pages-a4.pdf");
    Path first = published;
    Files.delete(first.resolve("small-square-1.0.zip"));
    console.run("publish", folder.toString(), "--on", "a4");
    assertThat(Files.readAllBytes(published().resolve("small-square-1.0.zip"))).isEqualTo(zip);
  }

  @Test
  void aReleasedVersionThatChangedIsRefusedUntilItHasANewNumber() throws IOException {
    console.run("publish", folder.toString(), "--release", "--json");
    String pointer = Files.readString(folder.resolve("out/current.txt"));
    document(DOCUMENT.replace("20 cm", "21 cm"));
    console.clear();

    assertThat(console.run("publish", folder.toString())).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err())
        .contains(
            "pattern.hem:3:1: This version 1.0 was released, dated 2026-11-25, and the pattern has"
                + " changed since: square; give it a new version and date, and makers are told"
                + " what changed.")
        .contains("Not published: 1 to mend.");
    assertThat(folder.resolve("out/current.txt")).hasContent(pointer);

    document(
        DOCUMENT
            .replace("20 cm", "21 cm")
            .replace("version 1.0", "version 1.1")
            .replace("2026-11-25", "2026-12-01"));
    assertThat(console.run("publish", folder.toString(), "--release")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(published().resolve("changes-since-1.0.md"))
        .content()
        .startsWith("# Small square: what changed in version 1.1\n")
        .contains("It is for you if you have version 1.0 of 25 November 2026.")
        .contains("## Piece 1, Square\n")
        .contains(
            "- The cut line of Square lies 10 mm · 13/32 in from where it was in every size.\n")
        .contains("## What to print again\n");
    assertThat(folder.resolve("releases/1.1/release.json")).exists();
  }

  @Test
  void aCommentIsNoChangeAndASecondReleaseLeavesTheFirst() throws IOException {
    console.run("publish", folder.toString(), "--release");
    byte[] frozen = Files.readAllBytes(folder.resolve("releases/1.0/release.json"));
    document("# A note to self.\n" + DOCUMENT);

    assertThat(console.run("publish", folder.toString(), "--release"))
        .as(console.err())
        .isEqualTo(0);
    assertThat(Files.readAllBytes(folder.resolve("releases/1.0/release.json"))).isEqualTo(frozen);
    assertThat(folder.resolve("releases")).isDirectoryNotContaining("glob:**/1.0-2");
  }

  @Test
  void laterQuestionsNameTheVersionThatAMakerBought() throws IOException {
    console.run("publish", folder.toString(), "--release");
    console.clear();
    console.run("measure", folder.toString(), "--json");
    String bought = console.out();
    document(DOCUMENT.replace("20 cm", "25 cm").replace("version 1.0", "version 2.0"));

    console.clear();
    assertThat(console.run("measure", folder.toString(), "--released", "1.0", "--json"))
        .isEqualTo(0);
    assertThat(console.out()).isEqualTo(bought);
    console.clear();
    assertThat(console.run("measure", folder.resolve("releases/1.0").toString(), "--json"))
        .isEqualTo(0);
    assertThat(console.out()).isEqualTo(bought);
    console.clear();
    assertThat(console.run("compare", folder.resolve("releases/1.0").toString(), folder.toString()))
        .isEqualTo(0);
    assertThat(console.out()).contains("Version 2.0; it was 1.0.");

    assertThat(console.run("measure", folder.toString(), "--released", "1.5"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("--released 1.5: there is no such release; there is 1.0");
  }

  @Test
  void aReleaseThatWasTamperedWithIsToldAndNotUsed() throws IOException {
    console.run("publish", folder.toString(), "--release");
    Path kept = folder.resolve("releases/1.0/run.json");
    Files.writeString(kept, Files.readString(kept).replace("200.0", "201.0"));

    assertThat(console.run("measure", folder.toString(), "--released", "1.0"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("is not whole: run.json is missing or was changed");
    assertThat(console.run("publish", folder.toString())).isEqualTo(ExitCode.CHECK_FAILS);
  }

  @Test
  void aReleaseIsTheWholePatternAndNoProof() {
    for (String[] more : new String[][] {{"--proof"}, {"--size", "8"}, {"--on", "a4"}}) {
      List<String> words = new ArrayList<>(List.of("publish", folder.toString(), "--release"));
      words.addAll(List.of(more));
      assertThat(console.run(words.toArray(String[]::new))).isEqualTo(ExitCode.INPUT_WRONG);
    }
    assertThat(console.err()).contains("--release: a release is the whole pattern;");
    assertThat(console.run("publish", "--release")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(folder.resolve("releases")).doesNotExist();
  }

  private Path published() throws IOException {
    Path pointer = folder.resolve("out/current.txt");
    return pointer.resolveSibling(Files.readString(pointer).strip());
  }

  private void document(String text) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), text);
  }
}
