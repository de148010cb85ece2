package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.CutPiece;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** Layings whose length is known from geometry, and the rules that every laying keeps. */
class PlanSearchTest {
  private static final Offset<Double> EXACT = Offset.offset(0.001);
  private static final Fabric.Nap ONE_WAY = Fabric.Nap.ONE_WAY;
  private static final Fabric.Nap EITHER_WAY = Fabric.Nap.EITHER_WAY;

  /** Half the width of cloth between its selvedges is a metre. */
  private static final double TWO_METRES = 2030;

  private static Optional<ClothLaying> lay(
      Fold fold, double width, Fabric.Nap nap, ClothPiece... pieces) {
    return lay(fold, width, nap, ClothSettings.HANDBOOK, pieces);
  }

  private static Optional<ClothLaying> lay(
      Fold fold, double width, Fabric.Nap nap, ClothSettings settings, ClothPiece... pieces) {
    List<ClothPlan> plans = ClothPlan.of(List.of(pieces), fold, width, settings, nap);
    Optional<ClothLaying> laying =
        new PlanSearch(20_000, 1, new NoFitStore()).lay(plans).map(PlanSearch.Laid::laying);
    laying.ifPresent(
        found ->
            assertThat(new LayingRules(List.of(pieces), nap).objections(found))
                .as(fold + " on " + width)
                .isEmpty());
    return laying;
  }

  private static double length(Fold fold, double width, Fabric.Nap nap, ClothPiece... pieces) {
    return lay(fold, width, nap, pieces).orElseThrow().length();
  }

  @Test
  void aPairIsOnePlaceOnTheFoldAndTwoOnSingleCloth() {
    ClothPiece leg = CutPiece.polygon("leg", 0, 0, 600, 0, 500, 900, 0, 900).pairs(2).onCloth();
    assertThat(length(Fold.LENGTHWISE, TWO_METRES, ONE_WAY, leg)).isCloseTo(900, EXACT);
    ClothLaying single = lay(Fold.SINGLE, TWO_METRES, ONE_WAY, leg).orElseThrow();
    assertThat(single.length()).isCloseTo(900, EXACT);
    assertThat(single.pieces()).hasSize(2);
    assertThat(single.pieces().stream().filter(laid -> laid.faceDown())).hasSize(1);
  }

  @Test
  void rectanglesThatFillTheClothLeaveNothing() {
    ClothPiece tall = CutPiece.rectangle("tall", 400, 900).pairs(2).onCloth();
    ClothPiece low = CutPiece.rectangle("low", 600, 300).pairs(6).onCloth();
    ClothLaying laying = lay(Fold.LENGTHWISE, TWO_METRES, ONE_WAY, tall, low).orElseThrow();
    assertThat(laying.length()).isCloseTo(900, EXACT);
    assertThat(laying.density()).isCloseTo(1, Offset.offset(1e-6));
  }

  @Test
  void aHalfCircleSkirtOnFoldedClothTakesItsOuterRadius() {
    // handbook section 10, check values 8 and 10: waist 70 cm, length 50 cm, cut radii
    ClothPiece skirt = CutPiece.quarterRing("skirt", 101.4, 626.4).onCloth();
    assertThat(length(Fold.LENGTHWISE, 1400, ONE_WAY, skirt)).isCloseTo(626.4, EXACT);
    assertThat(length(Fold.SINGLE, 1400, ONE_WAY, skirt)).isCloseTo(626.4, EXACT);
    assertThat(lay(Fold.LENGTHWISE, 1280, ONE_WAY, skirt)).as("needs 125.28 cm").isEmpty();
    assertThat(length(Fold.LENGTHWISE, 1282.8, ONE_WAY, skirt)).isCloseTo(626.4, EXACT);
  }

  @Test
  void twoHalvesOfACircleSkirtNestOneIntoTheOther() {
    // the second ring's inner circle must clear the first one's outer: R + sqrt(R² − r²)
    double inner = 101.4;
    double outer = 626.4;
    ClothPiece skirt = CutPiece.quarterRing("skirt", inner, outer).times(2).onCloth();
    double nested = outer + Math.sqrt(outer * outer - inner * inner);
    assertThat(length(Fold.LENGTHWISE, 1300, ONE_WAY, skirt)).isCloseTo(nested, Offset.offset(0.5));
    // without nap the second is turned: side edge to side edge is longer, hem into waist is not
    assertThat(length(Fold.LENGTHWISE, 1300, EITHER_WAY, skirt)).isLessThan(nested + 0.5);
  }

