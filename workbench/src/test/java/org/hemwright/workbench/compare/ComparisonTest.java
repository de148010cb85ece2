package org.hemwright.workbench.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Changed;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes planted in documents are told, with their millimetres, and nothing else is. */
class ComparisonTest {
  /** Without its steps, so that what they name may be taken away. */
  private static final String SKIRT =
      Documents.text("eddy-skirt").replaceFirst("(?s)\nmake\n.*?\npaper\n", "\npaper\n");

  private static final String CHART = Documents.chart("eddy-skirt");
  private static final SizeRun OLD = Documents.run(SKIRT, CHART);

  private static Comparison after(UnaryOperator<String> change) {
    return Comparison.of(OLD, Documents.run(change.apply(SKIRT), CHART));
  }

  private static UnaryOperator<String> with(String passage, String other) {
    return text -> Documents.with(text, passage, other);
  }

  private static List<String> told(Comparison comparison, SizeRun now) {
    Wording wording =
        Wording.of(Comparison.messages())
            .overSizes(now.pattern().chart().sizes().stream().map(Size::name).toList());
    return comparison.changes().stream()
        .flatMap(change -> new ChangeWords(wording).of(change).stream())
        .toList();
  }

  private static List<String> told(UnaryOperator<String> change) {
    SizeRun now = Documents.run(change.apply(SKIRT), CHART);
    return told(Comparison.of(OLD, now), now);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void identityGivesNothing(String example) {
    SizeRun run = Documents.run(Documents.text(example), Documents.chart(example));
    SizeRun again =
        Documents.run("# a note of hers\n\n" + Documents.text(example), Documents.chart(example));
    Comparison comparison = Comparison.of(run, again);
    assertThat(comparison.changes()).isEmpty();
    assertThat(comparison.nothingChanged()).isTrue();
    assertThat(comparison.pieces()).isNotEmpty();
  }

  /** Half a circle's sector of 45°: the hem grows with its radius, r · 45° (school geometry). */
  @Test
  void aLongerSkirtHasItsHemMovedAndItsWaistNot() {
    Comparison comparison = after(with("short_length  = 48 cm", "short_length  = 50 cm"));

    assertThat(comparison.changes())
        .extracting(change -> change.changed() + " " + change.subject())
        .containsExactly(
            "DIAL_VALUE dial short_length",
            "CUT_LINE short_panel",
            "EDGE_LENGTH short_panel.centre",
            "EDGE_LENGTH short_panel.hem",
            "EDGE_LENGTH short_panel.side");
    Change cut = change(comparison, Changed.CUT_LINE, "short_panel");
    Change side = change(comparison, Changed.EDGE_LENGTH, "short_panel.side");
    Change hem = change(comparison, Changed.EDGE_LENGTH, "short_panel.hem");
    assertThat(cut.sizes()).hasSize(20);
    for (String size : cut.sizes()) {
      assertThat(value(cut, size).apart()).as("cut line " + size).isBetween(19.9, 20.5);
      assertThat(value(side, size).is() - value(side, size).was()).isCloseTo(20, within(0.01));
      assertThat(value(hem, size).is() - value(hem, size).was())
          .isCloseTo(20 * Math.toRadians(45), within(0.02));
    }
  }

  @Test
  void changesAreToldInWords() {
    assertThat(told(with("short_length  = 48 cm", "short_length  = 50 cm")))
        .contains(
            "dial short_length stands at 50 cm; it was 48 cm.",
            "The cut line of short_panel lies 20 mm from where it was in every size.",
            "short_panel.side is 20 mm longer in every size: 48 cm became 50 cm.");
    assertThat(told(with("cut 2 of main, mirrored", "cut 2 of main")))
        .containsExactly(
            "pocket is cut 2 of main; it was 2 of main, mirrored.",
            "The copies of pocket are 1, 2; they were 1, 2 (mirrored).");
  }

  @Test
  void oneSizeChangedIsToldInThatSizeAlone() {
    Comparison comparison =
        after(
            with(
                "let width = 13 cm, then 14 cm from size 18",
                "let width = 13 cm, then 13.3 cm from size 16, then 14 cm from size 18"));
    assertThat(comparison.changes()).isNotEmpty();
    assertThat(comparison.changes())
        .filteredOn(change -> !change.changed().isNote())
        .allSatisfy(change -> assertThat(change.sizes()).containsExactly("16"))
        .extracting(Change::subject)
        .contains("pocket", "pocket.upper", "pocket.base", "pocket.left", "pocket.right");
    Change upper = change(comparison, Changed.EDGE_LENGTH, "pocket.upper");
    assertThat(value(upper, "16").was()).isCloseTo(130, within(1e-6));
    assertThat(value(upper, "16").is()).isCloseTo(133, within(1e-6));
  }

  @Test
  void aPieceDrawnElsewhereIsToldAndIsNoChange() {
    Comparison moved =
        after(
            with(
                "part flare\n  point apex         at 0 cm, 0 cm",
                "part flare\n  point apex         at 7 cm, -3 cm"));
    assertThat(moved.changes()).extracting(Change::changed).containsOnly(Changed.PIECE_MOVED);
    assertThat(moved.changes())
        .extracting(Change::subject)
        .containsExactly("short_panel", "long_panel");
    assertThat(moved.nothingChanged()).isTrue();
  }

  @Test
  void aRenumberedPieceIsToldAsSuch() {
    UnaryOperator<String> numbers = with("\"Waistband\" number 4", "\"Waistband\" number 5");
    assertThat(told(numbers)).containsExactly("band has the number 5; it was 4.");
  }

  @Test
  void aPieceOfAnotherNameIsFoundByItsShape() {
    Comparison comparison =
        after(
            text ->
                text.replace("pocket.", "pouch.")
                    .replace("piece pocket ", "piece pouch ")
                    .replace("long_panel, pocket, band", "long_panel, pouch, band"));
    assertThat(comparison.changes())
        .extracting(change -> change.changed() + " " + change.subject())
        .containsExactly("PIECE_RENAMED pouch");
  }

  @Test
  void anEdgeOfAnotherNameIsFoundByItsPlace() {
    Comparison comparison =
        after(
            text ->
                text.replace("short_panel.side", "short_panel.flank")
                    .replaceFirst("side is straight", "flank is straight")
                    .replaceFirst("notch side at", "notch flank at"));
    assertThat(comparison.changes())
        .extracting(change -> change.changed() + " " + change.subject())
        .containsExactly("EDGE_RENAMED short_panel.flank");
  }

  @Test
  void eachPlantedChangeIsToldAsItself() {
    planted(Changed.VERSION, "version 1.0", "version 1.1");
    planted(Changed.DATED, "dated 2026-11-25", "dated 2026-12-01");
    planted(Changed.TITLE, "pattern \"Eddy skirt\"", "pattern \"Eddy flared skirt\"");
    planted(Changed.SPELLING, "spelling British", "spelling American");
    planted(Changed.UNITS, "units centimetres", "units inches");
    planted(Changed.FABRIC_TITLE, "Ponte or firm jersey", "Ponte");
    planted(Changed.FABRIC_KIND, "fabric main knit", "fabric main woven");
    planted(Changed.FABRIC_WIDTHS, "115 cm, 150 cm, 180 cm", "150 cm, 180 cm");
    planted(Changed.FABRIC_STRETCH_ACROSS, "at least 45%", "at least 50%");
    planted(Changed.FABRIC_NAP, "nap one way", "nap either way");
    planted(Changed.FABRIC_NAP, "nap one way", "nap none");
    planted(Changed.FABRIC_SIDES, "nap one way", "nap one way\n  both sides alike");
    String nap = "nap one way\n";
    planted(Changed.FABRIC_REPEAT_ALONG, nap, nap + "  repeat along 9 cm\n");
    planted(Changed.FABRIC_REPEAT_ACROSS, nap, nap + "  repeat across 7 cm\n");
    planted(Changed.FABRIC_UNEVEN, nap, nap + "  repeat across 7 cm, uneven\n");
    planted(Changed.FABRIC_MATCHED, nap, nap + "  repeat along 9 cm\n  match hip\n");
    planted(Changed.DIAL_RANGE, "from 36 cm to 60 cm", "from 36 cm to 65 cm");
    planted(Changed.VIEW_TITLE, "Above the knee", "Short");
    planted(Changed.VIEW_PIECES, "pieces short_panel, band", "pieces short_panel, pocket, band");
    planted(Changed.PAPER_GROUPS, "groups 4 to 20, 18 to 34", "groups 4 to 18, 18 to 34");
    planted(Changed.PAPER_STITCH_LINES, "stitch lines hidden", "stitch lines shown");
    planted(Changed.PIECE_TITLE, "\"Waistband\"", "\"Band\"");
    planted(Changed.PIECE_CUTS, "cut 2 of main, mirrored", "cut 2 of main");
    planted(Changed.PIECE_COPIES, "copies front, back", "copies front, rear");
    planted(Changed.EDGE_ALLOWANCE, "allowance 1 cm, upper 2.5 cm", "allowance 1 cm, upper 3 cm");
    planted(Changed.EDGE_HEM, "upper 2.5 cm turned back", "upper 2.5 cm");
    planted(
        Changed.GRAIN_TURNED, "grain up\n  stretch across", "grain at 45 deg\n  stretch across");
    planted(Changed.MARK_WORDS, "\"Pocket, view B\"", "\"Pocket\"");
    planted(Changed.MARK_REMOVED, "  drill pocket_corner at pocket_at\n", "");
    planted(Changed.MARK_MOVED, "away from apex 9 cm", "away from apex 9.2 cm");
    planted(
        Changed.NOTCH_REMOVED,
        "  notch lower at quarters\n  grain along end_left",
        "  grain along end_left");
    planted(Changed.SEAM_REMOVED, "seam band_fold    band.lower with band.upper\n", "");
    planted(
        Changed.SEAM_EASE,
        "seam band_ring    band.end_right with band.end_left",
        "seam band_ring    band.end_right with band.end_left, ease 0 mm to 3 mm");
    planted(
        Changed.SEAM_MARKS,
        "with every short_panel.waist, quarters at sides and centres",
        "with every short_panel.waist");
    planted(Changed.ELASTIC_LENGTH, "length 90% of waist", "length 92% of waist");
    planted(Changed.ELASTIC_OVERLAP, "overlap 2.5 cm", "overlap 2 cm");
  }

  private static void planted(Changed expected, String passage, String other) {
    assertThat(
            after(text -> text.replaceFirst(java.util.regex.Pattern.quote(passage), other))
                .changes())
        .as(passage + " made " + other)
        .extracting(Change::changed)
        .contains(expected);
  }

  /** The lined skirt with its steps, in three sizes of its chart. */
  private static final String LINED = Documents.text("brackish-skirt");

  private static final String LINED_CHART = Documents.chart("brackish-skirt");
  private static final SizeRun LINED_OLD = lined(LINED);

  private static SizeRun lined(String text) {
    SizeRun whole = Documents.run(text, LINED_CHART);
    List<org.hemwright.pattern.SizedPattern> sizes = whole.sizes();
    return new SizeRun(
        whole.pattern(), List.of(sizes.get(0), sizes.get(10), sizes.get(sizes.size() - 1)));
  }

  private static List<String> making(String passage, String other) {
    SizeRun now = lined(Documents.with(LINED, passage, other));
    return told(Comparison.of(LINED_OLD, now), now);
  }

  @Test
  void stepsAreCompared() {
    assertThat(making("  clip waist_seam\n", "")).containsExactly("step clip_waist_seam is gone.");
    assertThat(making("  clip waist_seam\n", "  clip waist_seam\n  press waist_seam flat\n"))
        .containsExactly("step press_waist_seam is new, after clip_waist_seam.");
    assertThat(
            making(
                "  grade waist_seam to 1/4 in\n  clip waist_seam\n",
                "  clip waist_seam\n  grade waist_seam to 1/4 in\n"))
        .containsExactly(
            "step grade_waist_seam comes after clip_waist_seam; it came after sew_waist_seam.");
    assertThat(making("  grade waist_seam to 1/4 in\n", "  grade waist_seam to 5/16 in\n"))
        .containsExactly(
            "The rest of step grade_waist_seam is 1.6 mm longer in sizes 0P, 20P and 40P: 6.3 mm"
                + " became 7.9 mm.");
    assertThat(making("sew sides, press open", "sew sides, press toward front"))
        .containsExactly(
            "step sew_sides is pressed: toward front, from the wrong side; it was open.");
    assertThat(making("usual stitch straight stitch 2.5 mm", "usual stitch straight stitch 3 mm"))
        .isNotEmpty()
        .allMatch(line -> line.contains("straight 3 mm") && line.contains("straight 2.5 mm"));
    assertThat(making("needle universal 70 to 80", "needle universal 80 to 90"))
        .containsExactly("The usual needle is universal 80 to 90; it was universal 70 to 80.");
    assertThat(making("stage \"The facing\"", "stage \"The waist facing\""))
        .containsExactly("The stage “The waist facing” was called “The facing”.");
    assertThat(making("\"The hip notches meet\"", "\"The hip notches lie on each other\""))
        .containsExactly(
            "step sew_sides says: “The hip notches lie on each other”; it said “The hip notches"
                + " meet”.");
  }

  @Test
  void whatIsBoughtIsCompared() {
    assertThat(making("sold in 7 in and 8 in and 9 in", "sold in 7 in and 9 in"))
        .contains(
            "To buy, the zip for zip_gap in view A: 22.86 cm in every size; it was 20.32 cm.",
            "To buy, the zip for zip_gap in view B: 22.86 cm in every size; it was 20.32 cm.");
    assertThat(
            making(
                "fuse front_facing and back_facing with interfacing",
                "fuse front_facing and back_facing"))
        .anyMatch(line -> line.startsWith("To buy, what is fused in view A: none in every size"));
  }

  @Test
  void dartsAndOpeningsAreCompared() {
    assertThat(making("closed by zip 8 in", "closed by zip 9 in"))
        .anyMatch(line -> line.startsWith("The slit at ") && line.contains("25.4 mm longer"));
    assertThat(making("close front.waist_dart, press toward front", "close front.waist_dart"))
        .containsExactly(
            "step close_front_waist_dart is pressed: none; it was toward front, from the wrong"
                + " side.");
  }

  @Test
  void cordsAreCompared() {
    String cord = "  cord tie in band at waist, length 140 cm, free ends 7 cm, bar tacked";
    String corded = SKIRT.replaceFirst("(?m)^paper$", "make\n" + cord + "\n\npaper");
    SizeRun before = Documents.run(corded, CHART);
    SizeRun after =
        Documents.run(
            corded.replace(
                "length 140 cm, free ends 7 cm, bar tacked", "length 150 cm, free ends 8 cm"),
            CHART);
    assertThat(told(Comparison.of(before, after), after))
        .contains(
            "cord tie is 10 cm longer in every size: 140 cm became 150 cm.",
            "The free ends of cord tie are 10 mm longer in every size: 70 mm became 80 mm.",
            "cord tie is held by a bar tack: no; it was yes.");
    assertThat(told(Comparison.of(before, OLD), OLD)).contains("cord tie is gone.");
    assertThat(told(Comparison.of(OLD, before), before)).contains("cord tie is new.");
  }

  @Test
  void theChartIsComparedToo() {
    String other = CHART.replaceFirst("(?m)^8,", "8A,").replaceFirst("(?m)^6,66,", "6,66.5,");
    SizeRun now = Documents.run(SKIRT, other);
    List<String> told = told(Comparison.of(OLD, now), now);
    assertThat(told)
        .startsWith(
            "size 8A is new.",
            "size 8 is gone.",
            "The body's waist is 5 mm larger in size 6: 66 cm became 66.5 cm.");
    assertThat(told.stream().filter(line -> line.contains("cut line")))
        .isNotEmpty()
        .allMatch(line -> line.contains(" in size 6."));
  }

  @Test
  void everythingThatCanChangeHasASentence() {
    Set<String> missing = new java.util.TreeSet<>();
    for (Changed changed : EnumSet.allOf(Changed.class)) {
      if (!Comparison.messages().sentences().containsKey(changed.code() + ".message")) {
        missing.add(changed.code());
      }
    }
    assertThat(missing).isEmpty();
  }

  private static Change change(Comparison comparison, Changed changed, String subject) {
    return comparison.changes().stream()
        .filter(each -> each.changed() == changed && each.subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static Change.Values value(Change change, String size) {
    return java.util.Objects.requireNonNull(change.values().get(size));
  }
}
