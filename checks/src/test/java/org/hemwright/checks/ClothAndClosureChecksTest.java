package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.junit.jupiter.api.Test;

/**
 * What each cloth is for, seams without allowance or declared twice, linings, zips, patches and
 * elastics: planted in the examples, the smallest and the largest size asked. What is expected is
 * common practice, no source, but for the notch at a zip's end (handbook section 1, "Notches") and
 * the overlap of an elastic (section 4, 1.3 to 2.5 cm).
 */
class ClothAndClosureChecksTest {
  private static final String LINED = "brackish-skirt";
  private static final String FLARED = "eddy-skirt";

  private static SizeRun run(String example, String passage, String other) {
    try {
      Path folder = Path.of("..", "examples", example);
      SizeChart chart =
          ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
              .chart()
              .orElseThrow();
      String text = Files.readString(folder.resolve("pattern.hem"));
      assertThat(text).contains(passage);
      int at = text.indexOf(passage);
      Drafted drafted =
          Drafting.draft(
              "pattern.hem",
              text.substring(0, at) + other + text.substring(at + passage.length()),
              chart);
      assertThat(drafted.findings()).isEmpty();
      SizeRun whole = drafted.run().orElseThrow();
      return new SizeRun(
          whole.pattern(),
          List.of(whole.sizes().get(0), whole.sizes().get(whole.sizes().size() - 1)));
    } catch (IOException trouble) {
      throw new AssertionError(trouble);
    }
  }

  private static List<String> told(String check, String example, String passage, String other) {
    return Told.by(check, run(example, passage, other));
  }

  @Test
  void asTheyAreNothingIsFound() {
    for (String check :
        List.of(
            "cloth-role", "lining-hem", "closure-length", "grain", "edge-used", "elastic-casing")) {
      assertThat(told(check, LINED, "\n", "\n")).as(check).isEmpty();
      assertThat(told(check, FLARED, "\n", "\n")).as(check).isEmpty();
    }
  }

