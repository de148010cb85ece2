package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.checks.StandardChecks;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A woven garment that narrow cloth cuts apart: one finding for one cause, and none if sound. */
class PartsToldOnceTest {
  private static final String WRAP =
      """
      language 1
      pattern "Spit skirt"
      version 1.0
      dated 2026-11-27
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 10

      fabric main woven "Plain cotton"
        widths 90 cm, 150 cm

      piece panel "Skirt front and back" number 1
        cut 2 of main, on the fold
        copies front, back
        rectangle hip / 4 + 24 cm by 60 cm, edges hem, side, top, centre
        fold centre
        allowance 1.5 cm, top none, hem 2 cm then 1 cm turned back
        notch side at 50% from start
        grain along centre
        point knee on centre at 50% from start
        lengthen at knee
        split centre_seam on the fold, allowance 1.5 cm into half_panel

      seam sides panel.side with panel.side

      make
        usual stitch straight stitch 2.5 mm
        needle universal 80
        sew sides, press open
        finish sides apart with overlock
        bind panel.top in tape 12 mm
        hem panel.hem
      """;

  private static final Wording WORDS = Wording.of(StandardChecks.messages());

  @TempDir Path folder;

  private List<Finding> told(String document) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), document);
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n12,100\n");
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder));
    assertThat(evaluated.sound()).as(evaluated.problems().toString()).isTrue();
    return Workbench.check(evaluated.run().orElseThrow()).stream()
        .flatMap(answer -> answer.findings().stream())
        .toList();
  }

  @Test
  void theSeamOfThePartsIsFinishedAsOthersAre() throws IOException {
    assertThat(told(WRAP))
        .filteredOn(finding -> finding.code().equals("cloth-split"))
        .as("it is cut apart at all")
        .isNotEmpty();
    assertThat(told(WRAP))
        .filteredOn(finding -> finding.origin().filter(at -> at.line() == 21).isPresent())
        .filteredOn(finding -> finding.status() == Status.FAIL)
        .isEmpty();
    assertThat(told(WRAP.replace("  finish sides apart with overlock\n", "")))
        .filteredOn(finding -> finding.code().equals("step-unfinished"))
        .extracting(finding -> finding.subject())
        .containsExactlyInAnyOrder("seam sides", "seam centre_seam");
    // a step cannot name the seam that only narrow cloth has
    assertThat(told(WRAP.replace("  finish sides apart with overlock\n", "")))
        .filteredOn(finding -> finding.subject().equals("seam centre_seam"))
        .extracting(finding -> WORDS.mend(finding))
        .containsExactly(
            "Add a step that finishes another seam of the piece, such as `finish sides apart with"
                + " overlock or zigzag 5 mm by 2 mm`: centre_seam is then finished too; or enclose"
                + " it.");
  }

  @Test
  void whatIsToldOfTheWholeIsNotToldOfItsPartsAgain() throws IOException {
    assertThat(told(WRAP.replace("  hem panel.hem\n", "")))
        .filteredOn(finding -> finding.code().equals("step-untreated"))
        .extracting(finding -> finding.subject())
        .containsExactly("panel.hem");
  }

  @Test
  void anEdgeIsUsedWhereAStepInHerOwnWordsSewsIt() throws IOException {
    String bound = "  bind panel.top in tape 12 mm\n";
    String own = "  do \"Turn the top in and stitch it\" with straight stitch, hemming panel.top\n";
    assertThat(WRAP).contains(bound);
    String allowed = WRAP.replace("top none, ", "");
    assertThat(told(allowed.replace(bound, own)))
        .filteredOn(finding -> finding.code().equals("edge-used"))
        .isEmpty();
    assertThat(told(allowed.replace(bound, "")))
        .filteredOn(finding -> finding.code().equals("edge-used"))
        .extracting(finding -> finding.subject())
        .containsExactly("panel.top");
  }
}
