package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facings and linings made from their shell pieces. */
class DerivedPiecesTest {
  private static final String FRONT =
      """
      piece front "Front" number 1
        cut 1 of main, on the fold
        point cw at 0 cm, 0 cm
        point ch from cw down 60 cm
        point sw from cw right waist / 4 + 2.5 cm then up 1.2 cm
        point side_hip from cw down 20 cm then right hip / 4 + 5 mm
        point sh from ch right hip / 4 + 5 mm
        point tip from cw right 9 cm then down 9 cm
        curve waist_line from cw leaving right to sw
        curve side_line from sw to side_hip arriving down, then straight to sh
        outline waist is waist_line, side is side_line, hem is sh to ch, centre is straight
        fold centre
        dart waist_dart on waist at 8.5 cm from start to tip, opening 2.5 cm
      """;

  private static Sketch sketch(String lines) {
    Sketch sketch = Sketch.of(FRONT + lines);
    assertThat(sketch.drafted().findings()).isEmpty();
    return sketch;
  }

  private static Edge edge(Piece piece, String name) {
    return piece.edge(name).orElseThrow();
  }

  /** The strip is as long as the waist with its dart closed, and everywhere as deep. */
  @Test
  void aFacingTakesTheWaistWithItsDartClosed() {
    for (String size : List.of("8", "14", "26")) {
      Sketch sketch =
          sketch(
              """
              piece facing "Waist facing" number 2
                cut 1 of main, on the fold
                facing of front along waist, depth 6 cm, edges waist, side, lower, centre
                fold centre
              """);
      Piece front = sketch.piece(size, "front");
      Piece facing = sketch.piece(size, "facing");
      Path waist = edge(facing, "waist").path();
      assertThat(waist.length()).isCloseTo(front.sewnLength(edge(front, "waist")), within(1e-6));
      for (Point point : edge(facing, "lower").path().flattened(0.1)) {
        double away = waist.nearest(point).point().distanceTo(point);
        // Up to a millimetre off where it bends to meet the side as the waist does.
        assertThat(away).isBetween(59.0, 63.0);
      }
      assertThat(edge(facing, "centre").path().length()).isCloseTo(60, within(1e-3));
      assertThat(edge(facing, "centre").onFold()).isTrue();
      assertThat(facing.intakes()).isEmpty();
      // It lies on the front where the waist starts, so that the front's points serve it too.
      assertThat(waist.nearest(Point.ORIGIN).point().distanceTo(Point.ORIGIN)).isLessThan(1e-6);
      assertThat(edge(facing, "centre").path().bounds().width()).isLessThan(1e-6);
    }
  }

  /** Its side is cut as the front's side is, from the waist down. */
  @Test
  void theEndOfAFacingFollowsTheSeamBesideIt() {
    Sketch sketch =
        sketch(
            """
            piece facing "Waist facing" number 2
              cut 1 of main, on the fold
              facing of front along waist, depth 6 cm, edges waist, side, lower, centre
              fold centre
            """);
    Piece front = sketch.piece("14", "front");
    Piece facing = sketch.piece("14", "facing");
    Edge own = edge(facing, "side");
    Edge side = edge(front, "side");
    double length = own.path().length();
    Path ownPath = own.reversed() ? own.path().reversed() : own.path();
    Path sidePath = side.reversed() ? side.path().reversed() : side.path();
    assertThat(ownPath.start().distanceTo(ownPath.end()))
        .isCloseTo(sidePath.start().distanceTo(sidePath.at(length).point()), within(1e-6));
    double angle = waistAngle(front);
    assertThat(waistAngle(facing)).isCloseTo(angle, within(1e-6));
  }

  private static double waistAngle(Piece piece) {
    Path waist = edge(piece, "waist").path();
    Path side = edge(piece, "side").path();
    return waist.end().isAt(side.start())
        ? waist.endDirection().angleTo(side.startDirection())
        : waist.startDirection().angleTo(side.endDirection());
  }

  /** Along two edges at a corner, named either way round. */
  @ParameterizedTest
  @CsvSource({
    "top and right, 'top, right, at_hem, inner, at_left'",
    "right and top, 'right, top, at_left, inner, at_hem'"
  })
  void aFacingRoundACorner(String along, String names) {
    Sketch sketch =
        sketch(
            """
            piece sheet "Sheet" number 2
              cut 1 of main
              rectangle 40 cm by 60 cm, edges hem, right, top, left
            piece facing "Facing" number 3
              cut 1 of main
              facing of sheet along %s, depth 5 cm, edges %s
            """
                .formatted(along, names));
    Piece facing = sketch.piece("14", "facing");
    assertThat(edge(facing, "top").path().length()).isCloseTo(400, within(1e-6));
    assertThat(edge(facing, "right").path().length()).isCloseTo(600, within(1e-6));
    assertThat(edge(facing, "inner").path().length()).isCloseTo(350 + 550, within(1e-6));
    assertThat(edge(facing, "at_hem").path().length()).isCloseTo(50, within(1e-6));
    assertThat(edge(facing, "at_hem").path().start().y()).isCloseTo(0, within(1e-9));
    assertThat(edge(facing, "at_left").path().start().x()).isCloseTo(0, within(1e-9));
  }

