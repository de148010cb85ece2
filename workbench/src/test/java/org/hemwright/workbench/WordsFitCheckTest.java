package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hemwright.paper.nest.WordsFitCheck;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.EditedFolder;
import org.junit.jupiter.api.Test;

/** Words on a piece fit there in its smallest size; common practice, no source. */
class WordsFitCheckTest {
  private static List<Finding> found(String example, String passage, String other)
      throws IOException {
    Path folder = Path.of("..", "examples", example);
    String text = Files.readString(folder.resolve("pattern.hem"));
    assertThat(text).contains(passage);
    SizeRun run =
        Workbench.evaluate(
                new EditedFolder(
                    new DiskFolder(folder),
                    new TreeMap<>(Map.of("pattern.hem", text.replace(passage, other)))))
            .run()
            .orElseThrow();
    List<Finding> findings = WordsFitCheck.USUAL.check(run);
    assertThat(WordsFitCheck.USUAL.id()).isEqualTo("words-fit");
    return findings;
  }

  @Test
  void theExampleHasRoomForItsWords() throws IOException {
    assertThat(found("marram-trousers", "\"Pocket\"", "\"Pocket\"")).isEmpty();
  }

  @Test
  void wordsLongerThanThePieceAreFoundInItsSmallestSize() throws IOException {
    String words =
        "Fold here, wrong sides together, and press well before you go on to the elastic, which is"
            + " drawn in later";
    assertThat(found("marram-trousers", "\"Fold\"", "\"" + words + "\""))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.code()).isEqualTo("words-long");
              assertThat(finding.subject()).isEqualTo("waistband");
              assertThat(finding.sizes()).containsExactly("2");
              assertThat(finding.places().get(0).piece()).contains("waistband");
            });
  }

  @Test
  void aTitleThatKeepsTheLabelOffThePieceIsFound() throws IOException {
    String title =
        "A very long title that no small piece can hold at any readable size whatever one does, and"
            + " so on and so forth, with many more words that nobody ever reads on paper at all, ";
    assertThat(found("brackish-skirt", "\"Back waist facing\"", "\"" + title + "\""))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.code()).isEqualTo("title-long");
              assertThat(finding.subject()).isEqualTo("back_facing");
            });
  }
}
