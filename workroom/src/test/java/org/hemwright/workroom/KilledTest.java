package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing older than a second is lost when the program is killed, and the file is whole at every
 * moment. How often it is killed is told by {@code -Dkills=50}; a few times when it is not.
 */
class KilledTest {
  private static final int KILLS = Integer.getInteger("kills", 4);

  /** The writer rests so long after each line (ms). */
  private static final int PACE = 40;

  /** It writes fewer lines than this in a second. */
  private static final int A_SECOND = 1000 / PACE;

  @TempDir Path folder;

  /** Writes numbered lines, a few each second, and tells of each once the room has it. */
  static final class Writer {
    private Writer() {}

    public static void main(String[] args) throws Exception {
      Path folder = Path.of(args[0]);
      Keeper keeper = Keeper.open(folder).orElseThrow();
      Room room = new Room(new DiskFolder(folder), keeper, List.of(), System.err::println);
      for (int i = Integer.parseInt(args[1]); ; i++) {
        String line = "# line " + i + "\n";
        room.beside(
            () -> line,
            said -> {
              String text = room.text("pattern.hem");
              room.change(List.of(new Splice("pattern.hem", text.length(), "", said)), false, "");
              System.out.println(said.strip());
              System.out.flush();
            });
        Thread.sleep(PACE);
      }
    }
  }

  @Test
  void nothingOlderThanASecondIsLost() throws Exception {
    SplittableRandom random = new SplittableRandom(20);
    Path file = folder.resolve("pattern.hem");
    Files.writeString(file, "language 1\n");
    int next = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Writer.class.getName(),
                  folder.toString(),
                  Integer.toString(next))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      int safe = -1;
      int told = -1;
      try (BufferedReader out =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        String first = out.readLine();
        assertThat(first).as("the writer starts").isNotNull();
        int lines = 30 + random.nextInt(40);
        long[] when = new long[lines];
        for (int i = 0; i < lines; i++) {
          String line = out.readLine();
          told = Integer.parseInt(line.substring("# line ".length()));
          when[i] = System.nanoTime();
        }
        process.destroyForcibly();
        long killed = System.nanoTime();
        for (int i = 0; i < lines; i++) {
          // A second by the clock and by the writer's own pace: it may have been kept waiting.
          if (killed - when[i] > TimeUnit.SECONDS.toNanos(1) && lines - i > A_SECOND) {
            safe = told - (lines - 1 - i);
          }
        }
      }
      process.waitFor();
      String onDisk = Files.readString(file);
      assertThat(onDisk).startsWith("language 1\n").endsWith("\n");
      try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
        String text = keeper.texts().getOrDefault("pattern.hem", "");
        assertThat(keeper.found()).as("no change from outside is made up").isEmpty();
        for (int i = 0; i <= safe; i++) {
          assertThat(text).contains("# line " + i + "\n");
        }
        next = (int) text.lines().count() - 1;
        assertThat(text).endsWith(next == 0 ? "language 1\n" : "# line " + (next - 1) + "\n");
      }
    }
  }

  /** Keeps a revision that adds some words at the end. */
  private static String added(Keeper keeper, int number, String text, String words)
      throws Exception {
    Splice splice = new Splice("pattern.hem", text.length(), "", words);
    String after = splice.applyTo(text);
    keeper.keep(
        List.of(new Revision(number, Revision.Cause.EDIT, false, "", List.of(splice))),
        Map.of("pattern.hem", after));
    return after;
  }

  /** A journal cut off at any byte is read up to its last whole line. */
  @Test
  void aTornJournalIsReadAsFarAsItIsWhole() throws Exception {
    Path file = folder.resolve("pattern.hem");
    Files.writeString(file, "a\n");
    Path journal = folder.resolve(".hemwright").resolve("journal");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      String text = "a\n";
      int number = 0;
      for (String word : List.of("b\n", "\u00e9 \"c\" \\\n", "d\n")) {
        text = added(keeper, ++number, text, word);
      }
    }
    byte[] whole = Files.readAllBytes(journal);
    String text = Files.readString(file);
    int entries = 3;
    for (int cut = whole.length; cut >= 0; cut--) {
      Files.write(journal, java.util.Arrays.copyOf(whole, cut));
      if (cut < whole.length && whole[cut] == '\n') {
        entries--;
      }
      try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
        assertThat(keeper.history()).hasSize(entries);
        assertThat(keeper.texts()).containsEntry("pattern.hem", text);
      }
    }
  }

  /** The journal came to the disk and the file did not: what it lacks is written after all. */
  @Test
  void whatOnlyTheJournalHasIsTakenFromThere() throws Exception {
    Path file = folder.resolve("pattern.hem");
    Files.writeString(file, "a\r\n");
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      String text = added(keeper, 1, "a\n", "b\n");
      Files.copy(file, folder.resolve("aside"));
      added(keeper, 2, text, "c\n");
    }
    assertThat(Files.readString(file)).isEqualTo("a\r\nb\r\nc\r\n");
    byte[] before = Files.readAllBytes(folder.resolve("aside"));
    Files.write(file, before);
    Files.write(
        folder.resolve(".hemwright").resolve("kept").resolve("pattern.hem"),
        "a\nb\n".getBytes(StandardCharsets.UTF_8));
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).containsEntry("pattern.hem", "a\nb\nc\n");
      assertThat(keeper.found()).isEmpty();
    }
    Files.writeString(file, "another\r\n", StandardOpenOption.TRUNCATE_EXISTING);
    try (Keeper keeper = Keeper.open(folder).orElseThrow()) {
      assertThat(keeper.texts()).containsEntry("pattern.hem", "another\n");
      assertThat(keeper.found()).hasSize(1);
    }
  }

  @Test
  void oneWorkroomForAFolder() throws Exception {
    Files.writeString(folder.resolve("pattern.hem"), "language 1\n");
    try (Keeper first = Keeper.open(folder).orElseThrow()) {
      assertThat(Keeper.open(folder)).isEqualTo(Optional.empty());
      assertThat(first.texts()).containsKey("pattern.hem");
    }
    Keeper.open(folder).orElseThrow().close();
  }
}
