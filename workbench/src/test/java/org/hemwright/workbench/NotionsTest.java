package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.make.ThreadUse;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;
import org.junit.jupiter.api.Test;

/** Thread and notions from the steps, held to the check values of handbook section 10. */
class NotionsTest {
  private static final String GARMENT =
      """
      language 1
      pattern "Test cloth"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 8
      units centimetres

      fabric main woven "Cotton"
        widths 150 cm

      piece left "Left" number 1
        cut 1 of main
        rectangle 20 cm by long, edges low, side, top, back
        allowance 1 cm
        grain up

      piece right "Right" number 2
        cut 1 of main
        rectangle 20 cm by long, edges low, back, top, side
        allowance 1 cm
        grain up

      seam join left.side with right.side reversed
      elastic round_it in left, width 3 cm, length 70 cm, overlap 2 cm

      make
      """;

  /** Neither waste nor tails, so that the handbook's sums stand alone; cloth as thin as paper. */
  private static final NotionSettings BARE =
      new NotionSettings(0, 0, 0, 0.000001, 100_000, 1_000_000, 500, List.of(180.0, 220.0));

  private static Notions notions(NotionSettings settings, String... steps) {
    String text = GARMENT + "  " + String.join("\n  ", steps) + "\n";
    Drafted drafted =
        Drafting.draft(
            "pattern.hem",
            text,
            ChartReader.read(
                    "sizes.csv",
                    "size,long (cm),gap (cm)\n8,220,19\n10,100,21\n"
                        .getBytes(StandardCharsets.UTF_8))
                .chart()
                .orElseThrow());
    assertThat(drafted.findings()).isEmpty();
    SizeRun run = drafted.run().orElseThrow();
    return Notions.all(run, settings).get(0);
  }

  private static ThreadUse.Range sewing(Notions notions) {
    return notions.thread().get(0).thread();
  }

  /** Value 35: a seam of 220 cm in class 301 at a ratio of 2.5 takes 550 cm. */
  @Test
  void aLockstitchSeamTakesTwoAndAHalfTimesItsLength() {
    assertThat(sewing(notions(BARE, "sew join with straight stitch 2.5 mm")).most())
        .isCloseTo(5500, within(1e-6));
  }

  /** Value 37 beside value 35: methods that disagree make a range. */
  @Test
  void methodsThatDisagreeAreShownAsARange() {
    NotionSettings thick = new NotionSettings(0, 0, 0, 0.127, 100_000, 1_000_000, 500, List.of());
    // Two layers of 0.005 in at 10 stitches to the inch: 2.2 by the formula, 2.5 by the ratio.
    ThreadUse.Range range = sewing(notions(thick, "sew join with straight stitch 2.54 mm"));
    assertThat(range.least()).isCloseTo(2200 * 2.2, within(1e-6));
    assertThat(range.most()).isCloseTo(2200 * 2.5, within(1e-6));
  }

  /** Value 36 for 220 cm: 5.4 times the seam in class 401, then 15 % of waste. */
  @Test
  void wasteComesOnTop() {
    NotionSettings wasted =
        new NotionSettings(0.15, 0.15, 0, 0.000001, 100_000, 1_000_000, 500, List.of());
    assertThat(sewing(notions(wasted, "sew join with chain stitch 2.5 mm")).most())
        .isCloseTo(2.2 * 6210, within(1e-6));
  }

  @Test
  void tailsAreLeftAtEveryLineOfStitching() {
    NotionSettings tails =
        new NotionSettings(0, 0, 200, 0.000001, 100_000, 1_000_000, 500, List.of());
    assertThat(
            sewing(notions(tails, "sew join with straight stitch 2.5 mm, in 2 rows 5 mm apart"))
                .most())
        .isCloseTo(2 * 5500 + 2 * 200, within(1e-6));
  }

  @Test
  void anotherMachineMayTakeTheWhole() {
    Notions either =
        notions(BARE, "sew join with overlock of four threads or straight stitch 2.5 mm");
    assertThat(either.thread()).hasSize(2);
    assertThat(either.thread()).allMatch(need -> need.thread().least() == 0);
    assertThat(either.thread().get(1).machine()).isEqualTo(ThreadNeed.Machine.OVERLOCK);
    assertThat(either.thread().get(1).threads()).isEqualTo(4);
    assertThat(either.thread().get(1).spools()).isEqualTo(4);
  }

  @Test
  void spoolsAreRoundedUp() {
    assertThat(
            new ThreadNeed(
                    ThreadNeed.Machine.SEWING, 1, new ThreadUse.Range(0, 100_000), 1, 100_000)
                .spools())
        .isEqualTo(1);
    assertThat(
            new ThreadNeed(
                    ThreadNeed.Machine.SEWING, 1, new ThreadUse.Range(0, 100_001), 1, 100_000)
                .spools())
        .isEqualTo(2);
    assertThat(
            new ThreadNeed(ThreadNeed.Machine.OVERLOCK, 1, new ThreadUse.Range(0, 10), 3, 100_000)
                .spools())
        .isEqualTo(3);
  }

  @Test
  void aSeamWithAnOpeningThatIsClosedTakesAsMuchAsOneWithout() {
    double whole = sewing(notions(BARE, "sew join with straight stitch 2.5 mm")).most();
    assertThat(
            sewing(
                    notions(
                        BARE,
                        "sew join with straight stitch 2.5 mm, leaving hole gap open",
                        "close hole with straight stitch 2.5 mm"))
                .most())
        .isCloseTo(whole, within(1e-6));
  }

  @Test
  void aZipIsTheShortestOnSaleThatReaches() {
    String sew = "sew join with straight stitch 2.5 mm, leaving hole gap open";
    Notions named =
        notions(
            BARE,
            sew,
            "insert zip in hole with straight stitch 2.5 mm, sold in 18 cm and 20 cm and 23 cm");
    assertThat(named.zips().get(0).reach()).isCloseTo(190, within(1e-9));
    assertThat(named.zips().get(0).length()).hasValue(200);
    Notions usual = notions(BARE, sew, "insert zip in hole with straight stitch 2.5 mm");
    assertThat(usual.zips().get(0).length()).hasValue(220);
    Notions none =
        notions(BARE, sew, "insert zip in hole with straight stitch 2.5 mm, sold in 15 cm");
    assertThat(none.zips().get(0).length()).isEmpty();
  }

  @Test
  void elasticIsCutWithItsOverlap() {
    Notions.ElasticNeed elastic =
        notions(BARE, "sew join with straight stitch 2.5 mm").elastics().get(0);
    assertThat(elastic.cut()).isCloseTo(720, within(1e-9));
    assertThat(elastic.finished()).isCloseTo(700, within(1e-9));
  }

  @Test
  void buttonsOfOneSizeAreCountedTogether() {
    Notions notions =
        notions(
            BARE,
            "buttonhole 5 of 15 mm in left",
            "button 4 of 12 mm on right",
            "button 1 of 12 mm on left");
    assertThat(notions.fastenings()).extracting(Notions.FasteningNeed::count).containsExactly(5, 5);
  }
}