  @Test
  void aFrontOfLiningBesideABackOfCloth() {
    assertThat(
            told("cloth-role", LINED, "cut 1 of main, on the fold", "cut 1 of lining, on the fold"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains(
            "front is cut from lining and back, which seam sides joins to it at an edge of the same"
                + " name, from main.");
  }

  @Test
  void whatIsFusedIsCutForIt() {
    assertThat(told("cloth-role", LINED, "  cut 1 of interfacing, on the fold\n", ""))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains(
            "Step `fuse_front_facing` fuses interfacing to front_facing, and front_facing is not"
                + " cut from interfacing.");
    assertThat(told("cloth-role", LINED, "cut 2 of interfacing, mirrored", "cut 2 of interfacing"))
        .singleElement()
        .asString()
        .contains("one layer would lie wrong side up");
    assertThat(
            told(
                "cloth-role",
                LINED,
                "cut 2 of interfacing, mirrored",
                "cut 4 of interfacing, mirrored"))
        .singleElement()
        .asString()
        .contains("back_facing is cut 4 times from interfacing and 2 times from main.");
    assertThat(
            told("cloth-role", LINED, "cut 2 of main, mirrored", "cut 2 of interfacing, mirrored"))
        .anySatisfy(
            words ->
                assertThat(words)
                    .startsWith("FAIL")
                    .contains("back is cut from interfacing first"));
    assertThat(told("cloth-role", LINED, "fuse front_facing and back_facing", "fuse front_facing"))
        .singleElement()
        .asString()
        .contains("back_facing is cut from interfacing too, and no step fuses the two.");
  }

  @Test
  void aSeamOfTwoBareEdges() {
    assertThat(
            told(
                "allowance-equal",
                FLARED,
                "allowance 1 cm, hem 1.5 cm turned back",
                "allowance 1 cm, side none, hem 1.5 cm turned back"))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains("neither short_panel.side nor short_panel.side has an allowance");
    assertThat(
            told(
                "allowance-equal",
                FLARED,
                "allowance 1 cm, hem 1.5 cm turned back",
                "allowance 1 cm, side 3 mm, hem 1.5 cm turned back"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("an allowance of 3 mm");
  }

  @Test
  void aSeamDeclaredTwice() {
    String seam = "seam band_fold    band.lower with band.upper\n";
    assertThat(
            told(
                "edge-used",
                FLARED,
                seam,
                seam + "seam fold_again    band.upper with band.lower\n"))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains("Seam fold_again joins the very edges that seam band_fold joins.");
  }

  /** A lining an inch shorter, made a quarter, none, and an inch longer than the skirt. */
  @Test
  void aLiningEndsAboveTheHem() {
    String up = "hem taken in lining_up";
    assertThat(told("lining-hem", LINED, up, "hem taken in 1/4 in"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("`hem` of front_lining ends only 6.4 mm above `hem` of front");
    assertThat(told("lining-hem", LINED, ", " + up, ""))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains("is level with `hem` of front");
    assertThat(told("lining-hem", LINED, up, "hem let out lining_up"))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains("`hem` of front_lining lies 25.4 mm below `hem` of front");
  }

  @Test
  void aZipIsAsLongAsItsSlitEverywhere() {
    assertThat(told("closure-length", LINED, "leaving zip_gap 8 in", "leaving zip_gap 6 in"))
        .singleElement()
        .asString()
        .startsWith("FAIL")
        .contains("leaves zip_gap 15.24 cm long", "has a slit of 20.32 cm");
    assertThat(
            told(
                "closure-length",
                LINED,
                "from centre_waist down 8 in",
                "from centre_waist down 7 in"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("lies 17.78 cm from there, and the slit is 20.32 cm long");
    assertThat(told("closure-length", LINED, "  notch centre at centre_zip as zip_end\n", ""))
        .singleElement()
        .asString()
        .contains("No notch on `centre` of back shows where the slit of 20.32 cm");
  }

  @Test
  void aPatchLiesOnTheGrainOrOnTheBias() {
    assertThat(told("grain", FLARED, "  grain up\n", "  grain right\n"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("Laid on long_panel by seam pocket_seam, the grain of pocket lies");
    assertThat(told("grain", "marram-trousers", "  grain up\n", "  grain at 45 deg\n")).isEmpty();
  }

  @Test
  void aSleeveHangsAlongItsGrain() {
    assertThat(
            told(
                "grain",
                "shingle-shirt",
                "  grain from hem_centre to cap_top\n",
                "  grain right\n"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("closes sleeve to a tube");
  }

  @Test
  void anElasticOverlapsALittleAndSaysWhatItPasses() {
    assertThat(told("elastic-casing", FLARED, "overlap 2.5 cm", "overlap 10 cm"))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("The ends of waist_elastic overlap by 10 cm");
    assertThat(told("opening-passes", FLARED, "  opening waist\n", ""))
        .singleElement()
        .asString()
        .startsWith("WARN")
        .contains("no edge of band and short_panel is named as an opening");
  }

  /**
   * Handbook section 3: a hem of 1/4 in for a circle, 1.5 in for flared; 12 cm is eased by much.
   */
  @Test
  void aDeepHemOnAFlareIsEased() {
    assertThat(told("hem-ease", FLARED, "hem 1.5 cm turned back", "hem 12 cm turned back"))
        .isNotEmpty()
        .allMatch(words -> words.startsWith("WARN") && words.contains("short_panel"));
  }

  /** Handbook section 3: an allowance is no wider than its curve's radius. */
  @Test
  void anAllowanceDeeperThanItsCurve() {
    SizeRun run =
        run(
            "inlet-tee",
            "allowance 1 cm, hem 2.5 cm turned back",
            "allowance 1 cm, neck 16 cm, hem 2.5 cm turned back");
    assertThat(StandardChecks.with(CheckSettings.HANDBOOK))
        .filteredOn(check -> check.id().equals("allowance-drawn"))
        .flatExtracting(check -> check.check(run))
        .isNotEmpty()
        .allSatisfy(finding -> assertThat(finding.places().get(0).piece()).contains("back"));
  }
}
