package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas, inside and outside, and where an outline crosses itself. */
class OutlineTest {

  private static Outline polygon(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    points.add(points.get(0));
    return Outline.of(Path.polyline(points));
  }

  private static Path closed(Drawn drawn, double reach) {
    Path path = drawn.path(reach);
    return path.isClosed() || path.start().isAt(path.end())
        ? path
        : path.then(Path.straight(path.end(), path.start()));
  }

  /** The oracle: Shoelace over chords; halving the step quarters the error (Richardson). */
  private static double byChords(Path path, int steps) {
    double sum = 0;
    Point origin = path.bounds().centre();
    for (Curve curve : path.curves()) {
      for (int i = 1; i <= steps; i++) {
        Vector before = curve.at((i - 1.0) / steps).minus(origin);
        sum += before.cross(curve.at((double) i / steps).minus(origin)) / 2;
      }
    }
    return sum;
  }

  @Test
  void areaIsThatOfManyChords() {
    Drawn drawn = new Drawn(31);
    for (int i = 0; i < 100; i++) {
      Path path = closed(drawn, 100);
      double coarse = byChords(path, 500);
      double fine = byChords(path, 1000);
      double expected = fine + (fine - coarse) / 3;
      assertThat(Outline.of(path).signedArea()).isCloseTo(expected, within(1e-5));
    }
  }

  @Test
  void areaOfAPolygonAndACircle() {
    assertThat(polygon(0, 0, 30, 0, 30, 40).signedArea()).isEqualTo(600);
    assertThat(polygon(0, 0, 30, 0, 30, 40).isCounterClockwise()).isTrue();
    Path circle = CircularArc.about(new Point(500, 700), new Point(550, 700), -2 * Math.PI);
    assertThat(Outline.of(circle).signedArea()).isCloseTo(-2500 * Math.PI, within(0.03));
  }

  @Test
  void aMirroredOutlineTurnsTheOtherWay() {
    Drawn drawn = new Drawn(32);
    for (int i = 0; i < 50; i++) {
      Outline outline = Outline.of(closed(drawn, 100));
      Motion motion = drawn.motion();
      double sign = motion.isMirror() ? -1 : 1;
      assertThat(outline.moved(motion).signedArea())
          .isCloseTo(sign * outline.signedArea(), within(1e-6));
    }
  }

  @Test
  void simpleOutlinesHaveNoCrossings() {
    assertThat(polygon(0, 0, 30, 0, 30, 40).crossings()).isEmpty();
    assertThat(polygon(0, 0, 100, 0, 100, 1, 50, 0.5, 0, 1).crossings()).isEmpty();
    assertThat(
            Outline.of(CircularArc.about(Point.ORIGIN, new Point(9, 0), 2 * Math.PI)).crossings())
        .isEmpty();
    Path smooth =
        SmoothCurve.from(Point.ORIGIN)
            .to(new Point(100, 20))
            .to(new Point(120, 90))
            .to(new Point(10, 80))
            .closedPath();
    assertThat(Outline.of(smooth).crossings()).isEmpty();
  }

  @Test
  void aBowCrossesItselfOnce() {
    List<Meeting> crossings = polygon(0, 0, 40, 30, 40, 0, 0, 30).crossings();
    assertThat(crossings).hasSize(1);
    assertThat(crossings.get(0).point()).isEqualTo(new Point(20, 15));
    assertThat(crossings.get(0).distanceOnThis()).isCloseTo(25, within(1e-9));
    assertThat(crossings.get(0).distanceOnOther()).isCloseTo(105, within(1e-9));
  }

  @Test
  void theLoopOfOneCubicIsFound() {
    Cubic loop =
        new Cubic(new Point(0, 0), new Point(100, 60), new Point(-60, 60), new Point(40, 0));
    List<Meeting> crossings =
        Outline.of(
                Path.of(
                    loop,
                    new Line(new Point(40, 0), new Point(20, -30)),
                    new Line(new Point(20, -30), new Point(0, 0))))
            .crossings();
    assertThat(crossings).hasSize(1);
    assertThat(crossings.get(0).point().x()).isCloseTo(20, within(1e-9));
  }

  @Test
  void aTouchOfTheOtherSideIsACrossing() {
    assertThat(polygon(0, 0, 40, 0, 40, 30, 20, 0, 0, 30).crossings())
        .singleElement()
        .satisfies(m -> assertThat(m.point()).isEqualTo(new Point(20, 0)));
  }

  @Test
  void anEdgeFoldedBackOnItselfIsToldByItsEnds() {
    Outline outline = polygon(0, 0, 40, 0, 60, 0, 40, 0, 40, 30, 0, 30);
    assertThat(outline.crossings()).hasSize(2);
    assertThat(outline.crossings())
        .extracting(Meeting::point)
        .contains(new Point(40, 0), new Point(60, 0));
  }

  /** The oracle: all chords with all chords. */
  @Test
  void crossingsAreThoseOfManyShortChords() {
    Drawn drawn = new Drawn(33);
    int total = 0;
    for (int i = 0; i < 60; i++) {
      Path path = closed(drawn, 100);
      List<Point> points = new ArrayList<>();
      for (Curve curve : path.curves()) {
        for (int k = 0; k < 300; k++) {
          points.add(curve.at(k / 300.0));
        }
      }
      int n = points.size();
      if (n == 600 && path.curves().stream().allMatch(Line.class::isInstance)) {
        continue; // there and back on one line
      }
      int expected = 0;
      for (int a = 0; a < n; a++) {
        for (int b = a + 2; b < n; b++) {
          if ((b + 1) % n != a
              && cross(
                  points.get(a), points.get((a + 1) % n), points.get(b), points.get((b + 1) % n))) {
            expected++;
          }
        }
      }
      assertThat(Outline.of(path).crossings()).as("%s", path).hasSize(expected);
      total += expected;
    }
    assertThat(total).isGreaterThan(50);
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    Vector along = b.minus(a);
    Vector across = d.minus(c);
    double cross = along.cross(across);
    double t = c.minus(a).cross(across) / cross;
    double u = c.minus(a).cross(along) / cross;
    return t >= 0 && t < 1 && u >= 0 && u < 1;
  }

  @Test
  void insideIsWhereARayCrossesTheEdgeAnOddNumberOfTimes() {
    Drawn drawn = new Drawn(34);
    for (int i = 0; i < 60; i++) {
      Path path =
          SmoothCurve.from(new Point(100 + drawn.number(-30, 30), 0))
              .to(new Point(drawn.number(-20, 20), 100))
              .to(new Point(-100, drawn.number(-30, 30)))
              .to(new Point(0, -80))
              .closedPath();
      Outline outline = Outline.of(path);
      assertThat(outline.crossings()).isEmpty();
      for (int k = 0; k < 20; k++) {
        Point point = drawn.point(130);
        List<Point> flat = path.flattened(0.0005);
        boolean inside = false;
        for (int j = 1; j < flat.size(); j++) {
          Point a = flat.get(j - 1);
          Point b = flat.get(j);
          if (a.y() > point.y() != b.y() > point.y()
              && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
            inside = !inside;
          }
        }
        assertThat(outline.contains(point)).isEqualTo(inside);
      }
      assertThat(outline.contains(path.at(drawn.number(0, path.length())).point())).isTrue();
    }
  }

  @Test
  void anOpenPathIsRefused() {
    Path path = Path.polyline(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1)));
    assertThatThrownBy(() -> Outline.of(path))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage(
            "an outline starts at (0.0, 0.0) mm and does not come back but ends at (1.0, 1.0) mm");
  }
}
