package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.pattern.traced.TracedLine;
import org.junit.jupiter.api.Test;

/** Traced pieces and their rules, held against sums on paper and school geometry. */
class TracedPiecesTest {
  private static final String START =
      """
      piece sheet traced "traced/box.svg" as "Sheet" number 1
        cut 1 of main
      """;

  private static final String BOX =
      "  outline traced \"box\" from the top left clockwise, edges top, side, hem, centre\n";

  private static Piece piece(String size, String lines) {
    return piece(size, lines, TracedSketch.INPUTS);
  }

  private static Piece piece(String size, String lines, TracedInputs inputs) {
    Drafted drafted = Drafting.draft("p", FindingCase.HEADINGS + lines, FindingCase.CHART, inputs);
    assertThat(drafted.findings()).isEmpty();
    return drafted.run().orElseThrow().size(size).orElseThrow().piece("sheet").orElseThrow();
  }

  private static Edge edge(Piece piece, String name) {
    return piece.edges().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow();
  }

  private static void at(Point point, double x, double y) {
    assertThat(point.distanceTo(new Point(x, y))).as("%s", point).isLessThan(1e-6);
  }

  @Test
  void cornersAndEdgesLieAsDrawn() {
    Piece piece = piece("8", START + BOX + "  grain traced \"grain\"\n");
    assertThat(piece.stitchLine().signedArea()).isCloseTo(10_000, within(1e-6));
    Edge side = edge(piece, "side");
    at(side.reversed() ? side.path().end() : side.path().start(), 100, 100);
    at(piece.grain().orElseThrow().from(), 50, 10);
    at(piece.grain().orElseThrow().to(), 50, 90);
  }

  /** A line drawn 5 cm long that is 10 cm in truth makes everything twice as large. */
  @Test
  void aScaleLineGivesTheTrueSize() {
    String scaled = START.replace(" as", ", where \"ruler\" is 10 cm, as");
    Piece piece = piece("14", scaled + BOX + "  grain up\n");
    assertThat(piece.stitchLine().signedArea()).isCloseTo(40_000, within(1e-6));
  }

  /** The cut line is a square of 120 mm: 10 mm off all round leaves 100 by 100 (handbook §3). */
  @Test
  void anAllowanceIsTakenOffByInwardOffset() {
    String cut = BOX.replace("\"box\"", "\"cut\"").replace("clockwise,", "clockwise, less 1 cm,");
    Piece piece = piece("14", START + cut + "  grain up\n");
    assertThat(piece.stitchLine().signedArea()).isCloseTo(10_000, within(1e-6));
    at(edge(piece, "hem").path().start(), 0, 0);
    Piece hemmed = piece("14", START + cut.replace("hem,", "hem less 3 cm,") + "  grain up\n");
    assertThat(hemmed.stitchLine().signedArea()).isCloseTo(100.0 * 80, within(1e-6));
    Piece folded = piece("14", START + cut.replace("centre", "centre less 0") + "  grain up\n");
    assertThat(folded.stitchLine().signedArea()).isCloseTo(110.0 * 100, within(1e-6));
  }

  /**
   * A quarter circle of radius 11 cm with 1 cm of allowance: the stitch line is 15.708 cm (row 16).
   */
  @Test
  void anAllowanceOnACurveIsTakenOffExactly() {
    Path arc = CircularArc.about(new Point(0, 0), new Point(110, 0), Math.PI / 2);
    Path round =
        arc.then(Path.polyline(List.of(new Point(0, 110), new Point(0, 0), new Point(110, 0))));
    TracedInputs inputs = drawing("box", round);
    String lines =
        START
            + "  outline traced \"box\" from the bottom right anticlockwise, edges hem less 1 cm,"
            + " side, centre\n  grain up\n";
    Piece piece = piece("14", lines, inputs);
    assertThat(edge(piece, "hem").path().length()).isCloseTo(157.08, within(0.02));
  }

  private static TracedInputs drawing(String name, Path... paths) {
    TreeMap<String, Optional<TracedDrawing>> drawings = new TreeMap<>();
    for (int i = 0; i < paths.length; i++) {
      String file = i == 0 ? "traced/box.svg" : "traced/box" + i + ".svg";
      TracedLine line = new TracedLine(List.of(name), paths[i], new Origin(file, 1, 1));
      drawings.put(file, Optional.of(new TracedDrawing(file, List.of(line), true, List.of())));
    }
    return new TracedInputs(drawings, new TreeMap<>());
  }

