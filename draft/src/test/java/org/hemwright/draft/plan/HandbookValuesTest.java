package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The check values of the trade handbook, section 10, that a document can express, each as a small
 * document. The handbook gives centimetres to two or three places; the number of each value stands
 * beside its test.
 */
class HandbookValuesTest {
  /** Half of the last place that the handbook gives (mm). */
  private static final double HUNDREDTH_CM = 0.05;

  private static final double THOUSANDTH_CM = 0.005;

  private static CutLine cutLine(Piece piece) {
    return AddedAllowance.to(piece).cutLine().orElseThrow();
  }

  private static Path path(Piece piece, String edge) {
    return piece.edge(edge).map(Edge::path).orElseThrow();
  }

  /** 7: neckline 52 cm, ratio 0.85, allowance 1 cm each end: finished 44.2, cut 46.2 cm. */
  @Test
  void neckbandFinishedAndCut() {
    Sketch sketch =
        Sketch.of(
            """
            let neckline = 52 cm
            piece neckband "Neckband" number 1
              cut 1 of main
              rectangle 85% of neckline by 4 cm, edges lower, end_right, upper, end_left
              allowance 1 cm
            """);
    Piece band = sketch.piece("14", "neckband");
    assertThat(path(band, "lower").length()).isCloseTo(442, within(1e-9));
    assertThat(cutLine(band).outline().bounds().width()).isCloseTo(462, within(1e-6));
  }

  private static Piece skirt(String share) {
    Sketch sketch =
        Sketch.of(
            """
            let around = 70 cm
            let radius = around / (2 * pi * %1$s)
            piece panel "Skirt" number 1
              cut 1 of main
              point apex at 0 cm, 0 cm
              point waist_start from apex right radius
              point hem_start from waist_start right 50 cm
              arc waist_line about apex from waist_start turning %1$s * 90 deg
              arc hem_line about apex from hem_start turning %1$s * 90 deg
              outline waist is waist_line, end is straight, hem is hem_line, fold_edge is straight
              allowance waist 1 cm, hem 1.5 cm, end none, fold_edge none
            """
                .formatted(share));
    assertThat(sketch.codes()).isEmpty();
    return sketch.piece("14", "panel");
  }

  /** 8: circle skirt, waist 70 cm: full; 3/4; half; quarter: r = 11.14; 14.85; 22.28; 44.56 cm. */
  @ParameterizedTest
  @CsvSource({"1, 111.4", "3/4, 148.5", "1/2, 222.8", "1/4, 445.6"})
  void circleSkirtRadii(String share, double radius) {
    Piece panel = skirt(share);
    Path waist = path(panel, "waist");
    assertThat(waist.start().distanceTo(Point.ORIGIN)).isCloseTo(radius, within(HUNDREDTH_CM));
    // A quarter of the waist, whatever the share of the circle.
    assertThat(waist.length()).isCloseTo(175, within(0.001));
  }

  /** 9: waist 70 cm full circle, length 50 cm: hem line 384.16 cm; r + length 61.14. */
  @Test
  void circleSkirtHem() {
    Path hem = path(skirt("1"), "hem");
    assertThat(4 * hem.length()).isCloseTo(3841.6, within(HUNDREDTH_CM));
    assertThat(hem.start().distanceTo(Point.ORIGIN)).isCloseTo(611.4, within(HUNDREDTH_CM));
  }

  /** 10: same, waist allowance 1 cm, hem 1.5 cm: cut radii 10.14 and 62.64; 125.28 cm wide. */
  @Test
  void circleSkirtCutRadii() {
    CutLine cut = cutLine(skirt("1"));
    Box box = cut.outline().bounds();
    assertThat(box.maxX()).isCloseTo(626.4, within(HUNDREDTH_CM));
    assertThat(2 * box.maxX()).isCloseTo(1252.8, within(2 * HUNDREDTH_CM));
    double nearest = cut.outline().path().nearest(Point.ORIGIN).point().distanceTo(Point.ORIGIN);
    assertThat(nearest).isCloseTo(101.4, within(HUNDREDTH_CM));
  }

