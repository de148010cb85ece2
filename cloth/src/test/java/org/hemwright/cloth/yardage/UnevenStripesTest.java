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
import org.hemwright.cloth.rule.ClothSheet;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Uneven checks, whose bars have no mirror image on the cloth: cut from a single layer, each piece
 * again turned over (handbook section 5), the design going round the body one way.
 */
class UnevenStripesTest {
  private static final Fabric.Nap ONE_WAY = Fabric.Nap.ONE_WAY;
  private static final double ALONG = 90;
  private static final double ACROSS = 70;
  private static final Offset<Double> EXACT = Offset.offset(0.002);

  private static Fabric.Repeat checks(boolean uneven) {
    return new Fabric.Repeat(
        OptionalDouble.of(ALONG),
        OptionalDouble.of(ACROSS),
        false,
        uneven,
        List.of("left", "back", "right"));
  }

  private static final Fabric.Repeat UNEVEN = checks(true);

  /**
   * A body in three: the front drawn as a half, its left edge the fold, and a pair of backs whose
   * left edge is the side as drawn. Seen from outside, front, left back and right back follow each
   * other to the right, and the front again.
   */
  private record Body(ClothPiece front, ClothPiece back, List<MatchedPair> pairs) {
    static Body of(double half, double back) {
      ClothPiece front =
          CutPiece.rectangle("front", half, 400).onFold().notch("left", 2, 120).onCloth();
      ClothPiece behind =
          CutPiece.rectangle("back", back, 430)
              .pairs(2)
              .notch("left", 0, 310)
              .notch("back", 2, 150)
              .onCloth();
      return new Body(
          front,
          behind,
          List.of(
              new MatchedPair("left", end("front", false, half, 120), end("back", false, 0, 120)),
              new MatchedPair("back", end("back", false, back, 150), end("back", true, back, 150)),
              new MatchedPair(
                  "right", end("back", true, 0, 120), end("front", false, -half, 120))));
    }

    static MatchedPair.End end(String piece, boolean mirrored, double x, double y) {
      return new MatchedPair.End(piece, mirrored, new Point(x, y));
    }

    Matching matching(Fabric.Repeat repeat) {
      return new Matching(List.of(front, back), repeat, pairs);
    }

    List<ClothPiece> held(Fabric.Repeat repeat) {
      Matching matching = matching(repeat);
      return List.of(matching.matched(front), matching.matched(back));
    }
  }

  private static Optional<ClothLaying> lay(Fold fold, double width, List<ClothPiece> pieces) {
    List<ClothPlan> plans = ClothPlan.of(pieces, fold, width, ClothSettings.HANDBOOK, ONE_WAY);
    Optional<ClothLaying> laying =
        new PlanSearch(6_000, 1, new NoFitStore()).lay(plans).map(PlanSearch.Laid::laying);
    laying.ifPresent(
        found -> assertThat(new LayingRules(pieces, ONE_WAY).objections(found)).isEmpty());
    return laying;
  }

  private static LaidPiece copy(ClothLaying laying, String piece, boolean mirrored) {
    return laying.pieces().stream()
        .filter(each -> each.piece().name().equals(piece))
        .filter(each -> each.motion().isMirror() == mirrored)
        .findFirst()
        .orElseThrow();
  }

  /** Where on the cloth, right side up, the notch of one copy is cut. */
  private static Point cut(ClothLaying laying, MatchedPair.End end) {
    return copy(laying, end.piece(), end.mirrored()).fromDrawing().apply(end.at());
  }

  private static double beside(double apart, double repeat) {
    return Math.abs(apart / repeat - Math.rint(apart / repeat)) * repeat;
  }

  @ParameterizedTest
  @EnumSource(Fold.class)
  void unevenAcrossNothingIsCutFromFoldedCloth(Fold fold) {
    List<ClothPiece> even = Body.of(245, 245).held(checks(false));
    List<ClothPiece> uneven = Body.of(245, 245).held(UNEVEN);
    assertThat(lay(fold, 1400, uneven).isPresent()).isEqualTo(fold == Fold.SINGLE);
    Optional<ClothLaying> folded = lay(fold, 1400, even);
    if (fold != Fold.SINGLE && folded.isPresent()) {
      assertThat(new LayingRules(even, ONE_WAY, Optional.of(UNEVEN)).objections(folded.get()))
          .contains("the cloth is folded, and its bars are uneven across");
    }
  }

