package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.CutPiece;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.cloth.rule.MatchedPair;
import org.hemwright.cloth.rule.Matching;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Parts of a piece that is cut apart go on in the checks over their own seam, as if the piece were
 * whole: each point of the cut lies, on either part, on the same place of the repeat.
 */
class StripedPartsTest {
  private static final Fabric.Nap ONE_WAY = Fabric.Nap.ONE_WAY;
  private static final Origin ORIGIN = new Origin("pattern.hem", 3, 1);
  private static final double ALONG = 90;
  private static final double ACROSS = 70;
  private static final Offset<Double> EXACT = Offset.offset(0.002);

  private static Fabric.Repeat checks(boolean uneven) {
    return new Fabric.Repeat(
        OptionalDouble.of(ALONG), OptionalDouble.of(ACROSS), false, uneven, List.of("side"));
  }

  private static Piece split(CutPiece drawn, Path... lines) {
    return drawn.mark(new Mark.Split("parts", List.of(lines), 10, List.of(), ORIGIN)).draw();
  }

  private static Path line(double x1, double y1, double x2, double y2) {
    return Path.straight(new Point(x1, y1), new Point(x2, y2));
  }

  /** The parts of a piece, held to the checks with others. */
  private static List<ClothPiece> held(
      Piece piece, Fabric.Repeat repeat, List<MatchedPair> pairs, ClothPiece... others) {
    Cuttable cuttable = Cuttable.of(piece, 0, "", 0).orElseThrow();
    List<ClothPiece> all = new ArrayList<>(cuttable.all());
    all.addAll(List.of(others));
    Matching matching = new Matching(all, repeat, MatchedPair.withParts(pairs, cuttable.splits()));
    assertThat(matching.clashes()).isEmpty();
    List<ClothPiece> held = new ArrayList<>();
    cuttable.matched(matching).waysOut().get(0).pieces().forEach(held::add);
    for (ClothPiece other : others) {
      held.add(matching.matched(other));
    }
    return held;
  }

  private static ClothLaying lay(Fold fold, double width, List<ClothPiece> pieces) {
    List<ClothPlan> plans = ClothPlan.of(pieces, fold, width, ClothSettings.HANDBOOK, ONE_WAY);
    ClothLaying laying =
        new PlanSearch(6_000, 1, new NoFitStore()).lay(plans).orElseThrow().laying();
    assertThat(new LayingRules(pieces, ONE_WAY).objections(laying)).isEmpty();
    return laying;
  }

  /** Where on the flat cloth a point of the drawing is cut, on a copy as drawn or mirrored. */
  private static Point cut(ClothLaying laying, String piece, boolean mirrored, Point at) {
    return laying.unfolded().pieces().stream()
        .filter(laid -> laid.piece().name().equals(piece))
        .filter(laid -> laid.motion().isMirror() == mirrored)
        .map(laid -> laid.fromDrawing().apply(at))
        .findFirst()
        .orElseThrow();
  }

