package org.hemwright.workroom.keep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can become of a file beside the workroom, and that nothing is lost by it. */
class KeeperTest {
  private static final String NAME = "pattern.hem";

  @TempDir Path folder;

  private Path file() {
    return folder.resolve(NAME);
  }

  private static Revision edit(int number, String before, String after) {
    return new Revision(
        number, Revision.Cause.EDIT, false, "", List.of(Splice.between(NAME, before, after)));
  }

  private static Keeper.Kept keep(Keeper keeper, int number, String before, String after)
      throws IOException {
    return keeper.keep(List.of(edit(number, before, after)), Map.of(NAME, after));
  }

  private String bytes() throws IOException {
    return Files.readString(file(), StandardCharsets.ISO_8859_1);
  }

  /** A changed number, a new line and a line that goes: all other bytes stay as they were. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a 1~b~c~        | a 2~b~c~          | a 2~b~c~
          a 1`b~c`d       | a 1`b~c 5`d       | a 1`b~c 5`d
          a 1`b`c~d`      | a 1`b`new`c~d`    | a 1`b`new`c~d`
          a 1`b~c~d~      | a 2`c~d~          | a 2`c~d~
          a 1`b~c`d~e     | a 2`b~c`d 2~e     | a 2`b~c`d 2~e
          a!b!c           | a!b 2!c           | a!b 2!c
          a`              | a`b               | a`b
          """)
  void linesKeepTheirEnds(String before, String after, String expected) throws IOException {
    Files.writeString(file(), ends(before));
    String from = plain(before);
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).containsEntry(NAME, from);
      keep(keeper, 1, from, plain(after));
      assertThat(bytes()).isEqualTo(ends(expected));
      keep(keeper, 2, plain(after), from + "z");
      keep(keeper, 3, from + "z", from);
    }
    assertThat(bytes().replace("\r\n", "\n").replace('\r', '\n')).isEqualTo(from);
  }

  /** A tilde stands for a line feed, a backquote for both signs, a bang for a return alone. */
  private static String ends(String sketch) {
    return sketch.replace("~", "\n").replace("`", "\r\n").replace("!", "\r");
  }

  private static String plain(String sketch) {
    return sketch.replace('~', '\n').replace('`', '\n').replace('!', '\n');
  }

