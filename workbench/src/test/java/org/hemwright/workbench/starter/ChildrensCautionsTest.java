package org.hemwright.workbench.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whoever begins a block for children and adds a cord, a button or the night to it is told the
 * usual cautions (handbook, safety; common practice, no source); for grown people nobody is.
 */
class ChildrensCautionsTest {
  private static Set<String> cautions(String starter, String run, String added) {
    Starter block = Starter.named(starter).orElseThrow();
    ChartRun sizes = ChartRun.named(run).orElseThrow();
    String text = block.document("Kelp", sizes);
    int make = text.indexOf("\nmake\n") + "\nmake\n".length();
    text = text.substring(0, make) + "  " + added + "\n" + text.substring(make);
    Map<String, String> files =
        Map.of(
            PatternFolder.DOCUMENT,
            text,
            "sizes.csv",
            new String(block.sizes(sizes), StandardCharsets.UTF_8));
    SizeRun drawn =
        Workbench.draft(new EditedFolder(block.folder(), new TreeMap<>(files)))
            .evaluated()
            .run()
            .orElseThrow();
    Set<String> told = new TreeSet<>();
    Workbench.check(drawn).stream()
        .filter(answer -> answer.id().startsWith("child-"))
        .flatMap(answer -> answer.findings().stream())
        .filter(finding -> finding.status() != Status.OK)
        .forEach(finding -> told.add(finding.code()));
    return told;
  }

  @ParameterizedTest
  @CsvSource({
    "raglan-top, front, neck",
    "raglan-top, front, hood",
    "one-piece-leg, leg, waist",
    "trousers, waistband, waist"
  })
  void aCordIsToldForChildrenAlone(String starter, String piece, String where) {
    String cord =
        "cord own_cord in "
            + piece
            + " at "
            + where
            + ", length 150 cm, free ends 25 cm, with toggles";
    assertThat(cautions(starter, "children", cord))
        .contains("small-parts-cord")
        .hasSizeGreaterThan(1);
    assertThat(cautions(starter, "women", cord)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"knit-tee", "raglan-top", "one-piece-leg", "trousers"})
  void theNightIsToldForChildrenAlone(String starter) {
    assertThat(cautions(starter, "children", "sleepwear")).isNotEmpty();
    assertThat(cautions(starter, "women", "sleepwear")).isEmpty();
    assertThat(cautions(starter, "children", "# Nothing added.")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"knit-tee, front", "raglan-top, front", "trousers, front.left"})
  void aButtonIsToldForTheYoungest(String starter, String piece) {
    String button = "button 1 of 12 mm on " + piece;
    assertThat(cautions(starter, "children", button)).contains("small-parts");
    assertThat(cautions(starter, "women", button)).isEmpty();
  }
}
