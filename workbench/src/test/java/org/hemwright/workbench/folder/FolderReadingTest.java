package org.hemwright.workbench.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FolderReadingTest {
  private static final Origin SAID = new Origin("pattern.hem", 6, 1);

  @TempDir Path parent;

  private final List<Finding> problems = new ArrayList<>();

  @Test
  void readsTheDocumentWithoutItsByteOrderMark() throws IOException {
    Files.writeString(folder().resolve("pattern.hem"), "\uFEFFlanguage 1\n");

    FolderReading reading = reading();
    assertThat(reading.document()).contains("language 1\n");
    assertThat(reading.read()).containsOnlyKeys("pattern.hem");
    assertThat(problems).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.csv",
        "/etc/hostname",
        "..\\secret.csv",
        "C:secret.csv",
        ".hidden",
        "a/b.csv",
        "..",
        "",
        " ",
        "sizes.csv\u0000",
        "\n"
      })
  void nothingOutsideTheFolderIsRead(String name) throws IOException {
    Files.writeString(parent.resolve("secret.csv"), "size,hip (cm)\n8,92\n");
    Files.createDirectories(folder().resolve("a"));
    Files.writeString(folder().resolve("a/b.csv"), "size\n");

    assertThat(reading().bytes(name, SAID)).isEmpty();
    assertThat(problems).extracting(Finding::code).containsExactly("file-not-plain");
    assertThat(problems.get(0).origin()).contains(SAID);
  }

  @Test
  void aLinkIsRefusedWhereverItLeads() throws IOException {
    Files.writeString(parent.resolve("secret.csv"), "size,hip (cm)\n8,92\n");
    Files.createSymbolicLink(folder().resolve("sizes.csv"), parent.resolve("secret.csv"));
    Files.createSymbolicLink(folder().resolve("pattern.hem"), Path.of("nowhere"));

    assertThat(reading().bytes("sizes.csv", SAID)).isEmpty();
    assertThat(reading().document()).isEmpty();
    assertThat(problems).extracting(Finding::code).containsExactly("file-is-link", "file-is-link");
  }

  @Test
  void aFolderWhereAFileShouldBeAndAFileTooLargeAreTold() throws IOException {
    Files.createDirectories(folder().resolve("sizes.csv"));
    try (RandomAccessFile huge =
        new RandomAccessFile(folder().resolve("huge.csv").toFile(), "rw")) {
      huge.setLength(PatternFolder.MOST_BYTES + 1L);
    }

    assertThat(reading().bytes("sizes.csv", SAID)).isEmpty();
    assertThat(reading().bytes("huge.csv", SAID)).isEmpty();
    assertThat(problems)
        .extracting(Finding::code)
        .containsExactly("file-unreadable", "file-too-large");
  }

  @Test
  void everyProblemSaysWhatIsSoAndWhatWouldMendIt() throws IOException {
    Files.writeString(folder().resolve("sizes.csv"), "size\n");
    Files.write(
        folder().resolve("pattern.hem"),
        "language 1\npattern \"Röckchen\"\n".getBytes(StandardCharsets.ISO_8859_1));
    Files.createSymbolicLink(folder().resolve("link.csv"), Path.of("sizes.csv"));
    FolderReading reading = reading();
    reading.document();
    List.of("size.csv", "chart.xlsx", "../sizes.csv", "link.csv")
        .forEach(name -> reading.bytes(name, SAID));
    new FolderReading(new DiskFolder(Path.of("nowhere")), problems).document();

    Wording wording = Wording.of(FolderReading.messages());
    assertThat(problems)
        .extracting(finding -> wording.message(finding) + " | " + wording.mend(finding))
        .containsExactly(
            "From here on the document holds letters that are not in UTF-8. | Open it in a text"
                + " editor and save it with the encoding UTF-8.",
            "There is no file “size.csv” in the pattern folder. | Did you mean “sizes.csv”?",
            "There is no file “chart.xlsx” in the pattern folder, which holds pattern.hem and"
                + " sizes.csv. | Put the file there, or name one that is there.",
            "“../sizes.csv” leads out of the pattern folder, and nothing outside it is read. | Copy"
                + " the file into the folder and write its name alone.",
            "“link.csv” is a link to another file, and nothing outside the pattern folder is read."
                + " | Put the file itself into the folder in place of the link.",
            "nowhere is not a pattern folder: there is no pattern.hem in it. | Give the folder that"
                + " holds pattern.hem, or no folder at all for the demo.");
    assertThat(problems.get(0).origin()).contains(new Origin("pattern.hem", 2, 11));
  }

  @Test
  void theDemoIsPackedInTheProgram() {
    FolderReading reading = new FolderReading(PackedFolder.DEMO, problems);

    Optional<String> document = reading.document();
    assertThat(document.orElse("")).contains("\nlanguage 1\n");
    assertThat(reading.bytes("sizes.csv", SAID)).isPresent();
    assertThat(reading.bytes("../inlet-tee/sizes.csv", SAID)).isEmpty();
    assertThat(problems).extracting(Finding::code).containsExactly("file-not-plain");
  }

  private Path folder() throws IOException {
    return Files.createDirectories(parent.resolve("my skirt"));
  }

  private FolderReading reading() throws IOException {
    return new FolderReading(new DiskFolder(folder()), problems);
  }
}
