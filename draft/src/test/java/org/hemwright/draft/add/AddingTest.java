package org.hemwright.draft.add;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.hemwright.draft.Charts;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.body.SizeChart;
import org.junit.jupiter.api.Test;

/**
 * What is added by pointing is a line that the language reads, and lies where it was pointed at, as
 * near as the unit's step comes.
 */
class AddingTest {
  private static final SizeChart CHART =
      Charts.of(
          """
          size,waist (cm),hip (cm)
          8,66,92
          10,70,96
          """);

  private static final String TEXT =
      """
      language 1
      pattern "Trial"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 8
      units centimetres
      fabric main woven "Linen"
        widths 140 cm
      piece front "Front" number 1
        cut 1 of main
        point a   at 0 cm, 0 cm
        point b   from a right 20 cm then up 5 cm   # hers
        point far from b up hip / 4
        point d   from a up 30 cm
        line low  from a to b
        outline low is low, right is b to far, top is far to d, left is d to a
        notch right at 12 cm from start
        allowance 1 cm
        grain up

      piece back "Back" number 2
        cut 1 of main
        outline as front
        allowance 1 cm
        grain up

      seam sides front.right with back.left
      """;

  private static Evaluation values(String text) {
    Planned planned = Plan.of(DocumentReader.read("pattern.hem", text), CHART);
    assertThat(planned.findings()).as(text).isEmpty();
    return planned.plan().evaluate();
  }

  private static Point at(Evaluation values, String name) {
    for (PlannedThing thing : values.plan().things()) {
      if (thing.owner().equals("front") && thing.name().equals(name)) {
        return values.point(0, thing).orElseThrow();
      }
    }
    throw new AssertionError(name);
  }

  private static List<Addition> ways(Adding.What what, String name, Pick... picks) {
    return new Adding(what, name, List.of(picks), 3).ways(values(TEXT), 0);
  }

  private static List<String> lines(List<Addition> ways) {
    return ways.stream().map(way -> String.join(" / ", way.lines())).toList();
  }

  private static Pick place(double x, double y) {
    return new Pick.OfPlace("front", new Point(x, y));
  }

  private static Pick line(String name, double x, double y) {
    return new Pick.OfLine("front", name, new Point(x, y));
  }

  private static Pick point(String name) {
    return new Pick.OfPoint("front", name);
  }

