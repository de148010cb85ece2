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
import org.hemwright.cloth.rule.Matching;
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
    Matching matching = new Matching(List.of(pieces), repeat);
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
        new PlanSearch(8_000, 1, new NoFitStore())
            .lay(plans, Optional.empty())
            .map(PlanSearch.Laid::laying);
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

  @Test
  void notchesThatAreNotAsFarApartAsTheirMatesClash() {
    ClothPiece front =
        CutPiece.rectangle("front", 300, 600).notch("side", 2, 200).notch("hem", 2, 50).onCloth();
    ClothPiece back =
        CutPiece.rectangle("back", 300, 600).notch("side", 2, 230).notch("hem", 2, 77).onCloth();
    Matching matching = new Matching(List.of(front, back), along(100));
    assertThat(matching.clashes()).hasSize(1);
    assertThat(matching.clashes().get(0).apart()).isCloseTo(3, EXACT);
    assertThat(matching.clashes().get(0).piece()).isEqualTo("back");
  }
}
