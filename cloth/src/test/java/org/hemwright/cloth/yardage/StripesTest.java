package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
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
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** Stripes and checks that meet at matched notches. */
class StripesTest {
  private static final Offset<Double> EXACT = Offset.offset(0.002);
  private static final Fabric.Nap ONE_WAY = Fabric.Nap.ONE_WAY;

  /** Handbook section 10, check value 29: a plaid repeat of 4 1/4 in. */
  private static final double REPEAT = 4.25 * 25.4;

  private static Fabric.Repeat along(double repeat) {
    return new Fabric.Repeat(
        OptionalDouble.of(repeat), OptionalDouble.empty(), List.of("side", "hem"));
  }

  private static List<ClothPiece> matched(Fabric.Repeat repeat, ClothPiece... pieces) {
    Matching matching = new Matching(List.of(pieces), repeat, List.of());
    assertThat(matching.clashes()).isEmpty();
    List<ClothPiece> all = new ArrayList<>();
    for (ClothPiece piece : pieces) {
      all.add(matching.matched(piece));
    }
    return all;
  }

  private static Optional<ClothLaying> lay(Fold fold, double width, List<ClothPiece> pieces) {
    List<ClothPlan> plans = ClothPlan.of(pieces, fold, width, ClothSettings.HANDBOOK, ONE_WAY);
    Optional<ClothLaying> laying =
        new PlanSearch(8_000, 1, new NoFitStore()).lay(plans).map(PlanSearch.Laid::laying);
    laying.ifPresent(
        found -> assertThat(new LayingRules(pieces, ONE_WAY).objections(found)).isEmpty());
    return laying;
  }

  /** The length of the second piece's way behind the first, and its own: k repeats on. */
  private static double behind(double first, double notch, double second, double otherNotch) {
    double from = notch - otherNotch;
    return from + Math.ceil((first - from) / REPEAT - 1e-9) * REPEAT + second;
  }

  @Test
  void twoStackedPiecesTakeTheNextBarAndNoMoreThanTheHandbookAllows() {
    SplittableRandom random = new SplittableRandom(29);
    double mostExtra = 0;
    for (int round = 0; round < 12; round++) {
      double high = 300 + random.nextInt(400);
      double other = 300 + random.nextInt(400);
      double notch = random.nextInt(300);
      double otherNotch = random.nextInt(300);
      ClothPiece front = CutPiece.rectangle("front", 600, high).notch("side", 2, notch).onCloth();
      ClothPiece back =
          CutPiece.rectangle("back", 600, other).notch("side", 2, otherNotch).onCloth();
      double length =
          lay(Fold.SINGLE, 700, matched(along(REPEAT), front, back)).orElseThrow().length();
      double known =
          Math.min(behind(high, notch, other, otherNotch), behind(other, otherNotch, high, notch));
      assertThat(length).isCloseTo(known, EXACT);
      double extra = length - high - other;
      assertThat(extra).as("check value 29: 8 1/2 in for two").isBetween(-0.001, 8.5 * 25.4);
      mostExtra = Math.max(mostExtra, extra);
    }
    assertThat(mostExtra).isGreaterThan(25);
  }

  @Test
  void theEstimateIsARepeatForEachStackedPiece() {
    // handbook section 10, check value 29: a repeat of 4 1/4 in and two stacked pieces, 8 1/2 in
    ClothPiece front = CutPiece.rectangle("front", 600, 500).onCloth();
    ClothPiece back = CutPiece.rectangle("back", 600, 400).onCloth();
    ClothLaying stacked = lay(Fold.SINGLE, 700, List.of(front, back)).orElseThrow();
    assertThat(StackedPieces.extra(stacked, REPEAT) / 25.4).isCloseTo(8.5, EXACT);
    ClothLaying beside = lay(Fold.SINGLE, 1300, List.of(front, back)).orElseThrow();
    assertThat(StackedPieces.extra(beside, REPEAT) / 25.4).isCloseTo(4.25, EXACT);
  }

