package org.hemwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.syntax.DocumentFormatter;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;

/** Every example of docs/language.md works as it stands, in every size of the guide's chart. */
class LanguageGuideTest {
  private static final Path GUIDE = Path.of("..", "docs", "language.md");

  @Test
  void everyExampleDraftsWithoutAFinding() throws IOException {
    SizeChart chart = chart();
    List<String> told = new ArrayList<>();
    for (String text : documents()) {
      for (Finding finding : Drafting.draft("pattern.hem", text, chart).findings()) {
        told.add(finding.origin() + " " + finding.code() + " " + finding.arguments());
      }
    }
    assertThat(told).isEmpty();
  }

  @Test
  void theWholeGarmentHasItsPiecesAndSeamsInEverySize() throws IOException {
    Drafted drafted = Drafting.draft("pattern.hem", documents().get(0), chart());
    assertThat(drafted.run()).isPresent();
    assertThat(drafted.run().get().sizes())
        .hasSize(9)
        .allSatisfy(
            size -> {
              assertThat(size.pieces()).extracting("name").containsExactly("panel", "band");
              assertThat(size.seams())
                  .extracting("name")
                  .containsExactly("side_seams", "band_ring", "band_fold", "waist_seam");
            });
  }

  @Test
  void everyExampleIsSetAsTheFormatterSetsIt() throws IOException {
    for (String text : documents()) {
      String once = DocumentFormatter.format(DocumentReader.read("pattern.hem", text));
      assertThat(DocumentFormatter.format(DocumentReader.read("pattern.hem", once)))
          .isEqualTo(once);
    }
  }

  /** The whole garment, then each later example below the garment's headings and fabric. */
  private static List<String> documents() throws IOException {
    List<String> documents = new ArrayList<>();
    String headings = "";
    for (String block : blocks("hem")) {
      if (documents.isEmpty()) {
        headings = block.substring(0, block.indexOf("\ndial ") + 1);
        documents.add(block);
      } else {
        documents.add(headings + "\n" + block);
      }
    }
    assertThat(documents).hasSizeGreaterThan(8);
    return documents;
  }

  private static SizeChart chart() throws IOException {
    return Charts.of(blocks("csv").get(0));
  }

  private static List<String> blocks(String kind) throws IOException {
    Matcher matcher =
        Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(GUIDE));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }
}
