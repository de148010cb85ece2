package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.polygon;
import static org.hemwright.pattern.piece.PieceSketch.straight;
import static org.hemwright.pattern.piece.PieceSketch.turned;

import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cut lines against the geometry of the trade handbook, section 10 (mark G). */
class AddedAllowanceTest {
  private static final double SIDE = 200;

  static CutLine cutLine(Piece piece) {
    AddedAllowance added = AddedAllowance.to(piece);
    assertThat(added.findings()).isEmpty();
    return added.cutLine().orElseThrow();
  }

  /** Handbook section 10, check 14: 1 cm round a corner of 90, 60 and 30 degrees. */
  @ParameterizedTest
  @CsvSource({"90, 14.142", "60, 20.000", "30, 38.637"})
  void aMitreReachesAsFarAsItsAngleSays(double degrees, double reach) {
    Point apex = new Point(0, 0);
    Piece wedge = wedge(degrees, new CornerFinish.Mitred(10), apex);

    double farthest =
        cutLine(wedge)
            .outline()
            .path()
            .nearest(new Point(-1000, -1000 * tanHalf(degrees)))
            .point()
            .distanceTo(apex);

    assertThat(farthest).isCloseTo(reach, within(0.001));
  }

  /** Handbook section 10, check 14: capped at 2.5 times the allowance. */
  @Test
  void aLongMitreIsCutShortSquareToItsAxis() {
    Point apex = new Point(0, 0);
    Point axis = new Point(-1000, -1000 * tanHalf(30));
    CutLine cut = cutLine(wedge(30, new CornerFinish.Mitred(2.5), apex));

    Point onAxis = cut.outline().path().meetings(Path.straight(apex, axis)).get(0).point();

    assertThat(onAxis.distanceTo(apex)).isCloseTo(25, within(0.001));
    assertThat(cut.edges().get(0).start().distanceTo(onAxis))
        .isCloseTo(cut.edges().get(2).end().distanceTo(onAxis), within(0.001));
  }

