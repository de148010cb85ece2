package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.hemwright.workbench.out.KeptLayings;
import org.hemwright.workbench.out.OutFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is published once more is the same, and never older than its pattern. */
class PublishedAgainTest {
  private static final String DOCUMENT =
      SmallSquare.DOCUMENT.replace("grain along left\n", "grain along left\n  stretch across\n");

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void aSmallPattern() throws IOException {
    document(DOCUMENT);
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n");
  }

  private void document(String text) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), text);
  }

  private int publish(String... options) {
    console.clear();
    String[] all = new String[options.length + 4];
    System.arraycopy(new String[] {"publish", folder.toString(), "--on", "a4"}, 0, all, 0, 4);
    System.arraycopy(options, 0, all, 4, options.length);
    return console.run(all);
  }

  private Path pointer() {
    return folder.resolve("out").resolve(OutFolder.POINTER);
  }

  private Path layings() {
    return folder.resolve(".hemwright").resolve(KeptLayings.FILE);
  }

  private Map<String, String> standing() throws IOException {
    return StandingFiles.in(folder.resolve("out"));
  }

  /** What is laid anew is kept: where nothing is kept, nothing was laid. */
  @Test
  void anUnchangedFolderIsPublishedAgainWithoutMakingAnything() throws IOException {
    assertThat(publish()).as(console.err()).isEqualTo(ExitCode.ALL_WELL);
    String first = console.out();
    Map<String, String> made = standing();
    Files.delete(layings());

    assertThat(publish()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out()).isEqualTo(first).contains("Published in ").contains(".zip");
    assertThat(standing()).isEqualTo(made);
    assertThat(layings()).doesNotExist();
  }

  @Test
  void aBrokenPublicationAndAPointerElsewhereAreMended() throws IOException {
    publish();
    Map<String, String> made = standing();
    for (String file : made.keySet()) {
      if (file.endsWith(".pdf") || file.endsWith("manifest.json")) {
        Files.writeString(Path.of(file), "broken");
      }
    }
    assertThat(publish()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(standing()).isEqualTo(made);

    String current = Files.readString(pointer());
    document(DOCUMENT.replace("version 1.0", "version 1.1"));
    publish();
    assertThat(Files.readString(pointer())).isNotEqualTo(current);
    document(DOCUMENT);
    assertThat(publish()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(Files.readString(pointer())).isEqualTo(current);
    Files.delete(pointer());
    assertThat(publish()).isEqualTo(ExitCode.ALL_WELL);
    assertThat(Files.readString(pointer())).isEqualTo(current);
  }

  /** The pattern is as it was published, but its version has been released otherwise since. */
  @Test
  void whatMayNoLongerBePublishedIsRefusedAsBefore() throws IOException {
    assertThat(publish()).isEqualTo(ExitCode.ALL_WELL);
    document(DOCUMENT.replace("20 cm", "21 cm"));
    assertThat(console.run("publish", folder.toString(), "--release")).isEqualTo(ExitCode.ALL_WELL);
    document(DOCUMENT);
    assertThat(publish()).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err()).contains("This version 1.0 was released");
    assertThat(publish()).as("a refusal is not kept").isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err()).contains("This version 1.0 was released");
  }

  @Test
  void aReleaseIsFrozenThoughTheSameWasPublished() {
    assertThat(console.run("publish", folder.toString())).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.run("publish", folder.toString(), "--release")).isEqualTo(ExitCode.ALL_WELL);
    assertThat(folder.resolve("releases/1.0/release.json")).exists();
  }
}