  @Test
  void bothSelvedgesToTheMiddleGiveTwoFolds() {
    ClothPiece front = CutPiece.rectangle("front", 300, 700).onFold().onCloth();
    ClothPiece back = CutPiece.rectangle("back", 300, 700).onFold().onCloth();
    assertThat(front.evenSided()).isTrue();
    assertThat(length(Fold.LENGTHWISE, 1300, ONE_WAY, front, back)).isCloseTo(1400, EXACT);
    assertThat(length(Fold.DOUBLE, 1300, ONE_WAY, front, back)).isCloseTo(700, EXACT);
  }

  @Test
  void aHalfWhoseFoldRunsAcrossTheGrainIsNeverLaidOnALengthwiseFold() {
    // half a waistband, its grain along it: laid on the fold it would be cut half as deep
    ClothPiece band = CutPiece.rectangle("band", 400, 80).onFold().grainTo(1, 0).onCloth();
    assertThat(band.shape().right()).isCloseTo(800, EXACT);
    assertThat(ClothPlan.of(List.of(band), Fold.LENGTHWISE, 1500, ClothSettings.HANDBOOK, ONE_WAY))
        .isEmpty();
    ClothPiece pair = CutPiece.rectangle("pair", 300, 800).pairs(2).onCloth();
    ClothLaying laying = lay(Fold.PARTIAL, 1500, ONE_WAY, band, pair).orElseThrow();
    assertThat(laying.pieces())
        .filteredOn(laid -> laid.piece().id().equals("band"))
        .allMatch(laid -> laid.item().layers() == ClothItem.Layers.SINGLE);
    // its pattern is turned over in the middle of its length
    assertThat(band.foldLine().orElseThrow())
        .extracting(Point::x)
        .allSatisfy(x -> assertThat(x).isCloseTo(400, EXACT));
    assertThat(band.foldLine().orElseThrow())
        .extracting(Point::y)
        .containsExactlyInAnyOrder(-40.0, 40.0);
    ClothPiece front = CutPiece.rectangle("front", 300, 700).onFold().onCloth();
    assertThat(front.foldLine().orElseThrow()).extracting(Point::x).contains(0.0, 700.0);
  }

  @Test
  void whatIsCutOnceIsNeverLaidOnTwoLayers() {
    ClothPiece odd = CutPiece.polygon("odd", 0, 0, 500, 0, 300, 400, 0, 400).onCloth();
    ClothPiece pair = CutPiece.rectangle("pair", 300, 800).pairs(2).onCloth();
    assertThat(ClothPlan.of(List.of(odd), Fold.LENGTHWISE, 1500, ClothSettings.HANDBOOK, ONE_WAY))
        .isEmpty();
    ClothLaying laying = lay(Fold.LENGTHWISE, 1500, ONE_WAY, odd, pair).orElseThrow();
    assertThat(laying.openFrom()).isCloseTo(800, EXACT);
    assertThat(laying.length()).isCloseTo(1200, EXACT);
    ClothLaying partly = lay(Fold.PARTIAL, 1500, ONE_WAY, odd, pair).orElseThrow();
    assertThat(partly.length()).isCloseTo(800, EXACT);
    assertThat(partly.sheet().depth()).isCloseTo(315, EXACT);
  }

  @Test
  void whatIsCutRightSideUpLiesOnOneLayerAndIsNeverTurnedOver() {
    // folded right sides together the cloth shows its wrong side: handbook section 5, Folds
    ClothPiece motif = CutPiece.rectangle("motif", 400, 500).times(2).rightSideUp().onCloth();
    ClothPiece pair = CutPiece.rectangle("pair", 400, 600).pairs(2).onCloth();
    ClothLaying folded = lay(Fold.LENGTHWISE, 1030, ONE_WAY, motif, pair).orElseThrow();
    assertThat(folded.openFrom()).isCloseTo(600, EXACT);
    assertThat(folded.length()).isCloseTo(600 + 500, EXACT);
    ClothPiece odd =
        CutPiece.polygon("odd", 0, 0, 500, 0, 300, 400, 0, 400).times(2).rightSideUp().onCloth();
    ClothLaying single = lay(Fold.SINGLE, 1500, EITHER_WAY, odd, pair).orElseThrow();
    assertThat(single.pieces())
        .filteredOn(laid -> laid.piece().id().equals("odd"))
        .hasSize(2)
        .noneMatch(laid -> laid.faceDown());
    assertThat(ClothPlan.of(List.of(motif), Fold.LENGTHWISE, 1030, ClothSettings.HANDBOOK, ONE_WAY))
        .isEmpty();
  }