  /** 13: seam (0,0) to (-3,-70) cm lengthened 5, re-trued straight: 70.064 becomes 75.060 cm. */
  @Test
  void aSlantedSeamLengthened() {
    Sketch sketch =
        Sketch.inPiece(
            """
            point top at 0 cm, 0 cm
            point foot at -3 cm, -70 cm
            point longer from foot down 5 cm
            line seam from top to foot
            line trued from top to longer
            let before = length of seam
            let after = length of trued
            """);
    assertThat(sketch.number("before")).isCloseTo(700.64, within(THOUSANDTH_CM));
    assertThat(sketch.number("after")).isCloseTo(750.60, within(THOUSANDTH_CM));
  }

  /** 16: quarter arc radius 10, allowance 1: seam 15.708; convex cut 17.279; concave 14.137. */
  @Test
  void allowancesOfAnArc() {
    Sketch sketch =
        Sketch.inPiece(
            """
            point middle at 0 cm, 0 cm
            point start at 10 cm, 0 cm
            arc seam about middle from start turning 90 deg
            let along = length of seam
            let outside = length of seam offset 1 cm right
            let inside = length of seam offset 1 cm left
            """);
    assertThat(sketch.number("along")).isCloseTo(157.08, within(THOUSANDTH_CM));
    assertThat(sketch.number("outside")).isCloseTo(172.79, within(THOUSANDTH_CM));
    assertThat(sketch.number("inside")).isCloseTo(141.37, within(THOUSANDTH_CM));
  }

  /** 18: armhole 46.0, cap 48.5 cm: ease 2.5 cm, 5.43 %. */
  @Test
  void capEase() {
    Sketch sketch =
        Sketch.of(
            """
            let armhole = 46.0 cm
            let cap = 48.5 cm
            let ease = cap - armhole
            let share = ease / armhole
            """);
    assertThat(sketch.number("14", "ease")).isCloseTo(25, within(1e-9));
    assertThat(sketch.number("14", "share")).isCloseTo(0.0543, within(0.00005));
  }

  /** 19: girth grade 1 in; 2 in; 4 cm; 5 cm: quarter 1/4 in; 1/2 in; 1 cm; 1.25 cm. */
  @ParameterizedTest
  @CsvSource({"1 in, 6.35", "2 in, 12.7", "4 cm, 10", "5 cm, 12.5"})
  void aQuarterOfTheGrade(String grade, double quarter) {
    Sketch sketch =
        Sketch.of(
            """
            let girth = 90 cm, then 90 cm + %s from size 10
            piece panel "Panel" number 1
              cut 2 of main, on the fold
              rectangle girth / 4 by 20 cm, edges hem, side, waist, centre
              fold centre
            """
                .formatted(grade));
    double small = path(sketch.piece("8", "panel"), "hem").length();
    double large = path(sketch.piece("10", "panel"), "hem").length();
    assertThat(large - small).isCloseTo(quarter, within(1e-9));
  }

  /** 24: folded band, elastic 30, clearance 3, allowance 6 mm: cut width 78 mm. */
  @Test
  void foldedBand() {
    Sketch sketch =
        Sketch.of(
            """
            let elastic_width = 30 mm
            piece band "Band" number 1
              cut 1 of main
              rectangle 64 cm by 2 * (elastic_width + 3 mm), edges lower, right, upper, left
              allowance 6 mm
              notch lower at quarters
            """);
    Piece band = sketch.piece("14", "band");
    assertThat(cutLine(band).outline().bounds().height()).isCloseTo(78, within(1e-6));
  }

  /** 25: loop 64 cm, quarter marks: 0, 16, 32, 48 cm; the first is the joint itself. */
  @Test
  void quarterMarks() {
    Sketch sketch =
        Sketch.of(
            """
            piece band "Band" number 1
              cut 1 of main
              rectangle 64 cm by 8 cm, edges lower, right, upper, left
              notch lower at quarters
            """);
    List<Double> marks =
        sketch.piece("14", "band").notches().stream().map(Notch::distance).toList();
    assertThat(marks).containsExactly(160.0, 320.0, 480.0);
  }
}