  private static double tanHalf(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees / 2));
  }

  /** A triangle with its apex at a point, one side along x, 1 cm allowance. */
  private static Piece wedge(double degrees, CornerFinish finish, Point apex) {
    double angle = StrictMath.toRadians(degrees);
    Point along = new Point(SIDE, 0);
    Point up = new Point(SIDE * StrictMath.cos(angle), SIDE * StrictMath.sin(angle));
    return polygon(plain(10), apex, along, up).cornerBefore("e0", finish).piece();
  }

  /** Handbook section 10, check 15: a leg tapers 10 degrees inward, hem 3 cm. */
  @Test
  void aTurnedBackHemOnATaperedLegEndsOutsideItsFoldLine() {
    double taper = 300 * StrictMath.tan(StrictMath.toRadians(10));
    Piece leg =
        PieceSketch.named("leg")
            .edge("hem", straight(0, 0, 200, 0), turned(30.0))
            .edge("inseam", straight(200, 0, 200 + taper, 300), plain(0))
            .edge("top", straight(200 + taper, 300, -taper, 300), plain(10))
            .edge("outseam", straight(-taper, 300, 0, 0), plain(0))
            .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
            .cornerBefore("inseam", new CornerFinish.TurnedBack("hem"))
            .piece();

    Path cutHem = cutLine(leg).edges().get(0);

    assertThat(cutHem.start().x()).isCloseTo(-5.290, within(0.001));
    assertThat(cutHem.end().x()).isCloseTo(205.290, within(0.001));
    assertThat(cutHem.start().y()).isCloseTo(-30, within(1e-9));
  }

  /** Handbook section 10, check 16: a quarter arc of 10 cm, allowance 1 cm, bulging outward. */
  @Test
  void aConvexEdgeHasALongerCutLine() {
    Path arc = CircularArc.about(new Point(0, 0), new Point(100, 0), Math.PI / 2);
    Piece quarter =
        PieceSketch.named("quarter")
            .edge("arc", arc, plain(10))
            .edge("left", straight(0, 100, 0, 0), plain(0))
            .edge("lower", straight(0, 0, 100, 0), plain(0))
            .piece();

    CutLine cut = cutLine(quarter);

    assertThat(arc.length()).isCloseTo(157.080, within(0.001));
    assertThat(cut.edges().get(0).length()).isCloseTo(172.788, within(0.002));
  }

  /** Handbook section 10, check 16: the same arc hollowed out of a square. */
  @Test
  void aConcaveEdgeHasAShorterCutLine() {
    Path arc = CircularArc.about(new Point(0, 0), new Point(0, 100), -Math.PI / 2);
    Piece square =
        PieceSketch.named("square")
            .edge("arc", arc, plain(10))
            .edge("lower", straight(100, 0, 200, 0), plain(0))
            .edge("right", straight(200, 0, 200, 200), plain(0))
            .edge("upper", straight(200, 200, 0, 200), plain(0))
            .edge("left", straight(0, 200, 0, 100), plain(0))
            .piece();

    assertThat(cutLine(square).edges().get(0).length()).isCloseTo(141.372, within(0.002));
  }

  /**
   * Square: the shoulder's stitch line, run on to the neckline's cut line, ends there; its
   * allowance ends square to it (handbook section 3). Both partners of a shoulder seam then end
   * alike, however their necklines slant.
   */
  @ParameterizedTest
  @CsvSource({"60", "85", "90", "95", "120"})
  void aSquareCornerEndsTheSeamSewnFirstAlikeOnBothPartners(double degrees) {
    CutLine cut = cutLine(wedge(degrees, new CornerFinish.Square("e0"), new Point(0, 0)));
    double runOn = 10 / StrictMath.sin(StrictMath.toRadians(degrees));

    Point end = cut.edges().get(0).start();
    Point foot = cut.edges().get(2).end();

    assertThat(foot.x()).isCloseTo(-runOn, within(1e-6));
    assertThat(foot.y()).isCloseTo(0, within(1e-6));
    assertThat(end.x()).isCloseTo(-runOn, within(1e-6));
    assertThat(end.y()).isCloseTo(-10, within(1e-6));
  }

  /** Handbook section 3, Stepped: a change of width where the edge runs on. */
  @Test
  void aWidthThatChangesOnAStraightSideMakesASquareStep() {
    Piece vent =
        PieceSketch.named("vent")
            .edge("lower", straight(0, 0, 200, 0), plain(10))
            .edge("vent", straight(200, 0, 200, 100), plain(40))
            .edge("seam", straight(200, 100, 200, 300), plain(15))
            .edge("upper", straight(200, 300, 0, 300), plain(10))
            .edge("left", straight(0, 300, 0, 0), plain(10))
            .cornerBefore("seam", new CornerFinish.Stepped())
            .piece();

    CutLine cut = cutLine(vent);

    assertThat(cut.edges().get(1).end()).isEqualTo(new Point(240, 100));
    assertThat(cut.edges().get(2).start()).isEqualTo(new Point(215, 100));
    assertThat(cut.outline().signedArea()).isCloseTo(225.0 * 320 + 25 * 110, within(1e-6));
  }

  /** Handbook section 3, internal corner: the cut lines are trimmed to their crossing. */
  @Test
  void anInternalCornerIsTrimmedToTheCrossing() {
    Piece ell =
        polygon(
                plain(10),
                new Point(0, 0),
                new Point(200, 0),
                new Point(200, 100),
                new Point(100, 100),
                new Point(100, 200),
                new Point(0, 200))
            .piece();

    CutLine cut = cutLine(ell);

    assertThat(cut.edges().get(2).end()).isEqualTo(new Point(110, 110));
    assertThat(cut.edges().get(3).start()).isEqualTo(new Point(110, 110));
    assertThat(cut.outline().signedArea()).isCloseTo(220 * 120 + 120 * 100, within(1e-6));
  }

  /** Handbook section 3, Validate: an allowance wider than an inward curve has room for. */
  @Test
  void aCurveTighterThanItsAllowanceIsTrimmedAndToldOf() {
    Path notch =
        straight(200, 150, 105, 55)
            .then(CircularArc.about(new Point(100, 60), new Point(105, 55), -Math.PI / 2))
            .then(straight(95, 55, 0, 150));
    Piece yoke =
        PieceSketch.named("yoke")
            .edge("lower", straight(0, 0, 200, 0), plain(10))
            .edge("right", straight(200, 0, 200, 150), plain(10))
            .edge("vee", notch, plain(15))
            .edge("left", straight(0, 150, 0, 0), plain(10))
            .piece();

    AddedAllowance added = AddedAllowance.to(yoke);

    assertThat(added.findings())
        .extracting(finding -> finding.code() + " " + finding.subject())
        .containsExactly("allowance-wider-than-curve yoke.vee");
    assertThat(added.findings().get(0).found().getAsDouble())
        .isCloseTo(5 * Math.sqrt(2), within(0.01));
    Path cut = added.cutLine().orElseThrow().edges().get(2);
    Point lowest = cut.nearest(new Point(100, 0)).point();
    assertThat(lowest.x()).isCloseTo(100, within(0.001));
    assertThat(lowest.y()).isCloseTo(50 + 15 * Math.sqrt(2), within(0.001));
    assertThat(added.cutLine().orElseThrow().outline().crossings()).isEmpty();
  }

  @Test
  void aSlitNarrowerThanItsAllowancesHasNoCutLine() {
    Piece slit =
        polygon(
                plain(10),
                new Point(0, 0),
                new Point(200, 0),
                new Point(200, 150),
                new Point(104, 150),
                new Point(100, 60),
                new Point(96, 150),
                new Point(0, 150))
            .piece();

    AddedAllowance added = AddedAllowance.to(slit);

    assertThat(added.cutLine()).isEmpty();
    assertThat(added.findings())
        .extracting(Finding::code)
        .containsExactly("allowance-without-room");
    assertThat(Wording.of(Wording.patternMessages()).message(added.findings().get(0)))
        .isEqualTo(
            "\u201ce3\u201d of \u201cpolygon\u201d is 90.1 mm long, and the allowance of 10 mm where it"
                + " meets \u201ce4\u201d takes all the room beside it.");
  }

  /** A pointed hem on the fold: the mitre across the fold is capped like any other. */
  @Test
  void aSharpPointOnTheFoldIsCutShortSquareToTheFold() {
    double depth = 200;
    Piece point =
        PieceSketch.named("point")
            .edge("hem", straight(0, -depth, 60, 0), plain(10))
            .edge("side", straight(60, 0, 60, 100), plain(10))
            .edge("top", straight(60, 100, 0, 100), plain(10))
            .fold("centre", straight(0, 100, 0, -depth))
            .piece();

    CutLine cut = cutLine(point);

    assertThat(cut.edges().get(3).end().y()).isCloseTo(-depth - 25, within(1e-9));
    assertThat(cut.edges().get(0).start().y()).isCloseTo(-depth - 25, within(1e-9));
    assertThat(cut.edges().get(3).end().x()).isCloseTo(0, within(1e-9));
  }

  @Test
  void aTurnUnderDeeperThanItsHemIsTold() {
    Piece hem =
        PieceSketch.named("sleeve")
            .edge("hem", straight(0, 0, 200, 0), turned(10.0, 20.0))
            .edge("right", straight(200, 0, 200, 100), plain(10))
            .edge("top", straight(200, 100, 0, 100), plain(10))
            .edge("left", straight(0, 100, 0, 0), plain(10))
            .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
            .piece();

    AddedAllowance added = AddedAllowance.to(hem);

    assertThat(added.cutLine()).isEmpty();
    assertThat(added.findings())
        .extracting(Finding::code)
        .containsExactly("turn-under-deeper-than-hem");
  }
}