  @Test
  void twiceUnmirroredIsNoPairUnlessItIsItsOwnMirrorImage() {
    ClothPiece even = CutPiece.polygon("even", 0, 0, 400, 0, 300, 500, 100, 500).times(2).onCloth();
    ClothPiece odd = CutPiece.polygon("odd", 0, 0, 400, 0, 300, 500, 0, 500).times(2).onCloth();
    assertThat(even.pairs(ONE_WAY)).isEqualTo(1);
    assertThat(odd.pairs(ONE_WAY)).isZero();
    assertThat(length(Fold.LENGTHWISE, 1030, ONE_WAY, even)).isCloseTo(500, EXACT);
  }

  @Test
  void itsOwnMirrorImageEndForEndIsAPairWhereThereIsNoNap() {
    // cut crosswise of the grain, even from end to end but not from side to side
    ClothPiece band =
        CutPiece.polygon("band", 0, 0, 600, 0, 550, 80, 50, 80).times(2).grainTo(1, 0).onCloth();
    assertThat(band.evenTurned()).isTrue();
    assertThat(band.evenSided()).isFalse();
    assertThat(band.pairs(EITHER_WAY)).isEqualTo(1);
    assertThat(band.pairs(ONE_WAY)).isZero();
  }

  @Test
  void acrossTheFoldCountsTwiceAndTurnsTheNap() {
    ClothPiece wide = CutPiece.rectangle("wide", 1000, 700).pairs(2).onCloth();
    assertThat(lay(Fold.LENGTHWISE, 1150, EITHER_WAY, wide)).isEmpty();
    assertThat(length(Fold.CROSSWISE, 1150, EITHER_WAY, wide)).isCloseTo(1400, EXACT);
    assertThat(ClothPlan.of(List.of(wide), Fold.CROSSWISE, 1150, ClothSettings.HANDBOOK, ONE_WAY))
        .isEmpty();
  }

  @Test
  void withoutNapTrianglesLieHeadToFoot() {
    ClothPiece gore = CutPiece.polygon("gore", 0, 0, 500, 0, 0, 900).times(2).onCloth();
    assertThat(length(Fold.SINGLE, 530, EITHER_WAY, gore)).isCloseTo(900, EXACT);
    assertThat(length(Fold.SINGLE, 530, ONE_WAY, gore)).isGreaterThan(1000);
  }

  @Test
  void biasPiecesLieAtFortyFiveDegrees() {
    ClothPiece bias = CutPiece.rectangle("bias", 200, 200).grainTo(1, 1).onCloth();
    assertThat(length(Fold.SINGLE, 1500, ONE_WAY, bias))
        .isCloseTo(200 * Math.sqrt(2), Offset.offset(0.002));
  }

  @Test
  void piecesKeepTheirGap() {
    ClothSettings apart = ClothSettings.HANDBOOK.withGap(10);
    ClothPiece[] pieces = {
      CutPiece.rectangle("one", 400, 500).pairs(2).onCloth(10),
      CutPiece.rectangle("two", 390, 500).onFold().onCloth(10),
      CutPiece.quarterRing("three", 60, 200).onCloth(10)
    };
    ClothLaying laying = lay(Fold.LENGTHWISE, 1630, ONE_WAY, apart, pieces).orElseThrow();
    // side by side across 80 cm, 400 + 10 + 390, and the ring's lower edge 10 mm behind them
    assertThat(laying.length()).isCloseTo(500 + 10 + 200, Offset.offset(0.5));
  }