  @Test
  void shortLinesMarkTheEdgesThatTheyTouch() {
    Piece piece =
        piece(
            "14",
            START
                + BOX
                + "  grain up\n  notch side traced \"ticks\"\n  notch hem traced \"ticks\"\n");
    assertThat(piece.notches()).hasSize(2);
    for (Notch notch : piece.notches()) {
      Path path = edge(piece, notch.edge()).path();
      Point place = path.at(notch.distance()).point();
      at(place, notch.edge().equals("side") ? 100 : 40, notch.edge().equals("side") ? 25 : 0);
    }
  }

  /**
   * A quarter of a hip step of 4 cm is 1 cm a size (handbook §2); from size 18 the chart's is 6.
   */
  @Test
  void aShareOfAMeasurementsStepFollowsTheChart() {
    String rules =
        """
          grade side at start right 1/4 of the hip step, up 2 mm
          grade side at end right 25% of hip step
          grade top at start up 2 mm
          grade centre at start stays
          grain up
        """;
    at(edge(piece("16", START + BOX + rules), "side").path().end(), 110, 102);
    at(edge(piece("18", START + BOX + rules), "side").path().end(), 125, 104);
    at(edge(piece("8", START + BOX + rules), "side").path().end(), 70, 94);
    at(edge(piece("14", START + BOX + rules), "side").path().end(), 100, 100);
  }

  /** 5 mm a size and 7 mm from size 20: 16 and 18 are steps of 5, 20 and 22 of 7. */
  @Test
  void stepsChangeAtABreakSize() {
    String rules =
        """
          grade side at start right 5 mm, then 7 mm from size 20
          grade side at end right 5 mm, then 7 mm from size 20
          grade top at start stays
          grade centre at start stays
          grain up
        """;
    at(edge(piece("22", START + BOX + rules), "hem").path().end(), 124, 0);
    at(edge(piece("10", START + BOX + rules), "hem").path().end(), 90, 0);
  }

  /** A dot inside keeps its place between the sides when one side moves. */
  @Test
  void whatLiesInsideMovesWithTheOutlineRoundIt() {
    String rules =
        """
          grade side at start right 10 mm
          grade side at end right 10 mm
          grade top at start stays
          grade centre at start stays
          point pocket traced "grain"
          drill pocket at pocket
          grain traced "grain"
        """;
    Piece piece = piece("18", START + BOX + rules);
    at(piece.marks(Mark.Drill.class).get(0).at(), 60, 50);
    assertThat(piece.grain().orElseThrow().direction()).isEqualTo(new Vector(0, 1));
  }

  /**
   * A neckline that leaves the fold squarely does so in every size, and no joint becomes a corner.
   */
  @Test
  void curvesKeepTheirCharacter() {
    Path neck =
        Path.of(
            new Cubic(new Point(0, 0), new Point(30, 0), new Point(70, 15), new Point(80, 60)),
            new Cubic(new Point(80, 60), new Point(82, 69), new Point(85, 80), new Point(90, 90)));
    Path round =
        neck.then(Path.polyline(List.of(new Point(90, 90), new Point(0, 200), new Point(0, 0))));
    String lines =
        START
            + """
              outline traced "box" from the bottom left anticlockwise, edges neck, shoulder, centre
              grade neck at start down 3 mm
              grade neck at 50% from start right 2 mm, down 1 mm
              grade neck at end right 3 mm, up 1 mm
              grade centre at start up 2 mm
              fold centre
              grain up
            """;
    for (String size : List.of("8", "20", "26")) {
      Path path = edge(piece(size, lines, drawing("box", round)), "neck").path();
      assertThat(path.startDirection().dy()).as(size).isCloseTo(0, within(1e-9));
      for (int i = 1; i < path.curves().size(); i++) {
        Vector before = path.curves().get(i - 1).direction(1);
        Vector after = path.curves().get(i).direction(0);
        double was = StrictMath.toRadians(i == 0 ? 0 : 1.2);
        assertThat(Math.abs(before.angleTo(after))).as("%s, joint %d", size, i).isLessThan(was);
      }
    }
  }

  /** Traced in 14 and 20 (100 and 130 mm wide): 16 is 110 wide, 26 is 160, 8 is 70. */
  @Test
  void twoTracedSizesGiveTheSteps() {
    TracedInputs inputs = drawing("box", square(100, 100), square(130, 106));
    String lines = START + BOX + "  also traced \"traced/box1.svg\" in size 20\n  grain up\n";
    at(edge(piece("16", lines, inputs), "side").path().end(), 110, 102);
    at(edge(piece("20", lines, inputs), "side").path().end(), 130, 106);
    at(edge(piece("26", lines, inputs), "side").path().end(), 160, 112);
    at(edge(piece("8", lines, inputs), "side").path().end(), 70, 94);
  }

  private static Path square(double wide, double high) {
    return Path.polyline(
        List.of(
            new Point(0, 0),
            new Point(wide, 0),
            new Point(wide, high),
            new Point(0, high),
            new Point(0, 0)));
  }
}