  /** Unicode standard, section 23.8: a mark at the start tells the order of bytes. */
  @ParameterizedTest
  @CsvSource({"UTF-8", "UTF-16LE", "UTF-16BE"})
  void aFileKeepsItsMarkAndItsCharset(String charset) throws IOException {
    Charset own = Charset.forName(charset);
    Files.write(file(), "\ufeff# caf\u00e9\r\n".getBytes(own));
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).containsEntry(NAME, "# caf\u00e9\n");
      keep(keeper, 1, "# caf\u00e9\n", "# caf\u00e9 \u00bd\n");
    }
    assertThat(Files.readAllBytes(file())).isEqualTo("\ufeff# caf\u00e9 \u00bd\r\n".getBytes(own));
  }

  @Test
  void whatIsNoTextIsNotWrittenOver() throws IOException {
    byte[] foreign = "# caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file(), foreign);
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).isEmpty();
      assertThat(keep(keeper, 1, "", "b\n").withheld())
          .containsExactly(Map.entry(NAME, Keeper.Withheld.FOREIGN));
      assertThat(Files.readAllBytes(file())).isEqualTo(foreign);
    }
    Files.writeString(file(), "a\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      Files.write(file(), foreign);
      assertThat(keeper.outside()).isEmpty();
      assertThat(keep(keeper, 2, "a\n", "a 2\n").withheld()).containsKey(NAME);
      assertThat(Files.readAllBytes(file())).isEqualTo(foreign);
      Files.writeString(file(), "a\n");
      assertThat(keeper.keep(List.of(), Map.of(NAME, "a 2\n")).withheld()).isEmpty();
      assertThat(file()).hasContent("a 2\n");
    }
  }

  @Test
  void aFileSetToBeReadOnlyIsLetBeAndItsRightsStay() throws IOException {
    assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
        "files have no rights here");
    Files.writeString(file(), "a\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("r--r-----"));
      assertThat(keep(keeper, 1, "a\n", "b\n").withheld())
          .containsExactly(Map.entry(NAME, Keeper.Withheld.READ_ONLY));
      assertThat(file()).hasContent("a\n");
      Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-rw----"));
      assertThat(keeper.keep(List.of(), Map.of(NAME, "b\n")).withheld()).isEmpty();
    }
    assertThat(file()).hasContent("b\n");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
        .isEqualTo("rw-rw----");
  }

  @Test
  void whatAnotherEditorPutsInItsPlaceIsSeen() throws IOException {
    Files.writeString(file(), "a\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      Files.writeString(folder.resolve("swap"), "theirs\n");
      Files.move(folder.resolve("swap"), file(), StandardCopyOption.ATOMIC_MOVE);
      assertThat(keeper.outside()).containsExactly(Map.entry(NAME, "theirs\n"));
      assertThat(keep(keeper, 1, "a\n", "ours\n").outside())
          .containsExactly(Map.entry(NAME, "theirs\n"));
      assertThat(file()).hasContent("theirs\n");
      Files.writeString(folder.resolve("booklet.md"), "# New\n");
      assertThat(keeper.outside()).containsEntry("booklet.md", "# New\n");
    }
  }

  @Test
  void aFileThatIsTakenOutIsToldAndPutBack() throws IOException {
    Files.writeString(file(), "a\r\nb\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      keep(keeper, 1, "a\nb\n", "a 2\nb\n");
      Files.delete(file());
      assertThat(keeper.missing()).containsExactly(NAME);
      assertThat(keeper.keep(List.of(), Map.of(NAME, "a 2\nb\n")).withheld()).isEmpty();
      assertThat(file()).doesNotExist();
      keeper.putBack(NAME, "a 2\nb\n");
      assertThat(keeper.missing()).isEmpty();
      assertThat(bytes()).isEqualTo("a 2\r\nb\n");
      Files.delete(file());
    }
    assertThat(Keeper.hasDocument(folder)).isTrue();
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).containsEntry(NAME, "a 2\nb\n");
      assertThat(keeper.missing()).containsExactly(NAME);
    }
  }

  /** A disk with next to no room, as only an administrator can make one; left out elsewhere. */
  @Test
  void aFullDiskLosesNothingAndIsCaughtUpWith() throws Exception {
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", folder.toString()),
        "a small disk can only be made by an administrator");
    try {
      Files.writeString(file(), "a\n");
      try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
        Path ballast = folder.resolve("ballast");
        String text = "a\n";
        String more = text + "b".repeat(9000) + "\n";
        fill(ballast);
        Revision revision = edit(1, text, more);
        for (int i = 0; i < 3; i++) {
          assertThatThrownBy(() -> keeper.keep(List.of(revision), Map.of(NAME, more)))
              .isInstanceOf(IOException.class);
          assertThat(file()).hasContent(text);
        }
        // Room for the journal and not for the file: neither comes twice.
        Files.write(ballast, new byte[(int) Files.size(ballast) - 20_480]);
        try {
          keeper.keep(List.of(revision), Map.of(NAME, more));
        } catch (IOException stillFull) {
          assertThat(file()).hasContent(text);
        }
        Files.delete(ballast);
        keeper.keep(List.of(revision), Map.of(NAME, more));
        assertThat(file()).hasContent(more);
        keep(keeper, 2, more, "c\n");
      }
      try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
        assertThat(keeper.history()).extracting(Revision::number).containsExactly(1, 2);
        assertThat(keeper.texts()).containsEntry(NAME, "c\n");
        assertThat(keeper.found()).isEmpty();
      }
      assertThat(List.of(folder.toFile().list())).noneMatch(name -> name.startsWith(".building"));
    } finally {
      run("umount", folder.toString());
    }
  }

  private static void fill(Path ballast) throws IOException {
    try (var stream = Files.newOutputStream(ballast)) {
      while (true) {
        stream.write(new byte[4096]);
      }
    } catch (IOException full) {
      assertThat(ballast).exists();
    }
  }

  private static boolean run(String... command) throws Exception {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor(2, TimeUnit.MINUTES) && process.exitValue() == 0;
    } catch (IOException absent) {
      return false;
    }
  }

  /** The workroom's own folder may be swept away while it is open; what follows is kept. */
  @Test
  void itsOwnFolderIsMadeAnew() throws IOException {
    Files.writeString(file(), "a\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      keep(keeper, 1, "a\n", "b\n");
      for (String name : List.of("kept/" + NAME, "kept", "journal", "lock", "")) {
        Files.delete(folder.resolve(Keeper.PLACE).resolve(name));
      }
      keep(keeper, 2, "b\n", "c\n");
      assertThat(file()).hasContent("c\n");
    }
    Optional<Keeper> again = Keeper.open(folder);
    try (Keeper keeper = again.orElseThrow()) {
      assertThat(keeper.texts()).containsEntry(NAME, "c\n");
      assertThat(keeper.found()).isEmpty();
    }
  }
}