  private static void assertAlike(Point one, Point other) {
    Vector apart = other.minus(one);
    assertThat(apart.dx() / ALONG).isCloseTo(Math.rint(apart.dx() / ALONG), EXACT);
    assertThat(apart.dy() / ACROSS).isCloseTo(Math.rint(apart.dy() / ACROSS), EXACT);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void overASlantedCutTheChecksGoOnAllAlong(boolean uneven) {
    Piece wide =
        split(
            CutPiece.rectangle("wide", 1130, 400), line(500, 0, 613, 400), line(870, 0, 870, 400));
    List<ClothPiece> held = held(wide, checks(uneven), List.of());
    ClothLaying laying = lay(Fold.SINGLE, 900, held);
    assertThat(laying.pieces()).hasSize(3);
    for (double share : new double[] {0, 0.31, 0.77, 1}) {
      Point first = new Point(500 + 113 * share, 400 * share);
      assertAlike(cut(laying, "wide_1", false, first), cut(laying, "wide_2", false, first));
      Point second = new Point(870, 400 * share);
      assertAlike(cut(laying, "wide_2", false, second), cut(laying, "wide_3", false, second));
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void cutAlongTheFoldItsHalvesGoOnOverTheMiddle(boolean uneven) {
    Piece panel = split(CutPiece.rectangle("panel", 613, 400).onFold());
    List<ClothPiece> held = held(panel, checks(uneven), List.of());
    for (Fold fold : uneven ? List.of(Fold.SINGLE) : List.of(Fold.SINGLE, Fold.LENGTHWISE)) {
      ClothLaying laying = lay(fold, 1500, held);
      for (double y : new double[] {0, 123, 400}) {
        Point at = new Point(0, y);
        assertAlike(cut(laying, "panel_1", false, at), cut(laying, "panel_1", true, at));
      }
    }
  }

  /** The middle part is a half on the fold, the side parts a pair: both meet it alike. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void besideTheFoldBothSidePartsMeetTheMiddleOne(boolean uneven) {
    Piece panel = split(CutPiece.rectangle("panel", 613, 400).onFold(), line(301, 0, 333, 400));
    List<ClothPiece> held = held(panel, checks(uneven), List.of());
    for (Fold fold : uneven ? List.of(Fold.SINGLE) : List.of(Fold.SINGLE, Fold.LENGTHWISE)) {
      ClothLaying laying = lay(fold, 1500, held);
      String middle = held.get(0).piece().foldEdge().isPresent() ? "panel_1" : "panel_2";
      String side = middle.equals("panel_1") ? "panel_2" : "panel_1";
      for (double share : new double[] {0, 0.4, 1}) {
        Point at = new Point(301 + 32 * share, 400 * share);
        Point image = new Point(-at.x(), at.y());
        assertAlike(cut(laying, middle, false, at), cut(laying, side, false, at));
        assertAlike(cut(laying, middle, false, image), cut(laying, side, true, at));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void thePartThatHasTheNotchTakesThePlaceOfTheWhole(boolean uneven) {
    Piece wide =
        split(CutPiece.rectangle("wide", 1130, 400).notch("side", 2, 111), line(613, 0, 613, 400));
    ClothPiece front = CutPiece.rectangle("front", 233, 410).notch("side", 0, 77).onCloth();
    Point own = new Point(1130, 111);
    Point there = new Point(0, 410 - 77);
    List<MatchedPair> pairs =
        List.of(
            new MatchedPair(
                "side",
                new MatchedPair.End("wide", false, own),
                new MatchedPair.End("front", false, there)));
    ClothLaying laying = lay(Fold.SINGLE, 900, held(wide, checks(uneven), pairs, front));
    LaidPiece last =
        laying.pieces().stream()
            .filter(laid -> laid.piece().notchPlace("side").isPresent())
            .filter(laid -> !laid.piece().name().equals("front"))
            .findFirst()
            .orElseThrow();
    String part = last.piece().name();
    String other = part.equals("wide_1") ? "wide_2" : "wide_1";
    assertAlike(cut(laying, part, false, own), cut(laying, "front", false, there));
    Point seam = new Point(613, 250);
    assertAlike(cut(laying, part, false, seam), cut(laying, other, false, seam));
  }

  /** The sides of a panel that is cut twice meet where twice its width is so many repeats. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theirOwnSeamComesBeforeNotchesThatCannotMatch(boolean uneven) {
    Piece panel =
        split(CutPiece.rectangle("panel", 613, 400).onFold().times(2).notch("side", 2, 111));
    Cuttable cuttable = Cuttable.of(panel, 0, "", 0).orElseThrow();
    Point side = new Point(613, 111);
    List<MatchedPair> pairs =
        MatchedPair.withParts(
            List.of(
                new MatchedPair(
                    "side",
                    new MatchedPair.End("panel", false, side),
                    new MatchedPair.End("panel", false, new Point(-613, 111)))),
            cuttable.splits());
    Matching matching = new Matching(cuttable.all(), checks(uneven), pairs);
    // 2 x 613 is 17 repeats and 36 mm
    assertThat(matching.clashes()).isNotEmpty();
    assertThat(matching.clashes().get(0).apart()).isCloseTo(34, Offset.offset(0.01));
    assertThat(matching.clashes()).allMatch(clash -> clash.notch().equals("side"));
    List<ClothPiece> parts = cuttable.matched(matching).waysOut().get(0).pieces();
    ClothLaying laying = lay(Fold.SINGLE, 1500, parts);
    Point middle = new Point(0, 200);
    assertAlike(cut(laying, "panel_1", false, middle), cut(laying, "panel_1", true, middle));
  }

  /** What is matched on the whole piece on wide cloth is so on narrow cloth, in parts. */
  @Test
  void partsAndWholeBeginOnTheSamePlaceOfTheRepeat() {
    Piece wide =
        split(CutPiece.rectangle("wide", 1130, 400).notch("side", 0, 289), line(613, 0, 613, 400));
    MatchedPair.End side = new MatchedPair.End("wide", false, new Point(0, 111));
    List<MatchedPair> pairs = List.of(new MatchedPair("side", side, side));
    Cuttable cuttable = Cuttable.of(wide, 0, "", 0).orElseThrow();
    Matching matching =
        new Matching(
            cuttable.all(), checks(false), MatchedPair.withParts(pairs, cuttable.splits()));
    ClothLaying whole = lay(Fold.SINGLE, 1500, List.of(matching.matched(cuttable.whole())));
    List<ClothPiece> parts = cuttable.matched(matching).waysOut().get(0).pieces();
    ClothLaying narrow = lay(Fold.SINGLE, 900, parts);
    Point seam = new Point(613, 250);
    double onWhole = cut(whole, "wide", false, seam).y() - 750;
    double onPart = cut(narrow, "wide_1", false, seam).y() - 450;
    double steps = (onPart - onWhole) / ACROSS;
    assertThat(steps).isCloseTo(Math.rint(steps), EXACT);
  }

  /** A waistband with nothing to match is not held to the checks for the way out that it has. */
  @Test
  void aWholeWithoutAMatchedNotchLiesWhereThereIsRoom() {
    Piece wide = split(CutPiece.rectangle("wide", 1130, 80), line(613, 0, 613, 80));
    Cuttable cuttable = Cuttable.of(wide, 0, "", 0).orElseThrow();
    Matching matching =
        new Matching(
            cuttable.all(), checks(false), MatchedPair.withParts(List.of(), cuttable.splits()));
    assertThat(matching.matched(cuttable.whole()).striped()).isEmpty();
    assertThat(cuttable.matched(matching).waysOut().get(0).pieces())
        .hasSize(2)
        .allMatch(part -> part.striped().isPresent());
  }
}