  @Test
  void aPointLiesWhereItWasPointedAt() {
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      double x = random.nextDouble() * 220 - 10;
      double y = random.nextDouble() * 300 - 10;
      for (Addition way : ways(Adding.What.POINT, "here", place(x, y))) {
        Point there = at(values(way.text()), "here");
        // Half a step of 0.1 cm each way; half a degree over at most 30 cm is 1.4 mm.
        double step = way.way() == Addition.Way.ANGLE ? 2 : 0.75;
        if (way.way() != Addition.Way.SQUARE_WAY) {
          assertThat(there.distanceTo(new Point(x, y))).as(way.text()).isLessThan(step);
        }
      }
    }
  }

  @Test
  void aPointIsSaidByTwoOthersAndAThird() {
    assertThat(lines(ways(Adding.What.POINT, "it", point("a"), point("b"), point("d"))))
        .containsExactly("point it is d mirrored across a to b");
    List<Addition> compasses =
        ways(Adding.What.POINT, "it", point("a"), point("b"), place(-30, 160));
    assertThat(lines(compasses))
        .containsExactly("point it 16.3 cm from a and 25.5 cm from b, left of a to b");
    assertThat(at(values(compasses.get(0).text()), "it").distanceTo(new Point(-30, 160)))
        .isLessThan(1);
    assertThat(lines(ways(Adding.What.POINT, "it", point("a"), point("b"), place(90, -60))))
        .allSatisfy(line -> assertThat(line).endsWith(", right of a to b"));
  }

  @Test
  void aSeamHasItsOwnNotchAndAViewItsPieces() {
    List<Addition> notches = ways(Adding.What.NOTCH, "", line("right", 200, 100));
    List<Addition> ofSeam =
        notches.stream().filter(way -> way.way() == Addition.Way.SEAM_NOTCH).toList();
    assertThat(ofSeam).isNotEmpty();
    assertThat(ofSeam.get(0).text())
        .contains("seam sides front.right with back.left\n  " + ofSeam.get(0).lines().get(0));
    assertThat(values(ofSeam.get(0).text()).plan().document().statements()).isNotEmpty();
    assertThat(ways(Adding.What.NOTCH, "", line("top", 100, 300)))
        .noneMatch(way -> way.way() == Addition.Way.SEAM_NOTCH);
    List<Addition> views =
        ways(Adding.What.VIEW, "", new Pick.OfPiece("front"), new Pick.OfPiece("back"));
    assertThat(lines(views)).containsExactly("view A \"View A\" / pieces front, back");
    String text = views.get(0).text();
    assertThat(text).contains("\n\nview A \"View A\"\n  pieces front, back");
    assertThat(
            lines(
                new Adding(Adding.What.VIEW, "", List.of(new Pick.OfPiece("back")), 3)
                    .ways(values(text), 0)))
        .containsExactly("view B \"View B\" / pieces back");
  }

  @Test
  void aPointIsSaidByWhatItDependsOn() {
    assertThat(lines(ways(Adding.What.POINT, "it", point("a"), point("d"))))
        .containsExactly(
            "point it midway from a to d",
            "point it 1/3 from a to d",
            "point it 2/3 from a to d",
            "point it from a toward d 15 cm");
    assertThat(lines(ways(Adding.What.POINT, "it", line("left", 0, 151))))
        .startsWith("point it on left at 50% from start");
    assertThat(lines(ways(Adding.What.POINT, "it", line("left", 0, 250))))
        .startsWith("point it on left at 5 cm from start");
    assertThat(lines(ways(Adding.What.POINT, "it", point("d"), line("low", 50, 12))))
        .startsWith("point it square from d to low");
    assertThat(lines(ways(Adding.What.POINT, "it", line("low", 0, 0), line("left", 0, 0))))
        .startsWith("point it where low meets left");
    assertThat(lines(ways(Adding.What.POINT, "a", place(50, 50))))
        .as("a name that is taken gets another")
        .allMatch(line -> line.startsWith("point a_2 "));
  }

  @Test
  void linesStandWithTheirLikeInTheirColumns() {
    String text = ways(Adding.What.POINT, "c", place(100, 100)).get(0).text();
    assertThat(text).contains("point d   from a up 30 cm\n  point c   from ");
    String curve =
        ways(Adding.What.CURVE, "bow", point("a"), place(60, 90), point("d")).get(0).text();
    values(curve);
    assertThat(curve).contains("\n  curve bow from a through bow_point to d");
    for (Addition way : ways(Adding.What.CURVE, "bow", point("a"), point("b"), point("d"))) {
      values(way.text());
    }
    for (Addition way : ways(Adding.What.LINE, "new", point("a"), line("top", 100, 300))) {
      values(way.text());
    }
  }

  @Test
  void notchesSeamsAndPieces() {
    assertThat(lines(ways(Adding.What.NOTCH, "", line("left", 0, 150))))
        .contains(
            "notch left at 50% from start", "notch left at halves", "double notch left at halves");
    assertThat(
            lines(
                ways(
                    Adding.What.SEAM,
                    "shoulder",
                    line("top", 0, 0),
                    new Pick.OfLine("back", "top", new Point(0, 0)))))
        .contains(
            "seam shoulder front.top with back.top",
            "seam shoulder front.top with back.top reversed",
            "seam shoulder front.top with every back.top");
    Pick corner = new Pick.OfPlace("", new Point(500, 0));
    for (Adding.What what : List.of(Adding.What.PIECE)) {
      List<Addition> found =
          ways(
              what,
              "pocket flap",
              corner,
              new Pick.OfPlace("", new Point(500, 80)),
              new Pick.OfPlace("", new Point(620, 80)));
      String text = found.get(0).text();
      values(text);
      assertThat(text).contains("piece pocket_flap \"Pocket flap\" number 3");
      values(ways(what, "band", corner, new Pick.OfPlace("", new Point(600, 40))).get(0).text());
      values(ways(what, "lining", new Pick.OfPiece("front")).get(0).text());
      values(ways(what, "top_facing", line("top", 0, 0)).get(0).text());
    }
  }
}
