package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.polygon;
import static org.hemwright.pattern.piece.PieceSketch.straight;

import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class RectanglePieceTest {
  /** Handbook section 10, check 24: folded band for elastic 30, clearance 3, allowance 6 mm. */
  @Test
  void aFoldedBandIsCutTwiceItsFinishedWidthAndTwoAllowances() {
    double depth = 2 * (30 + 3);
    Piece band = polygon(plain(6), p(0, 0), p(700, 0), p(700, depth), p(0, depth)).piece();

    RectanglePiece rectangle = rectangle(band);

    assertThat(rectangle.height()).isCloseTo(78, within(1e-9));
    assertThat(rectangle.width()).isCloseTo(712, within(1e-9));
    assertThat(rectangle.grain()).isEmpty();
  }

  @Test
  void aBandDrawnAsAHalfIsMeasuredWhole() {
    Piece half =
        PieceSketch.named("band")
            .edge("lower", straight(0, 0, 350, 0), plain(6))
            .edge("end", straight(350, 0, 350, 66), plain(10))
            .edge("upper", straight(350, 66, 0, 66), plain(6))
            .fold("centre", straight(0, 66, 0, 0))
            .grain(p(10, 50), p(10, 10))
            .piece();

    RectanglePiece rectangle = rectangle(half);

    assertThat(rectangle.width()).isCloseTo(720, within(1e-9));
    assertThat(rectangle.height()).isCloseTo(78, within(1e-9));
    assertThat(rectangle.grain().orElseThrow()).isCloseTo(Math.PI / 2, within(1e-9));
  }

  @Test
  void aTurnedRectangleIsOneTooAndItsGrainIsCountedFromItsWidth() {
    Piece bias =
        polygon(plain(5), p(0, 0), p(300, 400), p(268, 424), p(-32, 376))
            .grain(p(50, 100), p(80, 140))
            .piece();
    // (300, 400) is 500 mm along 3:4, (-32, 24) is 40 mm square to it
    Piece square =
        polygon(plain(5), p(0, 0), p(300, 400), p(268, 424), p(-32, 24))
            .grain(p(50, 100), p(80, 140))
            .piece();

    assertThat(RectanglePiece.of(bias, AddedAllowanceTest.cutLine(bias))).isEmpty();
    RectanglePiece rectangle = rectangle(square);
    assertThat(rectangle.width()).isCloseTo(510, within(1e-9));
    assertThat(rectangle.height()).isCloseTo(50, within(1e-9));
    assertThat(rectangle.grain().orElseThrow()).isCloseTo(0, within(1e-9));
  }

  @Test
  void roundedAndSlantedPiecesAreNone() {
    Piece slanted = polygon(plain(5), p(0, 0), p(100, 0), p(100.5, 50), p(0, 50)).piece();
    Piece rounded =
        PieceSketch.named("pocket")
            .edge("lower", straight(0, 0, 98, 0), plain(0))
            .edge("round", CircularArc.about(p(98, 2), p(98, 0), Math.PI / 2), plain(0))
            .edge("right", straight(100, 2, 100, 80), plain(0))
            .edge("upper", straight(100, 80, 0, 80), plain(0))
            .edge("left", straight(0, 80, 0, 0), plain(0))
            .piece();

    assertThat(RectanglePiece.of(slanted, AddedAllowanceTest.cutLine(slanted))).isEmpty();
    assertThat(RectanglePiece.of(rounded, AddedAllowanceTest.cutLine(rounded))).isEmpty();
  }

  private static RectanglePiece rectangle(Piece piece) {
    return RectanglePiece.of(piece, AddedAllowanceTest.cutLine(piece)).orElseThrow();
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
