package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.measure.Girth;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Darts, slash and spread, pleats and gathers, held against the laws and the check values of the
 * trade handbook, sections 1 and 10.
 */
class ShapedPiecesTest {
  /** Half of the last place that the handbook gives (mm). */
  private static final double HUNDREDTH_CM = 0.05;

  /** A sheet of 40 cm by 60 cm, its edges drawn counter-clockwise. */
  private static final String SHEET =
      """
      piece sheet "Sheet" number 1
        cut 1 of main
        point a at 0 cm, 0 cm
        point b at 40 cm, 0 cm
        point c at 40 cm, 60 cm
        point d at 0 cm, 60 cm
        outline hem is a to b, right is b to c, top is c to d, left is d to a
        point tip at 20 cm, 50 cm
      """;

  private static Piece sheet(String lines) {
    Sketch sketch = Sketch.of(SHEET + lines.indent(2));
    assertThat(sketch.drafted().findings()).isEmpty();
    return sketch.piece("14", "sheet");
  }

  private static Edge edge(Piece piece, String name) {
    return piece.edge(name).orElseThrow();
  }

  private static Intake.Dart dart(Piece piece, String name) {
    return piece.intakes(Intake.Dart.class).stream()
        .filter(dart -> dart.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Point end(Piece piece, Intake intake, boolean first) {
    return edge(piece, intake.edge()).path().at(first ? intake.from() : intake.to()).point();
  }

  private static double opening(Piece piece, Intake dart) {
    return end(piece, dart, true).distanceTo(end(piece, dart, false));
  }

  /** 11: dart legs 10 cm, opening 3 cm: angle 17.254°. */
  @Test
  void aDartOfThreeCentimetresOnLegsOfTen() {
    Piece piece = sheet("dart d on top at 20 cm from start to tip, opening 3 cm");
    Intake.Dart dart = dart(piece, "d");
    assertThat(Math.toDegrees(dart.angle())).isCloseTo(17.254, within(0.0005));
    assertThat(end(piece, dart, true).distanceTo(dart.apex())).isCloseTo(100, within(1e-6));
    assertThat(end(piece, dart, false).distanceTo(dart.apex())).isCloseTo(100, within(1e-6));
    assertThat(opening(piece, dart)).isCloseTo(30, within(1e-6));
  }

  /** 12: the same dart rotated to an edge 15 cm from the apex: opening 4.50 cm. */
  @Test
  void theSameDartTurnedToAnEdgeFartherOff() {
    Piece piece =
        sheet(
            """
            point near_side at 15 cm, 50 cm
            dart d on top at 20 cm from start to near_side, opening 3 cm
            """
                    .replace("20 cm from start to", "25 cm from start to")
                + "pivot d to left at 10 cm from start as turned\n");
    Intake.Dart dart = dart(piece, "turned");
    assertThat(Math.toDegrees(dart.angle())).isCloseTo(17.254, within(0.0005));
    assertThat(end(piece, dart, true).distanceTo(dart.apex())).isCloseTo(150, within(1e-6));
    assertThat(opening(piece, dart)).isCloseTo(45.0, within(HUNDREDTH_CM));
    assertThat(piece.intakes()).hasSize(1);
  }

  /** Rotating about the apex keeps the angle, in parts too; merged darts add. */
  @ParameterizedTest
  @ValueSource(ints = {10, 25, 50, 80, 100})
  void sharesOfADartKeepItsAngle(int percent) {
    String lines =
        "dart d on top at 20 cm from start to tip, angle 15 deg\npivot d by "
            + percent
            + "% to right at 50% from start as side_dart\n";
    Piece piece = sheet(lines);
    double moved = dart(piece, "side_dart").angle();
    double kept = percent == 100 ? 0 : dart(piece, "d").angle();
    assertThat(moved).isCloseTo(Math.toRadians(15) * percent / 100, within(1e-12));
    assertThat(moved + kept).isCloseTo(Math.toRadians(15), within(1e-12));
    Piece back = sheet(lines + (percent == 100 ? "" : "merge d into side_dart"));
    assertThat(dart(back, "side_dart").angle()).isCloseTo(Math.toRadians(15), within(1e-12));
    assertThat(back.intakes()).hasSize(1);
  }

  /**
   * Whatever the dart: legs equal, cap halves equal, the closed edge smooth, its length as sewn.
   */
  @Test
  void everyDartFoldsClosed() {
    Random random = new Random(11);
    for (int i = 0; i < 60; i++) {
      double along = 120 + 160 * random.nextDouble();
      double aside = 60 * random.nextDouble() - 30;
      double deep = 70 + 80 * random.nextDouble();
      double wide = 8 + 30 * random.nextDouble();
      String way = random.nextBoolean() ? "start" : "end";
      Piece piece =
          sheet(
              """
              point inner from c left %s mm then down %s mm
              dart d on top at %s mm from start to inner, opening %s mm, pressed toward %s
              """
                  .formatted(along + aside, deep, along, wide, way));
      Intake.Dart dart = dart(piece, "d");
      Path path = edge(piece, "top").path();
      Point first = end(piece, dart, true);
      Point second = end(piece, dart, false);
      assertThat(first.distanceTo(dart.apex()))
          .isCloseTo(second.distanceTo(dart.apex()), within(1e-6));
      assertThat(opening(piece, dart)).isCloseTo(wide, within(1e-6));
      double middle = (dart.from() + dart.to()) / 2;
      Path before = path.part(0, dart.from());
      Path cap = path.part(dart.from(), middle);
      Path rest = path.part(middle, dart.to());
      Path after = path.part(dart.to(), path.length());
      assertThat(cap.end().distanceTo(first)).isCloseTo(cap.end().distanceTo(second), within(1e-6));
      Motion close = Motion.turn(dart.apex(), -dart.angle());
      Vector smooth = after.startDirection();
      assertThat(before.endDirection().angleTo(close.apply(smooth))).isCloseTo(0, within(1e-6));
      Path flat = way.equals("start") ? rest.moved(close) : cap;
      Path beside = way.equals("start") ? before : after.moved(close);
      for (Point point : flat.flattened(0.1)) {
        assertThat(beside.nearest(point).point().distanceTo(point)).isLessThan(1e-5);
      }
      assertThat(piece.sewnLength(edge(piece, "top")))
          .isCloseTo(before.length() + after.length(), within(1e-6));
    }
  }

  @Test
  void aDartIsMarkedAtItsLegsAndItsStitchedPoint() {
    Piece piece =
        sheet("dart d on top at 20 cm from start to tip, opening 3 cm, stitched 2 cm short");
    Intake.Dart dart = dart(piece, "d");
    assertThat(dart.tip().distanceTo(dart.apex())).isCloseTo(20, within(1e-9));
    assertThat(piece.marks(Mark.Drill.class))
        .extracting(Mark.Drill::at)
        .containsExactly(dart.tip());
    Path legs = piece.marks(Mark.Inner.class).get(0).path();
    assertThat(legs.start()).isEqualTo(end(piece, dart, true));
    assertThat(legs.end()).isEqualTo(end(piece, dart, false));
    assertThat(piece.notches()).extracting(Notch::distance).containsExactly(dart.from(), dart.to());
  }

  /** Handbook section 1: finished girth is the sum of widths less dart amounts. */
  @Test
  void aGirthLeavesADartOut() {
    Piece piece = sheet("dart d on top at 20 cm from start to tip, opening 3 cm");
    double halfway = 550;
    assertThat(Girth.across(piece, halfway))
        .isCloseTo(400 - 2 * 50 * StrictMath.tan(dart(piece, "d").angle() / 2), within(1e-3));
    assertThat(Girth.across(piece, 400)).isCloseTo(400, within(1e-6));
  }

  /** A closed dart becomes flare: the hem grows by what the dart's angle opens at the hem. */
  @Test
  void aDartTurnedIntoFlare() {
    Piece piece =
        sheet(
            """
            dart d on top at 20 cm from start to tip, opening 3 cm
            pivot d to hem at 50% from start left open, trued over 1 mm
            """);
    assertThat(piece.intakes()).isEmpty();
    double angle = 2 * StrictMath.asin(0.15);
    double grown = edge(piece, "hem").path().length() - 400;
    assertThat(grown).isCloseTo(2 * 500 * StrictMath.sin(angle / 2), within(2.0));
    assertThat(edge(piece, "right").path().length()).isCloseTo(600, within(1e-9));
  }

  /**
   * Hinge side unchanged, far side longer by the spread, cut edges as long as they were (handbook
   * section 1, "Slash and spread").
   */
  @Test
  void slashAndSpreadByItsLaws() {
    Random random = new Random(12);
    for (int i = 0; i < 60; i++) {
      double far = 0.1 + 0.8 * random.nextDouble();
      double near = 0.1 + 0.8 * random.nextDouble();
      double spread = 1 + 150 * random.nextDouble();
      Piece piece =
          sheet(
              "slash hem at %s%% from start to top at %s%% from start, spread %s mm, left as cut"
                  .formatted(100 * far, 100 * near, spread));
      assertThat(edge(piece, "top").path().length()).isCloseTo(400, within(1e-6));
      assertThat(edge(piece, "hem").path().length()).isCloseTo(400 + spread, within(1e-6));
      Path hem = edge(piece, "hem").path();
      Path top = edge(piece, "top").path();
      Point hinge = top.at(near * 400).point();
      double cut = new Point(400 * far, 0).distanceTo(new Point(400 - 400 * near, 600));
      assertThat(hem.at(400 * far).point().distanceTo(hinge)).isCloseTo(cut, within(1e-6));
      assertThat(hem.at(400 * far + spread).point().distanceTo(hinge)).isCloseTo(cut, within(1e-6));
      assertThat(edge(piece, "left").path().length()).isCloseTo(600, within(1e-9));
      assertThat(edge(piece, "right").path().length()).isCloseTo(600, within(1e-9));
    }
  }

  /** Parallel spread adds to both sides; unlike amounts to each its own. */
  @ParameterizedTest
  @CsvSource({"40, 40", "40, 10", "5, 60", "0, 30"})
  void spreadAtBothEnds(double far, double near) {
    Piece piece =
        sheet(
            "slash hem at 50%% from start to top at 50%% from start, spread %s mm and %s mm, left as cut"
                .formatted(far, near));
    assertThat(edge(piece, "hem").path().length()).isCloseTo(400 + far, within(1e-6));
    assertThat(edge(piece, "top").path().length()).isCloseTo(400 + near, within(1e-6));
    Piece down =
        sheet(
            "slash top at 30%% from start to hem at 50%% from start, spread %s mm and %s mm, left as cut"
                .formatted(far, near));
    assertThat(edge(down, "top").path().length()).isCloseTo(400 + far, within(1e-6));
    assertThat(edge(down, "hem").path().length()).isCloseTo(400 + near, within(1e-6));
  }

  /** Trued, every edge is smooth and nearly as long; its ends and their angles stay. */
  @Test
  void aSpreadEdgeIsTrued() {
    Piece cut = sheet("slash hem at thirds to top at thirds, spread 4 cm, left as cut");
    Piece trued = sheet("slash hem at thirds to top at thirds, spread 4 cm");
    for (String name : List.of("hem", "top")) {
      Path rough = edge(cut, name).path();
      Path smooth = edge(trued, name).path();
      assertThat(smooth.length()).isCloseTo(rough.length(), within(2.0));
      assertThat(smooth.startDirection().angleTo(rough.startDirection()))
          .isCloseTo(0, within(1e-9));
      assertThat(smooth.endDirection().angleTo(rough.endDirection())).isCloseTo(0, within(1e-9));
      for (int i = 1; i < smooth.curves().size(); i++) {
        Vector here = smooth.curves().get(i - 1).direction(1);
        assertThat(here.angleTo(smooth.curves().get(i).direction(0))).isCloseTo(0, within(1e-6));
      }
    }
  }

  @Test
  void theFoldStaysWhereItIsAndMarksGoWithTheirPart() {
    Piece piece =
        sheet(
            """
            fold left
            drill near at tip
            point far_point at 35 cm, 30 cm
            drill far at far_point
            slash hem at 75% from start to top at 25% from start, turned 10 deg
            """);
    assertThat(edge(piece, "left").path().start()).matches(start -> start.isAt(new Point(0, 600)));
    List<Mark.Drill> drills = piece.marks(Mark.Drill.class);
    assertThat(drills.get(0).at()).isEqualTo(new Point(200, 500));
    Point hinge = new Point(300, 600);
    assertThat(drills.get(1).at().distanceTo(hinge))
        .isCloseTo(new Point(350, 300).distanceTo(hinge), within(1e-9));
    assertThat(drills.get(1).at().x()).isGreaterThan(380);
  }

  /** A fold takes twice its depth; sewn, the edge is as long as before, and its hem is wider. */
  @ParameterizedTest
  @CsvSource({
    "knife toward end, 1",
    "knife toward start, 1",
    "box, 2",
    "inverted, 2",
    "'knife toward end, repeated 3 times every 5 cm', 3"
  })
  void pleatsWidenThePieceAndFoldAway(String folded, int folds) {
    Piece piece =
        sheet("pleat p on top at 20 cm from start to hem at 20 cm from end, depth 2 cm, " + folded);
    assertThat(piece.intakes(Intake.Pleat.class)).hasSize(folds);
    assertThat(edge(piece, "top").path().length()).isCloseTo(400 + 40 * folds, within(1e-6));
    assertThat(edge(piece, "hem").path().length()).isCloseTo(400 + 40 * folds, within(1e-6));
    assertThat(piece.sewnLength(edge(piece, "top"))).isCloseTo(400, within(1e-6));
    assertThat(piece.sewnLength(edge(piece, "hem"))).isCloseTo(400 + 40 * folds, within(1e-6));
    assertThat(Girth.across(piece, 300)).isCloseTo(400, within(1e-6));
    for (Intake.Pleat pleat : piece.intakes(Intake.Pleat.class)) {
      assertThat(pleat.lines()).hasSize(3);
      assertThat(pleat.taken()).isCloseTo(40, within(1e-6));
    }
  }

  /** Along a slanted edge the cloth beneath follows the edge when it is folded. */
  @Test
  void aPleatOnASlantedEdgeHasACap() {
    Sketch sketch =
        Sketch.of(
            SHEET.replace("point d at 0 cm, 60 cm", "point d at 0 cm, 50 cm")
                + "  pleat p on top at 50% from start to hem at 20 cm from start, depth 3 cm, knife"
                + " toward end\n");
    assertThat(sketch.drafted().findings()).isEmpty();
    Piece piece = sketch.piece("14", "sheet");
    Intake.Pleat pleat = piece.intakes(Intake.Pleat.class).get(0);
    Path path = edge(piece, "top").path();
    double middle = (pleat.from() + pleat.to()) / 2;
    Point fold = path.at(middle).point();
    double straight = path.at(pleat.from()).point().distanceTo(path.at(pleat.to()).point());
    assertThat(straight).isCloseTo(60, within(1e-6));
    assertThat(pleat.taken()).isGreaterThan(60.5);
    assertThat(fold.y() - path.at(pleat.from()).point().y()).isCloseTo(7.5, within(1e-6));
    assertThat(piece.sewnLength(edge(piece, "top")))
        .isCloseTo(new Point(400, 600).distanceTo(new Point(0, 500)), within(1e-6));
  }

  /** A gathered edge, or a part of it, meets a band of its drawn length. */
  @ParameterizedTest
  @CsvSource({"drawn to 30 cm, 300", "drawn to 60%, 240", "from p to q drawn to 50%, 300"})
  void gathersAreDrawnUp(String how, double length) {
    Sketch sketch =
        Sketch.of(
            SHEET
                + """
                  point p from c left 10 cm
                  point q from c left 30 cm
                  gathers g on top %s
                piece band "Band" number 2
                  cut 1 of main
                  rectangle length of sheet.top by 8 cm, edges lower, end_right, upper, end_left
                seam waist sheet.top with band.lower
                  notch at 50%% from start
                """
                    .formatted(how));
    assertThat(sketch.drafted().findings()).isEmpty();
    Piece piece = sketch.piece("14", "sheet");
    assertThat(piece.sewnLength(edge(piece, "top"))).isCloseTo(length, within(1e-6));
    assertThat(edge(sketch.piece("14", "band"), "lower").path().length())
        .isCloseTo(length, within(1e-6));
    Seam seam = sketch.size("14").seams().get(0);
    SeamWalk walk = SeamWalk.of(seam, seam.joins().get(0), 1, sketch.size("14"));
    assertThat(walk.first().length()).isCloseTo(walk.second().length(), within(1e-6));
    assertThat(walk.first().stops().stream().filter(stop -> stop.isNotch()).toList())
        .anySatisfy(stop -> assertThat(stop.distance()).isCloseTo(length / 2, within(1e-6)));
  }

  /** A notch at a length along a darted edge lies at that length when the dart is closed. */
  @Test
  void lengthsAlongAnEdgeAreAsSewn() {
    Sketch sketch =
        Sketch.of(
            SHEET
                + """
                  dart d on top at 20 cm from start to tip, opening 3 cm
                  notch top at 30 cm from start
                  notch top at halves
                  let top_length = length of top
                piece band "Band" number 2
                  cut 1 of main
                  rectangle sheet.top_length by 8 cm, edges lower, end_right, upper, end_left
                  notch lower at 30 cm from start
                seam waist sheet.top with band.lower
                """);
    assertThat(sketch.drafted().findings()).isEmpty();
    Piece piece = sketch.piece("14", "sheet");
    Edge top = edge(piece, "top");
    assertThat(piece.sewn(top).sewnAt(piece.notches().get(0).distance()))
        .isCloseTo(300, within(1e-6));
    assertThat(piece.sewn(top).sewnAt(piece.notches().get(1).distance()))
        .isCloseTo(sketch.number("14", "sheet.top_length") / 2, within(1e-6));
  }

  /** The opening that makes a darted waist as long as it is to be is found by a solve. */
  @Test
  void aDartIsSolvedToTheLengthOfItsEdge() {
    Sketch sketch =
        Sketch.of(
            SHEET
                + """
                  solve wide so that length of top = 37 cm within 1 cm and 6 cm
                  dart d on top at 20 cm from start to tip, opening wide
                """);
    assertThat(sketch.drafted().findings()).isEmpty();
    Piece piece = sketch.piece("14", "sheet");
    assertThat(piece.sewnLength(edge(piece, "top"))).isCloseTo(370, within(1e-4));
  }

  /** Two darts on one edge, one of them drawn against the outline, are trued together. */
  @Test
  void severalDartsOnOneEdge() {
    Piece piece =
        sheet(
            """
            point one at 12 cm, 50 cm
            point two at 28 cm, 48 cm
            dart first on top at 12 cm from end to one, opening 2 cm
            dart second on top at 28 cm from end to two, opening 25 mm, pressed toward end
            """);
    assertThat(opening(piece, dart(piece, "first"))).isCloseTo(20, within(1e-6));
    assertThat(opening(piece, dart(piece, "second"))).isCloseTo(25, within(1e-6));
    assertThat(dart(piece, "second").from()).isLessThan(dart(piece, "first").from());
    assertThat(piece.sewnLength(edge(piece, "top"))).isBetween(350.0, 356.0);
  }

  /** Drawn the other way along, the same dart is the same piece. */
  @Test
  void theDirectionOfTheEdgeDecidesNothing() {
    String dart = "  dart d on top at 15 cm from %s to tip, opening 3 cm, pressed toward %s\n";
    Sketch one = Sketch.of(SHEET + dart.formatted("start", "end"));
    Sketch other =
        Sketch.of(SHEET.replace("top is c to d", "top is d to c") + dart.formatted("end", "start"));
    assertThat(other.piece("14", "sheet").stitchLine())
        .isEqualTo(one.piece("14", "sheet").stitchLine());
  }
}
