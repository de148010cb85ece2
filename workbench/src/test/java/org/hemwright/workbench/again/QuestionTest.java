package org.hemwright.workbench.again;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two questions are the same where nothing that an answer follows from differs. */
class QuestionTest {
  private static final List<String> WORDS = List.of("cloth", "my-skirt");

  @TempDir Path folder;

  @BeforeEach
  void aPattern() throws IOException {
    write("pattern.hem", "language 1\n");
    write("sizes.csv", "size\nS\n");
    write("pictures/logo.svg", "<svg/>");
    write("releases/1.0/run.json", "{}");
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Optional<Question> asked() {
    return Question.of(Optional.of(folder), WORDS);
  }

  @Test
  void everythingInTheFolderCounts() throws IOException {
    Set<Optional<Question>> known = new HashSet<>();
    assertThat(known.add(asked())).isTrue();
    write("pattern.hem", "language 1 \n");
    assertThat(known.add(asked())).as("one blank in the document").isTrue();
    write("pictures/logo.svg", "<svg />");
    assertThat(known.add(asked())).as("a picture").isTrue();
    write("pictures/.shot.svg", "<svg />");
    assertThat(known.add(asked())).as("a hidden file among the pictures").isTrue();
    write("releases/1.0/run.json", "{ }");
    assertThat(known.add(asked())).as("a release").isTrue();
    write("traced/out/front.svg", "<svg/>");
    assertThat(known.add(asked())).as("a file more").isTrue();
    Files.move(folder.resolve("sizes.csv"), folder.resolve("chart.csv"));
    assertThat(known.add(asked())).as("another name").isTrue();
    Files.delete(folder.resolve("chart.csv"));
    assertThat(known.add(asked())).as("a file less").isTrue();
    assertThat(known).doesNotContain(Optional.empty());
  }

  @Test
  void whatIsMadeAndWhatIsHiddenDoNotCount() throws IOException {
    Optional<Question> first = asked();
    assertThat(first).isPresent();
    write("out/cloth/yardage.csv", "size\n");
    write(".hemwright/journal", "1\n");
    write(".gitignore", "out\n");
    assertThat(asked()).isEqualTo(first);
  }

  @Test
  void everyWordCounts() {
    Set<Optional<Question>> known = new HashSet<>();
    for (List<String> words :
        List.of(
            List.of("cloth", "a b"),
            List.of("cloth", "a", "b"),
            List.of("cloth", "b", "a"),
            List.of("cloth", "a\n1 b"),
            List.of("cloth"))) {
      assertThat(known.add(Question.of(Optional.of(folder), words))).as("%s", words).isTrue();
      assertThat(known.add(Question.of(Optional.empty(), words))).as("demo, %s", words).isTrue();
    }
    assertThat(known).doesNotContain(Optional.empty());
  }

  @Test
  void aLinkIsNotFollowedAndNotAnswered() throws IOException {
    Files.createSymbolicLink(folder.resolve("logo.svg"), folder.resolve("pictures/logo.svg"));
    assertThat(asked()).isEmpty();
  }

  @Test
  void noFolderIsNoQuestion() {
    assertThat(Question.of(Optional.of(folder.resolve("none")), WORDS)).isEmpty();
  }
}
