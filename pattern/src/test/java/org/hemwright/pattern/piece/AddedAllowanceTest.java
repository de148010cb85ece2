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
}
