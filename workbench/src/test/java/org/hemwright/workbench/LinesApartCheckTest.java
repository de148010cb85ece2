package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.paper.LinesApartCheck;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.EditedFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines of neighbouring sizes can be told apart in print; common practice, no source. */
class LinesApartCheckTest {
  private static List<Finding> found(String example, String passage, String other)
      throws IOException {
    Path folder = Path.of("..", "examples", example);
    String text = Files.readString(folder.resolve("pattern.hem"));
    assertThat(text).contains(passage);
    return LinesApartCheck.USUAL.check(
        Workbench.evaluate(
                new EditedFolder(
                    new DiskFolder(folder),
                    new TreeMap<>(Map.of("pattern.hem", text.replace(passage, other)))))
            .run()
            .orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "marram-trousers", "inlet-tee", "brackish-skirt", "shingle-shirt"})
  void theExamplesLinesAreApart(String example) throws IOException {
    assertThat(found(example, "language 1", "language 1")).isEmpty();
  }

  @Test
  void anEdgeThatGrowsByLessThanALineIsFound() throws IOException {
    List<Finding> findings =
        found(
            "eddy-skirt",
            "let width = 13 cm, then 14 cm from size 18, then 15 cm from size 30",
            "let width = 13 cm + hip / 500");
    assertThat(findings).isNotEmpty();
    Finding first = findings.get(0);
    assertThat(first.code()).isEqualTo("lines-close");
    assertThat(first.subject()).isEqualTo("pocket");
    assertThat(Workbench.wording(Optional.empty()).message(first))
        .startsWith("Along `")
        .contains("print as one line");
  }

  @Test
  void stitchLinesOnOtherSizesCutLinesAreFoundWhereTheyAreShown() throws IOException {
    assertThat(found("inlet-tee", "stitch lines hidden", "stitch lines shown"))
        .extracting(Finding::code)
        .containsOnly("stitch-lines-close");
  }
}
