package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.straight;
import static org.hemwright.pattern.piece.PieceSketch.turned;

import java.util.List;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class FoldLineTest {
  /** The sides taper 10 degrees inward and have 1 cm: the fold lines reach their cut lines. */
  @Test
  void aHemTurnedTwiceHasTwoFoldLinesFromCutLineToCutLine() {
    double tan = StrictMath.tan(StrictMath.toRadians(10));
    double cos = StrictMath.cos(StrictMath.toRadians(10));
    double taper = 300 * tan;
    Piece leg =
        PieceSketch.named("leg")
            .edge("hem", straight(0, 0, 200, 0), turned(30.0, 10.0))
            .edge("inseam", straight(200, 0, 200 + taper, 300), plain(10))
            .edge("top", straight(200 + taper, 300, -taper, 300), plain(10))
            .edge("outseam", straight(-taper, 300, 0, 0), plain(10))
            .cornerBefore("hem", new CornerFinish.TurnedBack("hem"))
            .cornerBefore("inseam", new CornerFinish.TurnedBack("hem"))
            .piece();

    List<FoldLine> lines = FoldLine.of(leg, AddedAllowanceTest.cutLine(leg));

    assertThat(lines).extracting(FoldLine::edge).containsExactly("hem", "hem");
    assertThat(lines).extracting(FoldLine::turn).containsExactly(1, 2);
    assertRunsFrom(lines.get(0), -10 / cos, 0, 200 + 10 / cos);
    assertRunsFrom(lines.get(1), -10 / cos - 30 * tan, -30, 200 + 10 / cos + 30 * tan);
  }

  @Test
  void aHemThatEndsOnTheFoldHasOneLineAcrossTheOpenedPiece() {
    Piece half =
        PieceSketch.named("half")
            .edge("hem", straight(0, 0, 200, 0), turned(30.0))
            .edge("side", straight(200, 0, 200, 300), plain(10))
            .edge("top", straight(200, 300, 0, 300), turned(20.0))
            .fold("centre", straight(0, 300, 0, 0))
            .cornerBefore("side", new CornerFinish.TurnedBack("hem"))
            .cornerBefore("top", new CornerFinish.TurnedBack("top"))
            .piece();
    List<FoldLine> drawn = FoldLine.of(half, AddedAllowanceTest.cutLine(half));

    List<FoldLine> whole = OpenedPiece.of(half).foldLines(drawn);

    assertThat(whole).hasSize(2);
    assertRunsFrom(whole.get(0), -210, 0, 210);
    assertRunsFrom(whole.get(1), 210, 300, -210);
  }

  @Test
  void aPieceWithoutHemsHasNone() {
    Piece plain =
        PieceSketch.polygon(plain(10), new Point(0, 0), new Point(100, 0), new Point(0, 100))
            .piece();

    assertThat(FoldLine.of(plain, AddedAllowanceTest.cutLine(plain))).isEmpty();
  }

  private static void assertRunsFrom(FoldLine line, double fromX, double y, double toX) {
    assertThat(line.path().start().x()).isCloseTo(fromX, within(1e-6));
    assertThat(line.path().end().x()).isCloseTo(toX, within(1e-6));
    assertThat(line.path().start().y()).isCloseTo(y, within(1e-6));
    assertThat(line.path().end().y()).isCloseTo(y, within(1e-6));
    assertThat(line.path().length()).isCloseTo(Math.abs(toX - fromX), within(1e-6));
  }
}