  @Test
  void sideBySideTheBarsMeet() {
    ClothPiece front = CutPiece.rectangle("front", 300, 600).notch("side", 2, 200).onCloth();
    ClothPiece back = CutPiece.rectangle("back", 300, 600).notch("side", 2, 230).onCloth();
    ClothPiece free = CutPiece.rectangle("free", 100, 100).onCloth();
    ClothLaying laying =
        lay(Fold.SINGLE, 730, matched(along(100), front, back, free)).orElseThrow();
    // one of them begins 30 mm behind the other, and the free one beside or behind them
    assertThat(laying.length()).isCloseTo(630, EXACT);
  }

  @Test
  void pairsAndPiecesOnTheFoldMeetOnFoldedClothAndBehindIt() {
    ClothPiece body = CutPiece.rectangle("body", 300, 600).onFold().notch("side", 2, 350).onCloth();
    ClothPiece sleeve =
        CutPiece.rectangle("sleeve", 280, 400).pairs(2).notch("side", 2, 110).onCloth();
    ClothPiece odd =
        CutPiece.polygon("odd", 0, 0, 500, 0, 300, 400, 0, 400).notch("hem", 3, 90).onCloth();
    List<ClothPiece> pieces = matched(along(130), body, sleeve, odd);
    ClothLaying folded = lay(Fold.LENGTHWISE, 1230, pieces).orElseThrow();
    // 350 − 110 is 240: the sleeve begins 240 − 130 behind the body
    assertThat(folded.openFrom()).isCloseTo(600, EXACT);
    lay(Fold.PARTIAL, 1600, pieces);
    lay(Fold.SINGLE, 1230, pieces);
  }

