package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whatever is asked ends in an answer or in a plain reason. */
class HostileShapesTest {

  @Test
  void aScribbleOfAThousandCornersIsNotTrimmedForEver() {
    Drawn drawn = new Drawn(81);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 1500; i++) {
      points.add(drawn.point(500));
    }
    Path scribble = Path.polyline(points);
    assertThatThrownBy(() -> OffsetPath.of(scribble, 8))
        .isInstanceOf(GeometryProblem.class)
        .hasMessageContaining("too often");
  }

  @Test
  void aTracedRingOfAThousandPointsIsSetOff() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 1000; i++) {
      points.add(Point.ORIGIN.plus(Vector.atAngle(2 * Math.PI * i / 1000).times(300)));
    }
    Path ring = Path.polyline(points);
    assertThat(Outline.of(ring).crossings()).isEmpty();
    for (Curve curve : OffsetPath.of(ring, 10).curves()) {
      assertThat(curve.start().distanceTo(Point.ORIGIN)).isBetween(289.9, 290.1);
    }
  }

  /** Grids make points, handles and tangents fall on one another as chance never does. */
  @Test
  void curvesOnAGridNeverEndInAnythingButAPlainReason() {
    Drawn drawn = new Drawn(82);
    int answers = 0;
    for (int i = 0; i < 1500; i++) {
      double step = new double[] {0.5, 10, 1000}[i % 3];
      try {
        Path one = onGrid(drawn, step);
        Path other = onGrid(drawn, step);
        for (Meeting meeting : one.meetings(other)) {
          Point point = one.at(meeting.distanceOnThis()).point();
          assertThat(point.isAt(meeting.point())).isTrue();
          assertThat(other.at(meeting.distanceOnOther()).point().distanceTo(point))
              .isLessThan(2 * Tolerance.SAME_POINT);
        }
        if (one.isClosed()) {
          Outline.of(one).crossings();
          Outline.of(one).contains(other.start());
        }
        one.nearest(other.end());
        OffsetPath.of(one, step * drawn.number(-2, 2));
        answers++;
      } catch (GeometryProblem plain) {
        assertThat(plain.reason()).isNotBlank().doesNotContain("NaN", "Infinity");
      }
    }
    assertThat(answers).isGreaterThan(500);
  }

  private static Path onGrid(Drawn drawn, double step) {
    List<Curve> curves = new ArrayList<>();
    Point here = gridPoint(drawn, step);
    for (int i = drawn.count(1, 4); i > 0; i--) {
      Point next = gridPoint(drawn, step);
      curves.add(
          drawn.count(0, 1) == 0
              ? new Line(here, next)
              : new Cubic(here, gridPoint(drawn, step), gridPoint(drawn, step), next));
      here = next;
    }
    return Path.of(curves);
  }

  private static Point gridPoint(Drawn drawn, double step) {
    return new Point(drawn.count(-3, 3) * step, drawn.count(-3, 3) * step);
  }

  @Test
  void numbersBeyondTheEdgeOfThePlaneAreRefused() {
    assertThatThrownBy(() -> Path.straight(Point.ORIGIN, new Point(1e8, 0)))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("a point falls at (100000000, 0) mm, farther out than any drawing reaches");
    assertThatThrownBy(() -> Point.ORIGIN.plus(new Vector(1e200, 0).times(1e200)))
        .isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> CircularArc.between(Point.ORIGIN, new Point(1, 0), 1e300, true, false))
        .isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> Motion.mirror(Point.ORIGIN, Point.ORIGIN))
        .hasMessage("a mirror line needs two points, and both lie at (0.0, 0.0) mm");
    assertThatThrownBy(() -> Path.straight(Point.ORIGIN, new Point(1, 0)).flattened(0))
        .isInstanceOf(GeometryProblem.class);
  }
}
