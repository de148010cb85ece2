package org.hemwright.pattern.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.piece.PieceSketch.ORIGIN;
import static org.hemwright.pattern.piece.PieceSketch.plain;
import static org.hemwright.pattern.piece.PieceSketch.straight;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;

class OpenedPieceTest {
  /**
   * Handbook section 10, check 10: full circle skirt, waist 70 cm (radius 11.14), length 50 cm,
   * waist allowance 1 cm, hem 1.5 cm; drawn as a half disc on the fold.
   */
  @Test
  void aCircleSkirtOpensToAWholeDisc() {
    double waist = 700 / (2 * Math.PI);
    double hem = waist + 500;
    Point centre = new Point(0, 0);
    Piece half =
        PieceSketch.named("skirt")
            .edge("hem", CircularArc.about(centre, new Point(0, -hem), Math.PI), plain(15))
            .fold("upper_fold", straight(0, hem, 0, waist))
            .edge("waist", CircularArc.about(centre, new Point(0, waist), -Math.PI), plain(10))
            .edge("lower", straight(0, -waist, 0, -hem), plain(0))
            .piece();

    CutLine cut = AddedAllowanceTest.cutLine(half);
    CutLine whole = OpenedPiece.of(half).cutLine(cut);

    Box box = whole.outline().bounds();
    assertThat(box.height()).isCloseTo(1252.8, within(0.05));
    assertThat(box.width()).isCloseTo(1252.8, within(0.05));
    for (Point point : cut.edges().get(2).flattened(0.01)) {
      assertThat(point.distanceTo(centre)).isCloseTo(101.4, within(0.02));
    }
    for (Point point : cut.edges().get(0).flattened(0.01)) {
      assertThat(point.distanceTo(centre)).isCloseTo(626.4, within(0.02));
    }
  }

  @Test
  void aHalfOpensOverItsFoldAndKeepsItsEdgeNames() {
    Piece half = halfFront();

    OpenedPiece opened = OpenedPiece.of(half);

    assertThat(opened.edges().stream().map(e -> e.edge().name() + (e.mirrored() ? "'" : "")))
        .containsExactly("hem", "side", "neck", "neck'", "side'", "hem'");
    assertThat(opened.stitchLine().signedArea())
        .isCloseTo(2 * half.stitchLine().signedArea(), within(1e-6));
    CutLine cut = AddedAllowanceTest.cutLine(half);
    CutLine whole = opened.cutLine(cut);
    assertThat(whole.outline().signedArea())
        .isCloseTo(2 * cut.outline().signedArea(), within(1e-6));
    assertThat(whole.outline().crossings()).isEmpty();
    assertThat(whole.edges()).hasSameSizeAs(opened.edges());
    for (int i = 0; i < whole.edges().size(); i++) {
      Path stretch = whole.edges().get(i);
      double width = opened.edges().get(i).edge().allowance().width();
      Path stitch = opened.edges().get(i).edge().path();
      Point middle = stitch.at(stitch.length() / 2).point();
      assertThat(stretch.nearest(middle).point().distanceTo(middle)).isCloseTo(width, within(0.01));
    }
  }

  @Test
  void notchesAndMarksStandOnBothHalves() {
    Piece half = halfFront();
    OpenedPiece opened = OpenedPiece.of(half);
    List<NotchMark> marks =
        opened.notchMarks(NotchMark.on(half, AddedAllowanceTest.cutLine(half), NotchSize.USUAL));

    assertThat(marks).hasSize(3);
    NotchMark drawn = marks.get(0);
    NotchMark other = marks.get(2);
    assertThat(other.notch().distance())
        .isCloseTo(half.edges().get(0).path().length() - drawn.notch().distance(), within(1e-9));
    assertThat(other.ticks().get(0).at().x())
        .isCloseTo(-drawn.ticks().get(1).at().x(), within(1e-9));
    assertThat(opened.marks().stream().filter(Mark.Drill.class::isInstance)).hasSize(3);
    assertThat(opened.marks().stream().filter(Mark.Label.class::isInstance)).hasSize(1);
  }

  @Test
  void aNotchOnTheFoldIsToldOnceWithItsMarksOnBothHalves() {
    PieceSketch sketch =
        PieceSketch.named("back")
            .edge("hem", straight(0, 0, 200, 0), plain(10))
            .edge("side", straight(200, 0, 200, 300), plain(10))
            .edge("neck", straight(200, 300, 0, 300), plain(10))
            .fold("centre", straight(0, 300, 0, 0));
    Piece half =
        sketch
            .notch("neck", 200, Notch.Kind.SINGLE)
            .notch("hem", 0, Notch.Kind.DOUBLE)
            .notch("side", 0, Notch.Kind.DOUBLE)
            .piece();

    List<NotchMark> marks =
        OpenedPiece.of(half)
            .notchMarks(NotchMark.on(half, AddedAllowanceTest.cutLine(half), NotchSize.USUAL));

    assertThat(marks).hasSize(4);
    assertThat(marks.get(0).ticks()).extracting(tick -> tick.at().x()).containsExactly(0.0);
    assertThat(marks.get(1).ticks()).extracting(tick -> tick.at().x()).containsExactly(3.0, -3.0);
    assertThat(marks.get(2).ticks()).extracting(tick -> tick.at().y()).containsExactly(0.0, 6.0);
    assertThat(marks.get(3).ticks()).extracting(tick -> tick.at().y()).containsExactly(6.0, 0.0);
  }

  @Test
  void aWholePieceOpensToItself() {
    Piece square =
        PieceSketch.polygon(
                plain(10), new Point(0, 0), new Point(100, 0), new Point(100, 50), new Point(0, 50))
            .piece();
    OpenedPiece opened = OpenedPiece.of(square);
    CutLine cut = AddedAllowanceTest.cutLine(square);

    assertThat(opened.stitchLine()).isEqualTo(square.stitchLine());
    assertThat(opened.cutLine(cut)).isEqualTo(cut);
    assertThat(opened.edges()).hasSize(4).noneMatch(OpenedEdge::mirrored);
  }

  private static Piece halfFront() {
    return PieceSketch.named("front")
        .edge("side", straight(250, 0, 230, 500), plain(15))
        .edge("neck", straight(230, 500, 0, 450), plain(6))
        .fold("centre", straight(0, 450, 0, 0))
        .edge("hem", straight(0, 0, 250, 0), plain(20))
        .notch("side", 200, Notch.Kind.DOUBLE)
        .notch("centre", 100, Notch.Kind.SINGLE)
        .mark(new Mark.Drill("dart", new Point(80, 300), Optional.empty(), ORIGIN))
        .mark(new Mark.Drill("middle", new Point(0, 300), Optional.empty(), ORIGIN))
        .mark(new Mark.Label("Front", new Point(100, 200), ORIGIN))
        .piece();
  }
}