  @Test
  void checksAreCentredOnBarsThatRunAlong() {
    Fabric.Repeat checks =
        new Fabric.Repeat(OptionalDouble.of(90), OptionalDouble.of(70), List.of("side"));
    ClothPiece front = CutPiece.rectangle("front", 300, 500).onFold().notch("side", 2, 0).onCloth();
    ClothPiece cuff = CutPiece.rectangle("cuff", 200, 150).pairs(2).notch("side", 2, 40).onCloth();
    List<ClothPiece> pieces = matched(checks, front, cuff);
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.SINGLE)) {
      ClothLaying laying = lay(fold, 1200, pieces).orElseThrow();
      double bar = fold == Fold.SINGLE ? 600 : 0;
      for (LaidPiece laid : laying.pieces()) {
        double steps = (laid.origin().y() - bar) / 70;
        assertThat(steps).isCloseTo(Math.rint(steps), Offset.offset(1e-4));
      }
    }
    assertThat(lay(Fold.DOUBLE, 1200, pieces)).as("two folds on bars").isEmpty();
  }

  @Test
  void aPieceMovedOffItsBarIsRefused() {
    ClothPiece front = CutPiece.rectangle("front", 300, 600).notch("side", 2, 200).onCloth();
    ClothPiece back = CutPiece.rectangle("back", 300, 600).notch("side", 2, 200).onCloth();
    List<ClothPiece> pieces = matched(along(100), front, back);
    ClothLaying laying = lay(Fold.SINGLE, 730, pieces).orElseThrow();
    ClothPiece wrong = CutPiece.rectangle("back", 300, 600).notch("side", 2, 220).onCloth();
    List<LaidPiece> moved = new ArrayList<>();
    List<ClothPiece> asked = matched(along(100), front, wrong);
    for (LaidPiece laid : laying.pieces()) {
      boolean isBack = laid.piece().id().equals("back");
      moved.add(
          new LaidPiece(
              new org.hemwright.cloth.rule.ClothItem(
                  isBack ? asked.get(1) : asked.get(0), laid.item().layers(), false, 1),
              laid.copy(),
              laid.motion(),
              laid.open()));
    }
    ClothLaying off = new ClothLaying(laying.sheet(), laying.length(), laying.openFrom(), moved);
    assertThat(new LayingRules(asked, ONE_WAY).objections(off))
        .anyMatch(objection -> objection.contains("side lies"));
  }

  private static final Fabric.Repeat CHECKS =
      new Fabric.Repeat(OptionalDouble.of(90), OptionalDouble.of(70), List.of("side", "hem"));

  /** A notch of a name on a copy as drawn or a mirrored one, in the drawing's plane. */
  private static MatchedPair.End end(ClothPiece piece, String notch, boolean mirrored) {
    Point own = piece.notchPlace(notch).orElseThrow();
    Point at = piece.frame().inverse().apply(own);
    return new MatchedPair.End(piece.name(), mirrored, at);
  }

  /** A left and a right seam: as drawn with as drawn, or with mirrored, and the other way. */
  private static List<MatchedPair> bothSides(
      ClothPiece one, ClothPiece other, String notch, boolean opposite) {
    return List.of(
        new MatchedPair(notch, end(one, notch, false), end(other, notch, opposite)),
        new MatchedPair(notch, end(one, notch, true), end(other, notch, !opposite)));
  }

  private static List<ClothPiece> sewn(List<MatchedPair> pairs, ClothPiece... pieces) {
    Matching matching = new Matching(List.of(pieces), CHECKS, pairs);
    assertThat(matching.clashes()).isEmpty();
    return List.of(pieces).stream().map(matching::matched).toList();
  }

  /** Where on the flat cloth the notch of one copy lies, as cut. */
  private static Point cut(ClothLaying laying, MatchedPair.End end) {
    LaidPiece laid =
        laying.unfolded().pieces().stream()
            .filter(each -> each.piece().name().equals(end.piece()))
            .filter(each -> each.motion().isMirror() == end.mirrored())
            .findFirst()
            .orElseThrow();
    return laid.fromDrawing().apply(end.at());
  }

  private static void assertMeet(ClothLaying laying, List<MatchedPair> pairs) {
    for (MatchedPair pair : pairs) {
      Vector apart = cut(laying, pair.one()).minus(cut(laying, pair.other()));
      assertThat(apart.dx() / 90).isCloseTo(Math.rint(apart.dx() / 90), Offset.offset(1e-4));
      assertThat(apart.dy() / 70).isCloseTo(Math.rint(apart.dy() / 70), Offset.offset(1e-4));
    }
  }

  @Test
  void acrossTheClothTooMatchedNotchesOfPairsMeetAtOnePlaceOfTheCheck() {
    SplittableRandom random = new SplittableRandom(31);
    for (int round = 0; round < 6; round++) {
      ClothPiece front =
          CutPiece.rectangle("front", 250 + random.nextInt(90), 500)
              .pairs(2)
              .notch("side", 2, random.nextInt(300))
              .onCloth();
      ClothPiece back =
          CutPiece.rectangle("back", 250 + random.nextInt(90), 520)
              .pairs(2)
              .notch("side", round % 2 == 0 ? 2 : 0, random.nextInt(300))
              .onCloth();
      List<MatchedPair> pairs = bothSides(front, back, "side", round % 2 == 0);
      List<ClothPiece> held = sewn(pairs, front, back);
      for (Fold fold : List.of(Fold.LENGTHWISE, Fold.SINGLE)) {
        ClothLaying laying = lay(fold, 1500, held).orElseThrow();
        assertMeet(laying, pairs);
        assertMeet(laying.onWider(1613), pairs);
        assertThat(new LayingRules(held, ONE_WAY).objections(laying.onWider(1613))).isEmpty();
      }
    }
  }

  @Test
  void twoFrontsHaveOneBarOverTheirSeamOrOnTheirSeam() {
    ClothPiece front =
        CutPiece.rectangle("front", 283, 500)
            .pairs(2)
            .notch("hem", 0, 100)
            .notch("side", 2, 120)
            .onCloth();
    ClothPiece back = CutPiece.rectangle("back", 317, 500).pairs(2).notch("side", 2, 120).onCloth();
    List<MatchedPair> pairs = new ArrayList<>();
    pairs.add(new MatchedPair("hem", end(front, "hem", false), end(front, "hem", true)));
    pairs.addAll(bothSides(front, back, "side", true));
    List<ClothPiece> held = sewn(pairs, front, back);
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.SINGLE)) {
      ClothLaying laying = lay(fold, 1500, held).orElseThrow();
      assertMeet(laying, pairs);
      // two mirror images meet alike only on an axis of the check: a bar, or between two
      double half = (cut(laying, pairs.get(0).one()).y() - 750) / 35;
      assertThat(half).isCloseTo(Math.rint(half), Offset.offset(1e-4));
    }
  }

  @Test
  void aPocketOfEvenShapeTakesThePlaceOfTheCheckThatItIsSewnTo() {
    ClothPiece front =
        CutPiece.rectangle("front", 300, 500).pairs(2).notch("side", 2, 111).onCloth();
    ClothPiece pocket =
        CutPiece.rectangle("pocket", 131, 150).pairs(2).notch("side", 1, 65.5).onCloth();
    List<MatchedPair> pairs = bothSides(front, pocket, "side", false);
    List<ClothPiece> held = sewn(pairs, front, pocket);
    assertThat(pocket.evenSided()).isTrue();
    assertThat(held.get(1).evenSided()).as("in its checks it is not").isFalse();
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.SINGLE)) {
      assertMeet(lay(fold, 1500, held).orElseThrow(), pairs);
    }
  }

  @Test
  void whatIsMovedBesideItsMatesIsRefusedAlongAndAcross() {
    ClothPiece front =
        CutPiece.rectangle("front", 301, 500).pairs(2).notch("side", 2, 77).onCloth();
    ClothPiece back = CutPiece.rectangle("back", 282, 520).pairs(2).notch("side", 2, 130).onCloth();
    List<ClothPiece> held = sewn(bothSides(front, back, "side", true), front, back);
    for (Fold fold : List.of(Fold.LENGTHWISE, Fold.SINGLE)) {
      ClothLaying laying = lay(fold, 1700, held).orElseThrow();
      for (Vector step : List.of(new Vector(1.5, 0), new Vector(0, 1.5), new Vector(0, -1.5))) {
        List<LaidPiece> moved = new ArrayList<>(laying.pieces());
        LaidPiece last = moved.get(moved.size() - 1);
        moved.set(
            moved.size() - 1,
            new LaidPiece(
                last.item(), last.copy(), last.motion().then(Motion.move(step)), last.open()));
        ClothLaying off =
            new ClothLaying(laying.sheet(), laying.length() + 2, laying.openFrom() + 2, moved);
        assertThat(new LayingRules(held, ONE_WAY).objections(off))
            .as("%s %s", fold, step)
            .anyMatch(
                objection ->
                    objection.contains("side lies, to that of")
                        && objection.contains(step.dx() > 0 ? "along" : "across"));
      }
    }
  }

  @Test
  void twoPiecesOnTheFoldMatchAcrossOnlyWhereTheirWidthsAllowIt() {
    for (double wide : new double[] {300, 313}) {
      ClothPiece front =
          CutPiece.rectangle("front", 260, 500).onFold().notch("side", 2, 60).onCloth();
      ClothPiece back =
          CutPiece.rectangle("back", wide, 500).onFold().notch("side", 2, 60).onCloth();
      // wearer's left: the front's drawn half with the back's other half, so widths add up:
      // 260 + 300 is eight repeats of 70, 260 + 313 is 13 mm more
      MatchedPair.End drawn = end(front, "side", false);
      MatchedPair.End back1 = end(back, "side", false);
      MatchedPair.End beyond =
          new MatchedPair.End("back", false, new Point(-back1.at().x(), back1.at().y()));
      List<MatchedPair> pairs = List.of(new MatchedPair("side", drawn, beyond));
      Matching matching = new Matching(List.of(front, back), CHECKS, pairs);
      if (wide == 300) {
        assertThat(matching.clashes()).isEmpty();
      } else {
        assertThat(matching.clashes()).hasSize(1);
        Matching.Clash clash = matching.clashes().get(0);
        assertThat(clash.across()).isTrue();
        assertThat(clash.apart()).isCloseTo(13, EXACT);
        assertThat(List.of(clash.piece(), clash.mate())).containsExactly("back", "front");
      }
      List<ClothPiece> held = List.of(matching.matched(front), matching.matched(back));
      ClothLaying laying = lay(Fold.LENGTHWISE, 1500, held).orElseThrow();
      for (LaidPiece laid : laying.pieces()) {
        assertThat(laid.origin().y()).as("both folds on a bar").isZero();
      }
    }
  }

  /** The colour of an even check, of its own at each place between two bars. */
  private static double colour(Point at) {
    double along = Math.abs(at.x() / 90 - Math.rint(at.x() / 90));
    double across = Math.abs((at.y() - 750) / 70 - Math.rint((at.y() - 750) / 70));
    return along + 2 * across;
  }

  /** On the bias two mirrored copies meet in points, all along the seam between them. */
  @Test
  void aBiasPieceMeetsItsMirroredCopyAllAlong() {
    ClothPiece front =
        CutPiece.rectangle("front", 300, 400).pairs(2).grainTo(1, 1).notch("hem", 2, 171).onCloth();
    List<MatchedPair> pairs =
        List.of(new MatchedPair("hem", end(front, "hem", false), end(front, "hem", true)));
    ClothLaying laying = lay(Fold.SINGLE, 1500, sewn(pairs, front)).orElseThrow();
    for (double y = 0; y <= 400; y += 12.5) {
      Point at = new Point(300, y);
      double drawn = colour(cut(laying, new MatchedPair.End("front", false, at)));
      double mirrored = colour(cut(laying, new MatchedPair.End("front", true, at)));
      assertThat(mirrored).isCloseTo(drawn, Offset.offset(1e-4));
    }
  }

  @Test
  void piecesInSeveralMatchesAndInNoneOfThemShareOneSetOfBars() {
    ClothPiece one = CutPiece.rectangle("one", 200, 300).notch("side", 2, 40).onCloth();
    ClothPiece two = CutPiece.rectangle("two", 200, 310).notch("hem", 2, 55).onCloth();
    ClothPiece both =
        CutPiece.rectangle("both", 200, 320).notch("side", 2, 33).notch("hem", 2, 71).onCloth();
    Fabric.Repeat bars =
        new Fabric.Repeat(
            OptionalDouble.of(100), OptionalDouble.empty(), List.of("side", "hem", "other"));
    ClothPiece apart = CutPiece.rectangle("apart", 200, 330).notch("other", 2, 12).onCloth();
    List<ClothPiece> held = matched(bars, one, two, both, apart);
    ClothLaying laying = lay(Fold.SINGLE, 900, held).orElseThrow();
    double side = notch(laying, "one", "side");
    // what nothing ties to them has its notch on the same bars
    double hem = notch(laying, "two", "hem");
    for (double steps :
        new double[] {
          notch(laying, "both", "side") - side,
          notch(laying, "both", "hem") - hem,
          notch(laying, "apart", "other") - side
        }) {
      assertThat(steps / 100).isCloseTo(Math.rint(steps / 100), Offset.offset(1e-6));
    }
  }

  private static double notch(ClothLaying laying, String piece, String notch) {
    return laying.pieces().stream()
        .filter(laid -> laid.piece().name().equals(piece))
        .map(laid -> laid.motion().apply(laid.piece().notchPlace(notch).orElseThrow()))
        .findFirst()
        .orElseThrow()
        .x();
  }

  @Test
  void notchesThatAreNotAsFarApartAsTheirMatesClash() {
    ClothPiece front =
        CutPiece.rectangle("front", 300, 600).notch("side", 2, 200).notch("hem", 2, 50).onCloth();
    ClothPiece back =
        CutPiece.rectangle("back", 300, 600).notch("side", 2, 230).notch("hem", 2, 77).onCloth();
    Matching matching = new Matching(List.of(front, back), along(100), List.of());
    assertThat(matching.clashes()).hasSize(1);
    assertThat(matching.clashes().get(0).apart()).isCloseTo(3, EXACT);
    assertThat(matching.clashes().get(0).piece()).isEqualTo("back");
  }
}
