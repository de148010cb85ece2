package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.fabric.Fabric.Nap.EITHER_WAY;
import static org.hemwright.pattern.fabric.Fabric.Nap.ONE_WAY;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hemwright.cloth.CutPiece;
import org.hemwright.cloth.SmallRun;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Cloth without a right side: a copy may lie face down, and nothing else is allowed that was not.
 */
class SidesAlikeTest {
  private static final ClothSettings SETTINGS = ClothSettings.HANDBOOK;

  /** As wide on the table as the one shape below is high. */
  private static final double NARROW = 300 + 2 * SETTINGS.selvedge();

  /**
   * A pair that leans along the cloth; it grows by 400 mm from copy to copy where all lean alike.
   */
  private static ClothPiece leaning() {
    return CutPiece.polygon("leaning", 0, 0, 300, 100, 300, 500, 0, 400).pairs(2).onCloth();
  }

  private static double length(ClothPiece piece, Fabric.Nap nap) {
    List<ClothPlan> plans = ClothPlan.of(List.of(piece), Fold.SINGLE, NARROW, SETTINGS, nap);
    ClothLaying laying =
        new PlanSearch(5_000, 1, new NoFitStore()).lay(plans).orElseThrow().laying();
    assertThat(new LayingRules(List.of(piece), nap).objections(laying)).isEmpty();
    return laying.length();
  }

  /**
   * School geometry: two parallelograms that lean alike lie side to side, 400 + 500 mm; one and its
   * mirror image touch at a corner only, 500 + 500 mm.
   */
  @Test
  void aPairThatLeansIsLaidLeaningOneWay() {
    assertThat(length(leaning(), ONE_WAY)).isCloseTo(1000, within(1.0));
    assertThat(length(leaning().onClothAlike(), ONE_WAY)).isCloseTo(900, within(1.0));
    assertThat(length(leaning().onClothAlike(), EITHER_WAY)).isCloseTo(900, within(1.0));
  }

  private static LaidPiece laid(
      ClothPiece piece, int copy, boolean down, boolean turned, double x) {
    ClothItem item = new ClothItem(piece, ClothItem.Layers.SINGLE, false, 2);
    double far = turned ? x + 500 : x;
    Motion motion =
        new Motion(turned ? -1 : 1, 0, down, new Vector(far, SETTINGS.selvedge() + 150));
    return new LaidPiece(item, copy, motion, true);
  }

  private static List<String> objections(ClothPiece piece, Fabric.Nap nap, LaidPiece... laid) {
    ClothLaying laying = ClothLaying.of(ClothSheet.flat(NARROW, SETTINGS), List.of(laid));
    return new LayingRules(List.of(piece), nap).objections(laying);
  }

  @Test
  void theRulesAllowTheFlipAndNothingElse() {
    ClothPiece right = leaning();
    assertThat(
            objections(
                right, ONE_WAY, laid(right, 1, false, false, 0), laid(right, 2, true, false, 500)))
        .isEmpty();
    for (boolean down : new boolean[] {false, true}) {
      assertThat(
              objections(
                  right, ONE_WAY, laid(right, 1, down, false, 0), laid(right, 2, down, false, 500)))
          .hasSize(1);
      ClothPiece alike = leaning().onClothAlike();
      LaidPiece first = laid(alike, 1, down, false, 0);
      assertThat(objections(alike, ONE_WAY, first, laid(alike, 2, down, false, 400))).isEmpty();
      assertThat(objections(alike, ONE_WAY, first, laid(alike, 2, !down, false, 500))).isEmpty();
      assertThat(objections(alike, ONE_WAY, first, laid(alike, 2, !down, false, 499)))
          .as("on one another")
          .hasSize(1);
      assertThat(objections(alike, ONE_WAY, first, laid(alike, 2, down, true, 500)))
          .containsExactly("a piece lies against the nap");
      assertThat(objections(alike, ONE_WAY, first)).as("one too few").hasSize(1);
      assertThat(
              objections(
                  alike,
                  ONE_WAY,
                  first,
                  laid(alike, 2, down, false, 500),
                  laid(alike, 3, down, false, 1000)))
          .as("one too many")
          .hasSize(1);
    }
  }

