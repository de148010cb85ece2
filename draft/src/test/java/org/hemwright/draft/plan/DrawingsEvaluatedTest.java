package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Vector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way to find a point and to draw a line, against school geometry. */
class DrawingsEvaluatedTest {
  private static final String GIVEN =
      """
      point a at 0 cm, 0 cm
      point b at 30 cm, 40 cm
      point c at 30 cm, 0 cm
      point d at 10 cm, 20 cm
      line base from a to c
      line slant from a to b
      line post from c to b
      line level from d right 40 cm
      line corner from a to c to b
      arc bow about a from c turning 90 deg
      line across from far_left to far_right
      point far_left at -50 cm, 18 cm
      point far_right at 50 cm, 18 cm
      """;

  /** In centimetres; an arc strays from its circle by 0.0002 mm at most. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          at 3 cm, -4 cm                                      | 3    | -4
          from a right 3 cm then up 2 cm then left 1 cm       | 2    | 2
          from a down 3 cm                                    | 0    | -3
          from a at 60 deg 10 cm                              | 5    | 8.660254037844386
          from a toward b 25 cm                               | 15   | 20
          from a away from b 5 cm                             | -3   | -4
          from d as from a to b 5 cm                          | 13   | 24
          from d along slant 5 cm                             | 13   | 24
          from d square to slant 5 cm                         | 6    | 23
          from d square right of slant 5 cm                   | 14   | 17
          from a turned 90 deg from right 4 cm                | 0    | 4
          from a turned -36.86989764584402 deg from toward b 10 cm | 9.6  | 2.8
          from a right 3 cm then toward b 40 cm               | 25.378914 | 33.153947
          on slant at 5 cm from start                         | 3    | 4
          on slant at 20% from end                            | 24   | 32
          on slant at 1/2 from start                          | 15   | 20
          on slant at halves                                  | 15   | 20
          on corner at 35 cm from start                       | 30   | 5
          on slant at b                                       | 30   | 40
          on a to c at 0 cm from end                          | 30   | 0
          midway from a to b                                  | 15   | 20
          1/3 from a to c                                     | 10   | 0
          120% from a to c                                    | 36   | 0
          where slant meets level                             | 15   | 20
          where a to b meets level reversed                   | 15   | 20
          where bow meets across                              | 24   | 18
          where corner meets slant, first                     | 0    | 0
          where corner meets slant, last                      | 30   | 40
          where slant meets corner, nearest c                 | 0    | 0
          square from d to base                               | 10   | 0
          square from c to slant                              | 10.8 | 14.4
          on base where 25 cm from d                          | 25   | 0
          on slant where 25 cm from c, first                  | 6.6  | 8.8
          30 cm from a and 40 cm from b, left of a to b       | -8.4 | 28.8
          30 cm from a and 40 cm from b, right of a to b      | 30   | 0
          is d mirrored across base                           | 10   | -20
          is d mirrored across a to b                         | 16.4 | 15.2
          is d moved right 3 cm                               | 13   | 20
          is d moved from a to c                              | 40   | 20
          is d turned 90 deg about a                          | -20  | 10
          is c turned 90 deg about a moved up 1 cm            | 0    | 31
          """)
  void pointsAreFound(String rule, double x, double y) {
    Sketch sketch = Sketch.inPiece(GIVEN + "point it %s\ndrill it_mark at it\n".formatted(rule));
    assertThat(sketch.codes()).isEmpty();
    Point found = sketch.drill("it_mark");
    assertThat(found.x() / 10).isCloseTo(x, within(2e-5));
    assertThat(found.y() / 10).isCloseTo(y, within(2e-5));
  }

  /** Length, and the point in the middle, in centimetres. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          line it from a to c to b                         | 70      | 30     | 5
          line it from a up 12 cm                          | 12      | 0      | 6
          arc it about a from c turning 90 deg             | 47.1238898 | 21.2132034 | 21.2132034
          arc it about a from c turning -90 deg            | 47.1238898 | 21.2132034 | -21.2132034
          arc it from a to c radius 15 cm, bulging left    | 47.1238898 | 15     | 15
          arc it from a to c radius 15 cm, bulging right   | 47.1238898 | 15     | -15
          arc it from a to c radius 25 cm, bulging left, the long way | 124.9045772 | 15 | 45
          arc it from a to c radius 25 cm, bulging left    | 32.1750554 | 15     | 5
          arc it from a through turn to c                  | 47.1238898 | 15     | 15
          path it is slant                                 | 50      | 15     | 20
          path it is base then post                        | 70      | 30     | 5
          path it is slant reversed then base              | 80      | 6      | 8
          path it is base then straight then level         | 98.2842712 | 16.4644661 | 13.5355339
          path it is corner from c to b                    | 40      | 30     | 20
          path it is slant from b to a                     | 50      | 15     | 20
          path it is slant from halfway                    | 25      | 22.5   | 30
          path it is base offset 2 cm left                 | 30      | 15     | 2
          path it is base offset 2 cm right                | 30      | 15     | -2
          path it is bow offset 5 cm left                  | 39.2699082 | 17.6776695 | 17.6776695
          path it is base mirrored across slant            | 30      | -4.2   | 14.4
          path it is base turned 90 deg about a moved right 1 cm | 30 | 1     | 15
          path it is a to b                                | 50      | 15     | 20
          """)
  void linesAreDrawn(String rule, double length, double x, double y) {
    Sketch sketch =
        Sketch.inPiece(
            GIVEN
                + """
                  point turn at 15 cm, 15 cm
                  point halfway midway from a to b
                  %s
                  inner it_line is it
                  """
                    .formatted(rule));
    assertThat(sketch.codes()).isEmpty();
    Path drawn = sketch.inner("it_line");
    assertThat(drawn.length() / 10).isCloseTo(length, within(1e-4));
    Point middle = drawn.at(drawn.length() / 2).point();
    assertThat(middle.x() / 10).isCloseTo(x, within(1e-3));
    assertThat(middle.y() / 10).isCloseTo(y, within(1e-3));
  }

  private static Path curve(String rule) {
    Sketch sketch = Sketch.inPiece(GIVEN + "curve it %s\ninner it_line is it\n".formatted(rule));
    assertThat(sketch.codes()).isEmpty();
    return sketch.inner("it_line");
  }

  private static final Point A = new Point(0, 0);
  private static final Point B = new Point(300, 400);
  private static final Point D = new Point(100, 200);
  private static final Vector UP = new Vector(0, 1);
  private static final Vector RIGHT = new Vector(1, 0);

  @Test
  void smoothCurvesTakeHeadingsAndTensions() {
    assertThat(curve("from a to b")).isEqualTo(SmoothCurve.from(A).to(B).path());
    assertThat(curve("from a leaving up to b arriving right"))
        .isEqualTo(SmoothCurve.from(A).leaving(UP).to(B).arriving(RIGHT).path());
    assertThat(curve("from a through d to b")).isEqualTo(SmoothCurve.from(A).to(D).to(B).path());
    assertThat(curve("from a through d heading right to b"))
        .isEqualTo(SmoothCurve.from(A).to(D).arriving(RIGHT).to(B).path());
    assertThat(curve("from a tension 1.5 through d tension 1.2 to b"))
        .isEqualTo(SmoothCurve.from(A).tension(1.5, 1.5).to(D).tension(1.2, 1.2).to(B).path());
    assertThat(curve("from a leaving toward c to b arriving square to base"))
        .isEqualTo(SmoothCurve.from(A).leaving(RIGHT).to(B).arriving(UP).path());
  }

  @Test
  void aCurveRunsSmoothlyIntoAStraightStretchAndOutOfIt() {
    Path into = curve("from d to a, then straight to c");
    assertThat(into.curves()).hasSize(2);
    assertThat(into.curves().get(0).direction(1).angleTo(RIGHT)).isCloseTo(0, within(1e-9));
    Path out = curve("from a straight to c then to b");
    assertThat(out.curves().get(1).direction(0).angleTo(RIGHT)).isCloseTo(0, within(1e-9));
    Path given = curve("from d to a arriving down, then straight to c");
    assertThat(given.curves().get(0).direction(1).angleTo(UP.negated())).isCloseTo(0, within(1e-9));
  }

  @Test
  void thenStartsAfreshAtACorner() {
    Path corner = curve("from a leaving up to d arriving right, then leaving up to b");
    assertThat(corner.curves().get(0).direction(1).angleTo(RIGHT)).isCloseTo(0, within(1e-9));
    assertThat(corner.curves().get(1).direction(0).angleTo(UP)).isCloseTo(0, within(1e-9));
    assertThat(corner.end()).isEqualTo(B);
  }

  @Test
  void whatAPartHasIsBroughtMovedAndMirrored() {
    Sketch sketch =
        Sketch.of(
            """
            part wing
              point root at 0 cm, 0 cm
              point tip at 10 cm, 2 cm
              line rib from root to tip
            part pair
              bring wing
            piece sheet "Sheet" number 1
              cut 1 of main
              rectangle 100 cm by 100 cm, edges low, right, top, left
              bring pair mirrored across axis_foot to axis_top moved up 1 cm
              point axis_foot at 20 cm, 0 cm
              point axis_top at 20 cm, 9 cm
              drill here at tip
              inner there is rib
            """);
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.drill("here")).isEqualTo(new Point(300, 30));
    assertThat(sketch.inner("there").start()).isEqualTo(new Point(400, 10));
  }
}