  @Test
  void everyLayingOfRandomPiecesKeepsTheRules() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 25; round++) {
      double gap = random.nextInt(3) * 4;
      ClothPiece[] pieces = new ClothPiece[2 + random.nextInt(3)];
      for (int i = 0; i < pieces.length; i++) {
        pieces[i] = randomPiece("p" + i, random).onCloth(gap);
      }
      double width = 900 + random.nextInt(8) * 100;
      Fabric.Nap nap = random.nextBoolean() ? ONE_WAY : EITHER_WAY;
      for (Fold fold : Fold.values()) {
        lay(fold, width, nap, ClothSettings.HANDBOOK.withGap(gap), pieces)
            .ifPresent(
                laying ->
                    assertThat(new LayingRules(List.of(pieces), nap).objections(laying.unfolded()))
                        .isEmpty());
      }
    }
  }

  @Test
  void aLayingIsTidiedAsFarAsThatBuysNoMore() {
    SplittableRandom random = new SplittableRandom(5);
    int longer = 0;
    for (int round = 0; round < 10; round++) {
      ClothPiece[] pieces = new ClothPiece[5];
      for (int i = 0; i < pieces.length; i++) {
        pieces[i] = randomPiece("p" + i, random).onCloth(0);
      }
      double shrink = round % 2 * 0.05;
      List<ClothPlan> plans =
          ClothPlan.of(List.of(pieces), Fold.SINGLE, 1150, ClothSettings.HANDBOOK, ONE_WAY);
      PlanSearch search = new PlanSearch(16_000, 1, new NoFitStore());
      PlanSearch.Laid found = search.lay(plans).orElseThrow();
      double shortest = found.laying().length();
      double room = PlanSearch.roomToTidy(shortest, shrink, OptionalDouble.empty());
      PlanSearch.Laid taken = search.tidied(found, room);
      BuyingLength least = BuyingLength.of(shortest / (1 - shrink));
      assertThat(taken.laying().length()).isLessThanOrEqualTo(1.005 * shortest + 0.001);
      assertThat(BuyingLength.of(taken.laying().length() / (1 - shrink))).isEqualTo(least);
      assertThat(new LayingRules(List.of(pieces), ONE_WAY).objections(taken.laying())).isEmpty();
      Laying laying = new Laying(plans.get(0).sections().get(0).problem().orElseThrow());
      assertThat(laying.tidiness(taken.layouts().get(0)))
          .isGreaterThanOrEqualTo(laying.tidiness(found.layouts().get(0)));
      longer += taken.laying().length() > shortest + 0.001 ? 1 : 0;
    }
    assertThat(longer).as("tidier ones that are a little longer").isPositive();
  }

  @Test
  void aLayingThatComesOutOfTheLengthThereIsDoesSoOnceItIsTidied() {
    assertThat(PlanSearch.roomToTidy(1418, 0, OptionalDouble.empty())).isEqualTo(7.09);
    assertThat(PlanSearch.roomToTidy(1418, 0, OptionalDouble.of(1420)))
        .isCloseTo(1.9, within(1e-9));
    assertThat(PlanSearch.roomToTidy(1418, 0, OptionalDouble.of(1418))).isZero();
    assertThat(PlanSearch.roomToTidy(1418, 0, OptionalDouble.of(1417))).isEqualTo(7.09);
    double half = PlanSearch.roomToTidy(709, 0.5, OptionalDouble.of(1420));
    assertThat((709 + half) / 0.5).isLessThanOrEqualTo(1420).isGreaterThan(1418);
  }

  private static CutPiece randomPiece(String name, SplittableRandom random) {
    double wide = 100 + random.nextInt(300);
    double high = 100 + random.nextInt(600);
    double nip = random.nextInt(80);
    return switch (random.nextInt(4)) {
      case 0 -> CutPiece.rectangle(name, wide, high).onFold().times(1 + random.nextInt(2));
      case 1 -> CutPiece.quarterRing(name, wide / 3, wide).times(1 + random.nextInt(2));
      case 2 ->
          CutPiece.polygon(name, 0, 0, wide, 0, wide - nip, high / 2, wide - nip / 2, high, 0, high)
              .pairs(2 + 2 * random.nextInt(2));
      default ->
          CutPiece.polygon(name, 0, 0, wide, 0, wide, high, nip, high).times(1 + random.nextInt(2));
    };
  }
}