  /** A lining cut with the shell's darts, its hem shorter, its names the same. */
  @Test
  void aLiningIsTheShellWithAnotherHem() {
    Sketch sketch =
        sketch(
            """
            piece lining "Front lining" number 2
              cut 1 of main, on the fold
              outline as front, hem taken in 3 cm
              fold centre
            """);
    Piece front = sketch.piece("14", "front");
    Piece lining = sketch.piece("14", "lining");
    assertThat(lining.edges())
        .extracting(Edge::name)
        .isEqualTo(front.edges().stream().map(Edge::name).toList());
    assertThat(lining.sewnLength(edge(lining, "waist")))
        .isCloseTo(front.sewnLength(edge(front, "waist")), within(1e-6));
    assertThat(lining.intakes(Intake.Dart.class)).isEqualTo(front.intakes(Intake.Dart.class));
    assertThat(edge(lining, "side").path().length())
        .isCloseTo(edge(front, "side").path().length() - 30, within(1e-6));
    assertThat(edge(lining, "centre").path().length()).isCloseTo(570, within(1e-6));
  }

  /** Taken as drafted it has no dart; let out at the centre it has room for a pleat. */
  @Test
  void aLiningAsDraftedAndLetOut() {
    Sketch sketch =
        sketch(
            """
            piece lining "Front lining" number 2
              cut 1 of main, on the fold
              bring front
              outline as drafted front, centre let out 1 cm, waist taken in 6 cm
              fold centre
              pleat ease on waist at 1 cm from start to hem at 1 cm from end, depth 5 mm, knife toward end
              notch side at side_hip
            """);
    Piece front = sketch.piece("14", "front");
    Piece lining = sketch.piece("14", "lining");
    assertThat(lining.intakes(Intake.Dart.class)).isEmpty();
    assertThat(lining.intakes(Intake.Pleat.class)).hasSize(1);
    assertThat(edge(lining, "centre").path().length()).isCloseTo(540, within(1e-6));
    assertThat(edge(lining, "hem").path().length())
        .isCloseTo(edge(front, "hem").path().length() + 20, within(1e-6));
    assertThat(lining.notches()).anySatisfy(n -> assertThat(n.edge()).isEqualTo("side"));
  }

  /**
   * The same dart in a lining that starts below the waist gives the length of the facing's edge.
   */
  @Test
  void facingAndLiningMeet() {
    Sketch sketch =
        sketch(
            """
            piece facing "Waist facing" number 2
              cut 1 of main, on the fold
              facing of front along waist, depth 4 cm, edges waist, side, lower, centre
              fold centre
            piece lining "Front lining" number 3
              cut 1 of main, on the fold
              bring front
              outline as drafted front, waist taken in 4 cm
              fold centre
              solve wide so that length of waist = length of facing.lower within 5 mm and 3 cm
              dart waist_dart on waist at 8.4 cm from start to tip, opening wide
            """);
    for (String size : List.of("8", "14", "26")) {
      Piece facing = sketch.piece(size, "facing");
      Piece lining = sketch.piece(size, "lining");
      assertThat(lining.sewnLength(edge(lining, "waist")))
          .isCloseTo(edge(facing, "lower").path().length(), within(1e-3));
      double angle = lining.intakes(Intake.Dart.class).get(0).angle();
      double shell = sketch.piece(size, "front").intakes(Intake.Dart.class).get(0).angle();
      assertThat(angle).isCloseTo(shell, within(StrictMath.toRadians(2)));
    }
  }

  /**
   * Where the side seam curves, a facing's inner edge and the edge of a lining taken in meet it at
   * the angle at which the waist meets it, so that front and back still run into each other without
   * a peak (handbook section 1, "Junctions").
   */
  @Test
  void movedEdgesKeepTheirCorners() {
    Sketch sketch =
        Sketch.of(
            """
            piece front "Front" number 1
              cut 1 of main, on the fold
              point cw at 0 cm, 0 cm
              point sw from cw right waist / 4 then up 1.2 cm
              point sh from cw right hip / 4 then down 20 cm
              point ch from cw down 20 cm
              curve side_line from sw leaving at -60 deg to sh arriving down
              curve waist_line from cw leaving right to sw arriving square to side_line
              outline waist is waist_line, side is side_line, hem is sh to ch, centre is straight
              fold centre
            piece facing "Waist facing" number 2
              cut 1 of main, on the fold
              facing of front along waist, depth 6 cm, edges waist, side, lower, centre
              fold centre
            piece lining "Front lining" number 3
              cut 1 of main, on the fold
              outline as front, waist taken in 6 cm
              fold centre
            """);
    assertThat(sketch.drafted().findings()).isEmpty();
    for (String size : List.of("8", "14", "26")) {
      Path lower = edge(sketch.piece(size, "facing"), "lower").path();
      Path facingSide = edge(sketch.piece(size, "facing"), "side").path();
      assertThat(corner(lower, facingSide)).isCloseTo(StrictMath.PI / 2, within(1e-6));
      Path waist = edge(sketch.piece(size, "lining"), "waist").path();
      Path liningSide = edge(sketch.piece(size, "lining"), "side").path();
      assertThat(corner(waist, liningSide)).isCloseTo(StrictMath.PI / 2, within(1e-6));
      assertThat(corner(waist, edge(sketch.piece(size, "lining"), "centre").path()))
          .isCloseTo(StrictMath.PI / 2, within(1e-6));
      double side = edge(sketch.piece(size, "front"), "side").path().length();
      assertThat(liningSide.length() + facingSide.length()).isCloseTo(side, within(0.05));
    }
  }

  /** The angle between two edges inside the corner where they meet (radians). */
  private static double corner(Path first, Path second) {
    boolean inOrder = first.end().isAt(second.start());
    Path before = inOrder ? first : second;
    Path after = inOrder ? second : first;
    assertThat(before.end().distanceTo(after.start())).isLessThan(1e-4);
    return StrictMath.PI - Math.abs(before.endDirection().angleTo(after.startDirection()));
  }
}
