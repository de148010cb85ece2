package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Laws that hold for every path. */
class PathLawsTest {
  private static final int ROUNDS = 200;

  private static void assertSameWalk(Path path, Path expected, double tolerance) {
    assertThat(path.length()).isCloseTo(expected.length(), within(tolerance));
    for (int i = 0; i <= 20; i++) {
      double distance = Math.min(expected.length(), path.length()) * i / 20;
      assertThat(path.at(distance).point().distanceTo(expected.at(distance).point()))
          .isLessThan(tolerance);
    }
  }

  @Test
  void splitThenJoinedIsTheSamePath() {
    Drawn drawn = new Drawn(11);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      double[] cuts = new double[drawn.count(1, 4)];
      for (int k = 0; k < cuts.length; k++) {
        cuts[k] = drawn.number(0.01, path.length() - 0.01);
      }
      Arrays.sort(cuts);
      List<Path> parts = path.splitAt(cuts);
      assertThat(parts).hasSize(cuts.length + 1);
      Path joined = parts.get(0);
      for (Path part : parts.subList(1, parts.size())) {
        joined = joined.then(part);
      }
      assertSameWalk(joined, path, 1e-6);
      assertThat(joined.start()).isEqualTo(path.start());
      assertThat(joined.end()).isEqualTo(path.end());
    }
  }

  @Test
  void splitAtAJointGivesBackTheCurves() {
    Drawn drawn = new Drawn(12);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      if (path.curves().size() > 1) {
        List<Path> parts = path.splitAt(path.curves().get(0).length());
        assertThat(parts.get(0).curves()).isEqualTo(path.curves().subList(0, 1));
        assertThat(parts.get(1).curves()).isEqualTo(path.curves().subList(1, path.curves().size()));
      }
    }
  }

  @Test
  void reversedTwiceIsTheSamePath() {
    Drawn drawn = new Drawn(13);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      assertThat(path.reversed().reversed()).isEqualTo(path);
      double distance = drawn.number(0, path.length());
      PathPlace there = path.at(distance);
      PathPlace back = path.reversed().at(path.length() - distance);
      assertThat(back.point().distanceTo(there.point())).isLessThan(1e-6);
      assertThat(back.tangent().plus(there.tangent()).length()).isLessThan(1e-4);
    }
  }

  @Test
  void mirroredTwiceIsTheSamePath() {
    Drawn drawn = new Drawn(14);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      Motion mirror = Motion.mirror(drawn.point(100), drawn.point(100));
      assertThat(mirror.isMirror()).isTrue();
      assertSameWalk(path.moved(mirror).moved(mirror), path, 1e-9);
      assertThat(path.moved(mirror).length()).isCloseTo(path.length(), within(1e-8));
    }
  }

  @Test
  void motionsFollowOneAnotherAndAreUndone() {
    Drawn drawn = new Drawn(15);
    for (int i = 0; i < ROUNDS; i++) {
      Motion first = drawn.motion();
      Motion second = drawn.motion();
      Point point = drawn.point(300);
      Vector step = drawn.heading();
      Motion both = first.then(second);
      assertThat(both.apply(point).distanceTo(second.apply(first.apply(point)))).isLessThan(1e-9);
      assertThat(both.apply(step).minus(second.apply(first.apply(step))).length())
          .isLessThan(1e-12);
      assertThat(both.isMirror()).isEqualTo(first.isMirror() != second.isMirror());
      assertThat(both.then(both.inverse()).apply(point).distanceTo(point)).isLessThan(1e-9);
      assertThat(both.inverse().then(both).apply(point).distanceTo(point)).isLessThan(1e-9);
    }
  }

  @Test
  void aTurnKeepsItsCentreAndAMirrorItsLine() {
    Drawn drawn = new Drawn(16);
    for (int i = 0; i < ROUNDS; i++) {
      Point a = drawn.point(100);
      Point b = drawn.point(100);
      double angle = drawn.number(-6, 6);
      Motion turn = Motion.turn(a, angle);
      assertThat(turn.apply(a).distanceTo(a)).isLessThan(1e-12);
      assertThat(turn.apply(b).minus(a).minus(b.minus(a).turned(angle)).length()).isLessThan(1e-12);
      Motion mirror = Motion.mirror(a, b);
      Point on = a.toward(b, drawn.number(-2, 3));
      assertThat(mirror.apply(on).distanceTo(on)).isLessThan(1e-11);
      Point off = drawn.point(100);
      Point image = mirror.apply(off);
      assertThat(image.minus(off).dot(b.minus(a))).isCloseTo(0, within(1e-8));
      assertThat(b.minus(a).cross(off.minus(a)))
          .isCloseTo(-b.minus(a).cross(image.minus(a)), within(1e-8));
    }
  }

  @Test
  void boundsHoldThePathAndTouchItOnEverySide() {
    Drawn drawn = new Drawn(17);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      List<Point> many = new ArrayList<>();
      for (Curve curve : path.curves()) {
        for (int k = 0; k <= 4000; k++) {
          many.add(curve.at(k / 4000.0));
        }
      }
      Box sampled = Box.of(many);
      Box bounds = path.bounds();
      assertThat(bounds.minX())
          .isLessThanOrEqualTo(sampled.minX())
          .isCloseTo(sampled.minX(), within(1e-4));
      assertThat(bounds.minY())
          .isLessThanOrEqualTo(sampled.minY())
          .isCloseTo(sampled.minY(), within(1e-4));
      assertThat(bounds.maxX())
          .isGreaterThanOrEqualTo(sampled.maxX())
          .isCloseTo(sampled.maxX(), within(1e-4));
      assertThat(bounds.maxY())
          .isGreaterThanOrEqualTo(sampled.maxY())
          .isCloseTo(sampled.maxY(), within(1e-4));
    }
  }

  @Test
  void nearestIsNoFartherThanAnyPlaceLookedAt() {
    Drawn drawn = new Drawn(18);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      Point point = drawn.point(150);
      PathPlace nearest = path.nearest(point);
      double best = Double.POSITIVE_INFINITY;
      for (Curve curve : path.curves()) {
        for (int k = 0; k <= 5000; k++) {
          best = Math.min(best, curve.at(k / 5000.0).distanceTo(point));
        }
      }
      double distance = nearest.point().distanceTo(point);
      assertThat(distance).isLessThanOrEqualTo(best + 1e-12).isCloseTo(best, within(0.05));
      assertThat(path.at(nearest.distance()).point().distanceTo(nearest.point())).isLessThan(1e-6);
      double onPath = drawn.number(0, path.length());
      assertThat(path.nearest(path.at(onPath).point()).point().distanceTo(path.at(onPath).point()))
          .isLessThan(1e-9);
    }
  }

  @Test
  void straightStretchesOfAFlattenedPathStayNear() {
    Drawn drawn = new Drawn(19);
    for (int i = 0; i < ROUNDS; i++) {
      Path path = drawn.path(120);
      Path flat = Path.polyline(path.flattened(0.01));
      for (int k = 0; k <= 300; k++) {
        Point point = path.at(path.length() * k / 300).point();
        assertThat(flat.nearest(point).point().distanceTo(point)).isLessThan(0.01 + 1e-9);
      }
    }
  }

  @Test
  void jointsAreWeldedAndGapsRefused() {
    Point a = new Point(0, 0);
    Point b = new Point(10, 0);
    Point nearB = new Point(10 + Tolerance.SAME_POINT / 2, 0);
    Point c = new Point(10, 10);
    Path welded = Path.of(new Line(a, b), new Cubic(nearB, new Point(12, 3), new Point(12, 7), c));
    assertThat(welded.curves().get(1).start()).isEqualTo(b);
    Line apart = new Line(new Point(10.01, 0), c);
    assertThatThrownBy(() -> Path.of(new Line(a, b), apart))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("a path breaks off at (10.0, 0.0) mm and goes on at (10.01, 0.0) mm");
    assertThatThrownBy(() -> Path.of(List.of())).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> Path.straight(a, a)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> new Point(1e300, 0)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> new Point(Double.NaN, 0)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> Vector.ZERO.unit()).isInstanceOf(GeometryProblem.class);
  }

  @Test
  void aPathThatComesBackWithinTheToleranceIsClosed() {
    Point near = new Point(Tolerance.SAME_POINT / 3, 0);
    Path path = Path.polyline(List.of(Point.ORIGIN, new Point(10, 0), new Point(5, 5), near));
    assertThat(path.isClosed()).isTrue();
    assertThat(path.end()).isEqualTo(Point.ORIGIN);
    assertThat(Path.straight(Point.ORIGIN, new Point(1, 0)).isClosed()).isFalse();
  }
}
