package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines, allowances, corners, notches, grain and marks as the document says them. */
class PiecesEvaluatedTest {
  private static final String POINTS =
      """
      piece kite "Kite" number 1
        cut 2 of main, mirrored
        point a at 0 cm, 0 cm
        point b at 20 cm, 0 cm
        point c at 22 cm, 30 cm
        point d at 0 cm, 30 cm
      """;

  private static final String OUTLINE =
      "  outline low is a to b, right is b to c, top is c to d, left is d to a\n";

  private static Piece kite(String lines) {
    Sketch sketch = Sketch.of(POINTS + lines);
    assertThat(sketch.codes()).isEmpty();
    return sketch.piece("14", "kite");
  }

  private static Path path(Piece piece, String edge) {
    return piece.edge(edge).map(Edge::path).orElseThrow();
  }

  /** Named either way round, drawn either way along, with straight stretches or without. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "low is a to b, right is b to c, top is c to d, left is d to a",
        "low is b to a, right is c to b, top is d to c, left is a to d",
        "low is a to b, left is d to a, top is c to d, right is b to c",
        "low is b to a, left is d to a, top is d to c, right is b to c",
        "low is straight, right is b to c, top is straight, left is d to a",
        "low is straight, left is a to d, top is straight, right is b to c",
        "low is a to b then straight, right is c to midright, top is straight, left is d to a",
        "low is a to b, right is straight then midright to c, top is straight, left is d to a"
      })
  void outlinesAreTurnedUntilTheyJoin(String edges) {
    Piece piece = kite("  point midright midway from b to c\n  outline " + edges + "\n");
    assertThat(piece.stitchLine().isCounterClockwise()).isTrue();
    assertThat(piece.stitchLine().signedArea()).isCloseTo(63_000, within(1e-6));
    assertThat(piece.edges().get(0).name()).isEqualTo("low");
    for (int i = 0; i < 4; i++) {
      Edge edge = piece.edges().get(i);
      Edge next = piece.edges().get((i + 1) % 4);
      assertThat(edge.path().end()).isEqualTo(next.path().start());
      Corner corner = piece.corners().get(i);
      assertThat(corner.after()).isEqualTo(edge.name());
      assertThat(corner.point()).isEqualTo(edge.path().start());
    }
  }

  @Test
  void anEdgeSaysWhetherItRunsAgainstTheDesignersDrawing() {
    Piece piece = kite("  outline low is b to a, left is d to a, top is d to c, right is b to c\n");
    assertThat(piece.edges().stream().map(edge -> edge.name() + " " + edge.reversed()).toList())
        .containsExactly("low true", "right false", "top true", "left false");
  }

  @Test
  void anEdgeMayBearTheNameOfItsLine() {
    Piece piece = kite("  line low from a to b\n" + OUTLINE.replace("low is a to b", "low is low"));
    assertThat(path(piece, "low").length()).isCloseTo(200, within(1e-9));
  }

  @Test
  void rectanglesStandOnTheOrigin() {
    Sketch sketch =
        Sketch.of(
            """
            piece band "Band" number 1
              cut 1 of main
              rectangle waist by 8 cm, edges low, right, top, left
              notch low at 10 cm from start
              notch top at 10 cm from start
              notch left at 2 cm from start
            """);
    Piece band = sketch.piece("14", "band");
    assertThat(path(band, "low").end()).isEqualTo(new Point(780, 0));
    assertThat(path(band, "top").start()).isEqualTo(new Point(780, 80));
    assertThat(band.notches().stream().map(Notch::distance).toList())
        .containsExactly(100.0, 680.0, 60.0);
  }

  @Test
  void notchesCountFromTheDesignersStart() {
    Piece piece =
        kite(
            """
              outline low is b to a, right is b to c, top is c to d, left is d to a
              notch low at 5 cm from start
              double notch low at 25% from end as zip
              notch right at c
              notch top at thirds
              notch left at 10 cm from start when hip > 200 cm
              notch left at 20 cm from start in sizes 8 to 12
            """);
    assertThat(
            piece.notches().stream()
                .map(notch -> notch.edge() + " " + Math.round(notch.distance()))
                .toList())
        .containsExactly("low 150", "low 50", "right 301", "top 73", "top 147");
    assertThat(piece.notches().get(1).kind()).isEqualTo(Notch.Kind.DOUBLE);
    assertThat(piece.notches().get(1).name()).contains("zip");
  }

  @Test
  void allowancesAndCornersHaveTheirDefaults() {
    Piece piece =
        kite(
            OUTLINE
                + """
                    allowance 1 cm, low 2.5 cm turned back, top 3 cm then 1 cm turned back, right none
                    corner right and top square to top
                  """);
    assertThat(piece.edge("low").orElseThrow().allowance())
        .isEqualTo(new Allowance.TurnedBack(List.of(25.0)));
    assertThat(piece.edge("top").orElseThrow().allowance())
        .isEqualTo(new Allowance.TurnedBack(List.of(30.0, 10.0)));
    assertThat(piece.edge("right").orElseThrow().allowance()).isEqualTo(Allowance.NONE);
    assertThat(piece.edge("left").orElseThrow().allowance()).isEqualTo(new Allowance.Plain(10));
    assertThat(piece.corners().stream().map(Corner::finish).toList())
        .containsExactly(
            new CornerFinish.TurnedBack("low"),
            new CornerFinish.TurnedBack("low"),
            new CornerFinish.Square("top"),
            new CornerFinish.TurnedBack("top"));
  }

  @Test
  void cornersAreMitredUnlessOneHemTurnsBackBesideThem() {
    Piece piece =
        kite(
            OUTLINE
                + """
                    allowance 1 cm, low 2.5 cm turned back, right 2 cm turned back
                    corner top and left mitred up to 2
                    corner left and low stepped
                  """);
    assertThat(piece.corners().stream().map(Corner::finish).toList())
        .containsExactly(
            new CornerFinish.Stepped(),
            CornerFinish.USUAL,
            new CornerFinish.TurnedBack("right"),
            new CornerFinish.Mitred(2));
  }

  @Test
  void copiesAreNamedOrNumberedAndMirroredInTurn() {
    assertThat(kite(OUTLINE).card().copies())
        .containsExactly(new Copy("1", false), new Copy("2", true));
    assertThat(kite(OUTLINE + "  copies left, right\n").card().copies())
        .containsExactly(new Copy("left", false), new Copy("right", true));
    assertThat(kite(OUTLINE).card().rightSideUp()).isFalse();
    assertThat(kite(OUTLINE + "  right side up\n").card().rightSideUp()).isTrue();
  }

  private static Vector grain(String rule) {
    return kite(OUTLINE + "  grain " + rule + "\n").grain().orElseThrow().direction();
  }

  private static void assertWay(Vector way, double dx, double dy) {
    assertThat(way.dx()).isCloseTo(dx, within(1e-9));
    assertThat(way.dy()).isCloseTo(dy, within(1e-9));
  }

  @Test
  void grainLiesAsItIsSaidAndPointsUpAlongALine() {
    assertWay(grain("up"), 0, 1);
    assertWay(grain("at 45 deg"), Math.sqrt(0.5), Math.sqrt(0.5));
    assertWay(grain("along left"), 0, 1);
    assertWay(grain("along top"), 1, 0);
    assertWay(grain("from d to a"), 0, -1);
    Piece piece = kite(OUTLINE + "  grain along left\n");
    assertThat(piece.stitchLine().contains(piece.grain().orElseThrow().from())).isTrue();
    assertThat(piece.stitchLine().contains(piece.grain().orElseThrow().to())).isTrue();
    Piece exact = kite(OUTLINE + "  grain from a to c\n");
    assertThat(exact.grain().orElseThrow().from()).isEqualTo(new Point(0, 0));
  }

  @Test
  void marksAreDrawn() {
    Piece piece =
        kite(
            OUTLINE
                + """
                    grain up
                    stretch across
                    point m at 10 cm, 15 cm
                    drill apex at m "Dart point"
                    inner middle is a to c "Fold"
                    placement pocket_place is a to m "Pocket"
                    label "Cut with care" at m
                    label "Large" at m in sizes 20 to 26
                    lengthen at m
                    level hip at m
                    opening top
                  """);
    assertWay(piece.marks(Mark.Stretch.class).get(0).direction(), 1, 0);
    assertThat(piece.marks(Mark.Drill.class).get(0).text()).contains("Dart point");
    assertThat(piece.marks(Mark.Inner.class).get(0).path().end()).isEqualTo(new Point(220, 300));
    assertThat(piece.marks(Mark.Placement.class)).hasSize(1);
    assertThat(piece.marks(Mark.Label.class)).hasSize(1);
    assertThat(piece.marks(Mark.Level.class).get(0).at()).isEqualTo(new Point(100, 150));
    Path lengthen = piece.marks(Mark.Lengthen.class).get(0).line();
    assertThat(lengthen.start().x()).isCloseTo(0, within(1e-9));
    assertThat(lengthen.end().x()).isCloseTo(210, within(1e-9));
    assertThat(lengthen.end().y()).isCloseTo(150, within(1e-9));
    assertThat(piece.openings()).containsExactly("top");
  }

  @Test
  void stacksOnTheFoldsStartElseTheFirstCornerElseWhereItIsSaid() {
    assertThat(kite(OUTLINE).stackPoint()).isEqualTo(new Point(0, 0));
    assertThat(kite(OUTLINE + "  stack at c\n").stackPoint()).isEqualTo(new Point(220, 300));
    assertThat(kite(OUTLINE + "  fold left\n").stackPoint()).isEqualTo(new Point(0, 300));
    assertThat(kite(OUTLINE + "  fold left\n").foldEdge().map(Edge::name)).contains("left");
  }

  @Test
  void aSeamsNotchesLieOnAllItsLayersAtOneLength() {
    Sketch sketch =
        Sketch.of(
            """
            piece front "Front" number 1
              cut 2 of main, mirrored
              rectangle 20 cm by 12 cm, edges low, right, top, left
            piece back "Back" number 2
              cut 2 of main, mirrored
              rectangle 20 cm by 10 cm, edges low, right, top, left
            seam sides front.left with back.left, ease 2 cm
              notch at 3 cm from start
              double notch at 50% from start as middle
            """);
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.piece("14", "front").notches().stream().map(Notch::distance).toList())
        .containsExactly(90.0, 60.0);
    assertThat(sketch.piece("14", "back").notches().stream().map(Notch::distance).toList())
        .containsExactly(70.0, 50.0);
    assertThat(sketch.size("14").seams().get(0).ease().least()).isEqualTo(20);
  }

  @Test
  void stretchedSaysHowMuchShorterTheFirstLayerIs() {
    Sketch sketch =
        Sketch.of(
            """
            piece front "Front" number 1
              cut 2 of main, mirrored
              rectangle 20 cm by 12 cm, edges low, right, top, left
            seam sides front.left with front.left, stretched 25%
            """);
    // Shorter by a fifth: stretched by a quarter it is as long as the other.
    assertThat(sketch.size("14").seams().get(0).ease().least()).isCloseTo(-0.2, within(1e-12));
    assertThat(sketch.size("14").seams().get(0).ease().share()).isTrue();
  }

  @Test
  void twoDraftsOfOneNameAreOnePieceFromOutside() {
    Sketch sketch =
        Sketch.of(
            """
            let yoke_edge = length of yoke.low
            piece yoke "Yoke" number 1 in sizes 8 to 14
              cut 1 of main
              rectangle waist / 2 by 5 cm, edges low, right, top, left
            piece yoke "Yoke" number 1 in sizes 16 to 26
              cut 1 of main
              rectangle waist / 2 + 1 cm by 5 cm, edges low, right, top, left
            piece cover "Cover" number 2
              cut 1 of main
              rectangle length of yoke.low by 5 cm, edges low, right, top, left
            """);
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("14", "yoke_edge")).isEqualTo(390);
    assertThat(sketch.number("16", "yoke_edge")).isEqualTo(420);
    assertThat(path(sketch.piece("16", "cover"), "low").length()).isEqualTo(420);
    assertThat(sketch.piece("14", "yoke").card().sizes().map(SizeRange::last).orElseThrow().name())
        .isEqualTo("14");
    assertThat(sketch.piece("14", "cover").card().sizes()).isEqualTo(Optional.empty());
  }

  @Test
  void withoutViewsThereIsOneAndWithoutGroupsTheyOverlapByOne() {
    SizeRun run = Sketch.of(POINTS + OUTLINE).drafted().run().orElseThrow();
    assertThat(run.pattern().views()).hasSize(1);
    assertThat(run.pattern().views().get(0).pieces()).containsExactly("kite");
    assertThat(
            run.pattern().paper().groups().stream()
                .map(group -> group.first().name() + " to " + group.last().name())
                .toList())
        .containsExactly("8 to 16", "16 to 26");
  }

  @Test
  void theDesignerChoosesWhatThePaperShows() {
    PaperChoices usual =
        Sketch.of(POINTS + OUTLINE).drafted().run().orElseThrow().pattern().paper();
    assertThat(usual.stitchLines() || usual.wholePieces() || usual.rectangleTable()).isFalse();
    assertThat(usual.viewsApart()).isFalse();
    PaperChoices chosen =
        Sketch.of(
                POINTS
                    + OUTLINE
                    + """
                    paper
                      stitch lines shown
                      fold pieces whole
                      rectangles as table
                      views apart
                    """)
            .drafted()
            .run()
            .orElseThrow()
            .pattern()
            .paper();
    assertThat(chosen.stitchLines() && chosen.wholePieces() && chosen.rectangleTable()).isTrue();
    assertThat(chosen.viewsApart()).isTrue();
  }

  @Test
  void elasticsHaveALoopAndACutLength() {
    Sketch sketch =
        Sketch.of(
            POINTS
                + OUTLINE
                + "elastic loop in kite, width 3 cm, length 90% of waist, overlap 2.5 cm\n");
    assertThat(sketch.size("14").elastics().get(0).finished()).isCloseTo(702, within(1e-9));
    assertThat(sketch.size("14").elastics().get(0).cut()).isCloseTo(727, within(1e-9));
  }

  @Test
  void whatAnOpeningPassesAndWhatClosesIt() {
    Piece piece = kite(OUTLINE + "  opening top over hip, closed by zip 20 cm\n  opening low\n");
    assertThat(piece.openings()).containsExactly("top", "low");
    BodyOpening top = piece.bodyOpenings().get(0);
    assertThat(top.over()).contains("hip");
    assertThat(top.closure()).contains(new BodyOpening.Closure(BodyOpening.Kind.ZIP, 200));
    assertThat(piece.bodyOpenings().get(1).over()).isEmpty();
    assertThat(piece.bodyOpenings().get(1).closure()).isEmpty();
  }

  @Test
  void whatAnElasticHoldsAndPasses() {
    Sketch sketch =
        Sketch.of(
            POINTS
                + OUTLINE
                + """
                elastic top_elastic in kite.top, width 2 cm, length 90% of waist, overlap 2 cm,
                  round waist, over hip, stretching 80%
                elastic plain in kite, width 2 cm, length 60 cm, overlap 2 cm
                """);
    assertThat(sketch.codes()).isEmpty();
    Elastic elastic = sketch.size("14").elastics().get(0);
    assertThat(elastic.piece()).isEqualTo("kite");
    assertThat(elastic.edge()).contains("top");
    assertThat(elastic.round()).contains("waist");
    assertThat(elastic.over()).contains("hip");
    assertThat(elastic.stretch()).hasValue(0.8);
    Elastic plain = sketch.size("14").elastics().get(1);
    assertThat(plain.edge()).isEmpty();
    assertThat(plain.round()).isEmpty();
    assertThat(plain.stretch()).isEmpty();
  }
}