  @Test
  void unevenAlongOnlyItMayBeFolded() {
    Fabric.Repeat along =
        new Fabric.Repeat(
            OptionalDouble.of(ALONG), OptionalDouble.empty(), true, false, List.of("left"));
    List<ClothPiece> pieces = Body.of(245, 245).held(along);
    assertThat(lay(Fold.LENGTHWISE, 1400, pieces)).isPresent();
    assertThat(lay(Fold.CROSSWISE, 1400, pieces)).as("it would turn the bars").isEmpty();
  }

  /**
   * Bars that follow each other one way all round close where the girth is a whole number of
   * repeats, and else lie apart by what it is more, at the seam that is named last: school
   * geometry.
   */
  @Test
  void roundTheBodyTheBarsCloseWhereTheGirthIsAWholeNumberOfRepeats() {
    SplittableRandom random = new SplittableRandom(41);
    for (int round = 0; round < 8; round++) {
      double half = 200 + random.nextInt(90);
      double girth = round % 2 == 0 ? 14 * ACROSS : 14 * ACROSS + 2 + random.nextInt(60);
      Body body = Body.of(half, girth / 2 - half);
      Matching matching = body.matching(UNEVEN);
      if (round % 2 == 0) {
        assertThat(matching.clashes()).isEmpty();
      } else {
        assertThat(matching.clashes()).hasSize(1);
        Matching.Clash clash = matching.clashes().get(0);
        assertThat(clash.notch()).isEqualTo("right");
        assertThat(clash.across()).isTrue();
        assertThat(clash.apart()).isCloseTo(beside(girth, ACROSS), EXACT);
      }
      ClothLaying laying = lay(Fold.SINGLE, 1500, body.held(UNEVEN)).orElseThrow();
      for (MatchedPair pair : body.pairs()) {
        Vector apart = cut(laying, pair.other()).minus(cut(laying, pair.one()));
        assertThat(beside(apart.dx(), ALONG)).isCloseTo(0, EXACT);
        boolean closes = round % 2 == 0 || !pair.notch().equals("right");
        assertThat(beside(apart.dy(), ACROSS))
            .as("%s, girth %s", pair.notch(), girth)
            .isCloseTo(closes ? 0 : beside(girth, ACROSS), EXACT);
        // the one ends at the seam and the other begins there, each laid right side up, one way:
        // the bars go on over the seam, and are no mirror image
        assertThat(isEnd(laying, pair.one())).isNotEqualTo(isEnd(laying, pair.other()));
      }
      assertThat(laying.pieces()).noneMatch(LaidPiece::turned);
    }
  }

  /** Whether a seam is the far edge of a copy across the cloth; else its near edge. */
  private static boolean isEnd(ClothLaying laying, MatchedPair.End end) {
    LaidPiece laid = copy(laying, end.piece(), end.mirrored());
    double middle = (laid.covered().low() + laid.covered().high()) / 2;
    return cut(laying, end).y() > middle;
  }

  @Test
  void evenChecksOfThatGirthAreTheMirrorImageAndMeetAtTheCentreBackOnlyByChance() {
    // 205 + 285 is seven repeats: on even checks the fold lies on a bar, and then the centre back
    // lies 490 from it, on a bar too; 225 + 285 is 20 mm more, and both its sides are
    assertThat(Body.of(205, 285).matching(checks(false)).clashes()).isEmpty();
    List<Matching.Clash> off = Body.of(225, 285).matching(checks(false)).clashes();
    assertThat(off).extracting(Matching.Clash::notch).containsExactly("back");
    assertThat(off.get(0).apart()).isCloseTo(beside(2 * 510, ACROSS), EXACT);
  }

