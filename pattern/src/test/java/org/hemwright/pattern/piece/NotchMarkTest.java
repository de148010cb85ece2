package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.straight;
import static org.hemwright.pattern.piece.PieceSketch.turned;

import java.util.List;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.NotchMark.Tick;
import org.junit.jupiter.api.Test;

/** Notches on the cut line: handbook section 1, Notches. */
class NotchMarkTest {
  @Test
  void aNotchStandsOnTheCutLineSquareToTheStitchLine() {
    List<NotchMark> marks = marks(panel(10));

    Tick tick = marks.get(0).ticks().get(0);
    assertThat(tick.at()).isEqualTo(new Point(210, 80));
    assertThat(tick.inward().dx()).isCloseTo(-1, within(1e-12));
    assertThat(tick.depth()).isEqualTo(4);
    assertThat(tick.tip().x()).isCloseTo(206, within(1e-12));
  }

  /** Handbook section 1: at most half of the allowance. */
  @Test
  void aNotchInANarrowAllowanceIsShallower() {
    assertThat(marks(panel(6)).get(0).ticks().get(0).depth()).isCloseTo(3, within(1e-9));
    assertThat(marks(panel(0)).get(0).ticks().get(0).depth()).isZero();
  }

  /** Single = front, double = back: common practice, no source. */
  @Test
  void aDoubleNotchHasTwoMarksAboutItsPlace() {
    List<Tick> ticks = marks(panel(10)).get(1).ticks();

    assertThat(ticks).hasSize(2);
    assertThat(ticks.get(0).at().y()).isCloseTo(197, within(1e-9));
    assertThat(ticks.get(1).at().y()).isCloseTo(203, within(1e-9));
  }

  @Test
  void aNotchOnATurnedBackHemStandsAtItsCutEdge() {
    Tick tick = marks(panel(10)).get(2).ticks().get(0);

    assertThat(tick.at().x()).isCloseTo(50, within(1e-9));
    assertThat(tick.at().y()).isCloseTo(-30, within(1e-9));
    assertThat(tick.inward().dy()).isCloseTo(1, within(1e-12));
  }

  /** On an arc the notch lies on the same radius at the stitch line and at the cut line. */
  @Test
  void aNotchOnACurveKeepsToItsRadius() {
    Piece fan =
        PieceSketch.named("fan")
            .edge(
                "arc",
                CircularArc.about(new Point(0, 0), new Point(100, 0), Math.PI / 2),
                plain(10))
            .edge("left", straight(0, 100, 0, 0), plain(0))
            .edge("lower", straight(0, 0, 100, 0), plain(0))
            .notch("arc", 100 * Math.PI / 6, Notch.Kind.SINGLE)
            .piece();

    Point at = marks(fan).get(0).ticks().get(0).at();

    assertThat(at.x()).isCloseTo(110 * StrictMath.cos(Math.PI / 6), within(0.005));
    assertThat(at.y()).isCloseTo(110 * StrictMath.sin(Math.PI / 6), within(0.005));
  }

  private static List<NotchMark> marks(Piece piece) {
    return NotchMark.on(piece, AddedAllowanceTest.cutLine(piece), NotchSize.USUAL);
  }

  private static Piece panel(double side) {
    return PieceSketch.named("panel")
        .edge("hem", straight(0, 0, 200, 0), turned(30.0))
        .edge("side", straight(200, 0, 200, 300), plain(side))
        .edge("top", straight(200, 300, 0, 300), plain(10))
        .edge("left", straight(0, 300, 0, 0), plain(10))
        .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
        .cornerBefore("side", new CornerFinish.TurnedBack("hem"))
        .notch("side", 80, Notch.Kind.SINGLE)
        .notch("side", 200, Notch.Kind.DOUBLE)
        .notch("hem", 50, Notch.Kind.SINGLE)
        .piece();
  }
}