  @Test
  void whatIsCutRightSideUpHasNoSideToKeep() {
    ClothPiece piece =
        CutPiece.polygon("leaning", 0, 0, 300, 100, 300, 500, 0, 400)
            .pairs(2)
            .rightSideUp()
            .onCloth();
    double wide = 2 * NARROW;
    assertThat(ClothPlan.of(List.of(piece), Fold.LENGTHWISE, wide, SETTINGS, ONE_WAY)).isEmpty();
    ClothPiece alike = piece.onClothAlike();
    List<ClothPlan> plans = ClothPlan.of(List.of(alike), Fold.LENGTHWISE, wide, SETTINGS, ONE_WAY);
    ClothLaying laying =
        new PlanSearch(5_000, 1, new NoFitStore()).lay(plans).orElseThrow().laying();
    assertThat(laying.length()).isCloseTo(500, within(1.0));
    assertThat(new LayingRules(List.of(alike), ONE_WAY).objections(laying)).isEmpty();
  }

  private static Fabric.Repeat repeat(double along, double across, boolean uneven) {
    return new Fabric.Repeat(
        along > 0 ? OptionalDouble.of(along) : OptionalDouble.empty(),
        across > 0 ? OptionalDouble.of(across) : OptionalDouble.empty(),
        false,
        uneven,
        List.of("hem"));
  }

  private static Stream<SizeRun> runs() {
    Double[] widths = {700.0, 1120.0, 1500.0};
    return Stream.of(
        SmallRun.of(EITHER_WAY, widths),
        SmallRun.of(ONE_WAY, widths),
        SmallRun.striped(repeat(80, 0, false), widths),
        SmallRun.striped(repeat(0, 90, false), widths),
        SmallRun.striped(repeat(80, 90, true), widths));
  }

  private static SizeRun alike(SizeRun run) {
    return new SizeRun(
        run.pattern()
            .ofCloth(
                run.pattern().fabrics().stream()
                    .map(fabric -> fabric.with(Fabric.Trait.SIDES_ALIKE))
                    .toList()),
        run.sizes());
  }

  private static List<YardageRow> rows(SizeRun run, long work) {
    YardageRequest request =
        YardageRequest.everything().onWidths(List.of(700.0, 900.0, 1120.0, 1500.0)).working(work);
    return YardageTable.of(run, request, LayingStore.NONE, YardageTable.Watcher.SILENT).rows();
  }

  private static List<Object> cloth(YardageRow row) {
    return List.of(row.view().name(), row.nap(), row.size(), row.width(), row.fold());
  }

  @ParameterizedTest
  @MethodSource("runs")
  void neverMoreThanOnClothWithARightSide(SizeRun run) {
    List<String> more = new ArrayList<>();
    List<YardageRow> alike = rows(alike(run), 300);
    List<YardageRow> right = rows(run, 300);
    for (YardageRow row : right) {
      YardageRow other =
          alike.stream().filter(each -> cloth(each).equals(cloth(row))).findFirst().orElseThrow();
      double was = row.need().map(Need::length).orElse(Double.POSITIVE_INFINITY);
      double is = other.need().map(Need::length).orElse(Double.POSITIVE_INFINITY);
      if (is > was) {
        more.add(cloth(row) + ": " + was + ", " + is);
      }
      other
          .need()
          .ifPresent(
              need ->
                  assertThat(OwnLayings.objections(other, need.laying()))
                      .as("%s", cloth(row))
                      .isEmpty());
    }
    assertThat(more).isEmpty();
    assertThat(alike.size()).isGreaterThanOrEqualTo(right.size());
  }
}