  @Test
  void aPieceDrawnAsAHalfHasItsMiddleOnABar() {
    List<ClothPiece> held = Body.of(233, 257).held(UNEVEN);
    ClothLaying laying = lay(Fold.SINGLE, 1500, held).orElseThrow();
    LaidPiece front = copy(laying, "front", false);
    assertThat(beside(front.origin().y() - 750, ACROSS)).isCloseTo(0, EXACT);
    assertThat(front.covered().high() - front.covered().low()).isCloseTo(466, EXACT);
    assertThat(lay(Fold.SINGLE, 1500, held).orElseThrow().onWider(1613).pieces())
        .hasSameSizeAs(laying.pieces());
    assertThat(new LayingRules(held, ONE_WAY).objections(laying.onWider(1613))).isEmpty();
  }

  @Test
  void aLeftAndARightPocketOfEvenShapeAreNotOneAnother() {
    ClothPiece front =
        CutPiece.rectangle("front", 301, 500).pairs(2).notch("left", 2, 111).onCloth();
    ClothPiece pocket =
        CutPiece.rectangle("pocket", 131, 150).pairs(2).notch("left", 1, 40).onCloth();
    List<MatchedPair> pairs = new ArrayList<>();
    for (boolean mirrored : List.of(false, true)) {
      pairs.add(
          new MatchedPair(
              "left", Body.end("front", mirrored, 301, 111), Body.end("pocket", mirrored, 40, 0)));
    }
    pairs.add(
        new MatchedPair("back", Body.end("front", false, 0, 200), Body.end("front", true, 0, 200)));
    Matching matching = new Matching(List.of(front, pocket), UNEVEN, pairs);
    assertThat(matching.clashes()).isEmpty();
    List<ClothPiece> held = List.of(matching.matched(front), matching.matched(pocket));
    ClothLaying laying = lay(Fold.SINGLE, 1500, held).orElseThrow();
    for (MatchedPair pair : pairs) {
      Vector apart = cut(laying, pair.other()).minus(cut(laying, pair.one()));
      assertThat(beside(apart.dx(), ALONG)).isCloseTo(0, EXACT);
      assertThat(beside(apart.dy(), ACROSS)).isCloseTo(0, EXACT);
    }
    assertThat(held.get(1).evenSided()).isFalse();
  }

  private static ClothLaying moved(ClothLaying laying, int at, Vector step) {
    List<LaidPiece> moved = new ArrayList<>(laying.pieces());
    LaidPiece was = moved.get(at);
    moved.set(
        at,
        new LaidPiece(was.item(), was.copy(), was.motion().then(Motion.move(step)), was.open()));
    ClothSheet sheet = laying.sheet();
    return new ClothLaying(sheet, laying.length() + 200, laying.openFrom() + 200, moved);
  }

  @Test
  void aCopyBesideItsPlaceIsRefusedAndSoIsTheMirrorImageOfAnother() {
    List<ClothPiece> held = Body.of(221, 251).held(UNEVEN);
    LayingRules rules = new LayingRules(held, ONE_WAY);
    ClothLaying laying = lay(Fold.SINGLE, 1700, held).orElseThrow();
    for (int at = 0; at < laying.pieces().size(); at++) {
      String id = laying.pieces().get(at).item().id();
      for (double step : new double[] {-1.5, 1.5}) {
        assertThat(rules.objections(moved(laying, at, new Vector(0, step))))
            .anyMatch(said -> said.startsWith(id) && said.contains("bar across"));
        assertThat(rules.objections(moved(laying, at, new Vector(step, 0))))
            .anyMatch(said -> said.contains("bar along"));
      }
    }
    // as if the bars were even: the right back as far before a bar as the left one is behind it
    LaidPiece left = copy(laying, "back", false);
    LaidPiece right = copy(laying, "back", true);
    double image = 850 - (left.origin().y() - 850);
    double step = image - right.origin().y();
    assertThat(beside(step, ACROSS)).isGreaterThan(2);
    ClothLaying alike = moved(laying, laying.pieces().indexOf(right), new Vector(0, step));
    assertThat(rules.objections(alike)).anyMatch(said -> said.contains("bar across"));
  }
}
