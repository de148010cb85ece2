package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Offsets against their definition, the handbook's arcs and corners, and distances by sampling. */
class OffsetPathTest {
  /** What the project promises for offsets (mm). */
  private static final double PROMISED = 0.02;

  private static List<Point> sampled(Path path, int steps) {
    List<Point> points = new ArrayList<>();
    for (Curve curve : path.curves()) {
      for (int i = 0; i <= steps; i++) {
        points.add(curve.at((double) i / steps));
      }
    }
    return points;
  }

  /** The oracle: the distance to the nearest of many short chords. */
  private static double distance(List<Point> chords, Point point) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < chords.size(); i++) {
      Vector chord = chords.get(i).minus(chords.get(i - 1));
      Vector there = point.minus(chords.get(i - 1));
      double square = chord.dot(chord);
      double share = square == 0 ? 0 : Math.max(0, Math.min(1, there.dot(chord) / square));
      nearest = Math.min(nearest, there.minus(chord.times(share)).length());
    }
    return nearest;
  }

  private static void assertNoPointIsNearer(Path beside, Path source, double distance) {
    List<Point> chords = sampled(source, 200);
    double worst = 0;
    for (Point point : sampled(beside, 15)) {
      worst = Math.max(worst, Math.abs(distance) - distance(chords, point));
    }
    assertThat(worst).as("%s set off by %s", source, distance).isLessThan(PROMISED);
  }

  private static boolean isSimple(Path path) {
    return MeetingFinder.within(path).isEmpty();
  }

  @Test
  void gentleCurvesRunBesideAtTheDistance() {
    Drawn drawn = new Drawn(61);
    for (int i = 0; i < 100; i++) {
      Path source = drawn.gentle();
      double distance = drawn.number(-30, 30);
      Path beside = OffsetPath.of(source, distance);
      List<Point> chords = sampled(source, 400);
      double worst = 0;
      for (Point point : sampled(beside, 25)) {
        worst = Math.max(worst, Math.abs(Math.abs(distance) - distance(chords, point)));
      }
      assertThat(worst).isLessThan(PROMISED);
      assertThat(beside.startDirection().minus(source.startDirection()).length()).isLessThan(1e-6);
      assertThat(beside.endDirection().minus(source.endDirection()).length()).isLessThan(1e-6);
      assertThat(beside.start().minus(source.start()).dot(source.startDirection().left()))
          .isCloseTo(distance, within(1e-9));
      assertThat(beside.curves().size()).isLessThan(12);
    }
  }

  @Test
  void offsetAndBackIsTheSamePathWhereItBendsGently() {
    Drawn drawn = new Drawn(62);
    for (int i = 0; i < 100; i++) {
      Path source = drawn.gentle();
      double distance = drawn.number(2, 20);
      Path back = OffsetPath.of(OffsetPath.of(source, distance), -distance);
      assertThat(back.length()).isCloseTo(source.length(), within(0.02));
      for (Point point : sampled(back, 20)) {
        assertThat(source.nearest(point).point().distanceTo(point)).isLessThan(PROMISED);
      }
    }
  }

  /** Handbook §10, 16 [G]: quarter arc of radius 10 cm, allowance 1 cm. */
  @Test
  void quarterArcSetOffBothWays() {
    Path seam = CircularArc.about(Point.ORIGIN, new Point(100, 0), Math.PI / 2);
    assertThat(seam.length()).isCloseTo(157.08, within(0.01));
    assertThat(OffsetPath.of(seam, -10).length()).isCloseTo(172.79, within(0.01));
    assertThat(OffsetPath.of(seam, 10).length()).isCloseTo(141.37, within(0.01));
  }

  @Test
  void arcsSetOffAreArcs() {
    Drawn drawn = new Drawn(63);
    for (int i = 0; i < 100; i++) {
      double radius = drawn.number(30, 900);
      double sweep = drawn.number(-6, 6);
      double distance = drawn.number(-25, 25);
      Path arc = CircularArc.about(Point.ORIGIN, new Point(0, radius), sweep);
      double besideRadius = sweep > 0 ? radius - distance : radius + distance;
      Path beside = OffsetPath.of(arc, distance);
      assertThat(beside.length()).isCloseTo(besideRadius * Math.abs(sweep), within(0.01));
      for (Point point : sampled(beside, 20)) {
        assertThat(point.distanceTo(Point.ORIGIN)).isCloseTo(besideRadius, within(0.005));
      }
    }
  }

  /** Handbook §10, 14 [G]: corner of 90°, 60°, 30°, allowance 1 cm: 1.414, 2.000, 3.864 cm. */
  @Test
  void outwardCornersAreMitredUpToTheLimit() {
    double[] angles = {90, 60, 30};
    double[] reaches = {14.142, 20.000, 25.000 /* 38.64 capped at 2.5 allowances */};
    for (int i = 0; i < angles.length; i++) {
      Point corner = new Point(200, 0);
      Vector out = Vector.atAngle(Math.PI - Math.toRadians(angles[i]));
      Path source = Path.polyline(List.of(Point.ORIGIN, corner, corner.plus(out.times(200))));
      Path beside = OffsetPath.of(source, -10);
      Vector halving = out.plus(new Vector(-1, 0)).unit().negated();
      double reach = 0;
      for (Curve curve : beside.curves()) {
        reach = Math.max(reach, curve.end().minus(corner).dot(halving));
      }
      assertThat(reach).isCloseTo(reaches[i], within(0.001));
      assertThat(beside.curves()).hasSize(angles[i] == 30 ? 3 : 2);
      assertNoPointIsNearer(beside, source, 10);
    }
  }

  @Test
  void inwardCornersAreTrimmedToTheirCrossing() {
    Path source = Path.polyline(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 80)));
    assertThat(OffsetPath.of(source, 10))
        .isEqualTo(Path.polyline(List.of(new Point(0, 10), new Point(90, 10), new Point(90, 80))));
  }

  @Test
  void aClosedPolygonIsSetOffInwardAndOutward() {
    Path square =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 100),
                new Point(0, 100),
                new Point(0, 0)));
    Path inside = OffsetPath.of(square, 10);
    Path outside = OffsetPath.of(square, -10);
    assertThat(inside.isClosed()).isTrue();
    assertThat(Outline.of(inside).signedArea()).isCloseTo(6400, within(1e-6));
    assertThat(Outline.of(outside).signedArea()).isCloseTo(14400, within(1e-6));
    assertThatThrownBy(() -> OffsetPath.of(square, 60))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("nothing is left of a path set off by 60.0 mm; it bends too tightly");
  }

  /** A concave curve with a bottom tighter than the offset: its loop is trimmed away. */
  @Test
  void tightConcaveCurvesLeaveNoLoop() {
    Drawn drawn = new Drawn(64);
    for (int i = 0; i < 100; i++) {
      double half = drawn.number(15, 60);
      double deep = drawn.number(40, 120);
      double distance = drawn.number(3, 25);
      Path source =
          SmoothCurve.from(new Point(-3 * half, deep))
              .leaving(new Vector(1, 0))
              .to(new Point(drawn.number(-5, 5), 0))
              .to(new Point(3 * half, deep))
              .arriving(new Vector(1, 0))
              .path();
      Path beside = OffsetPath.of(source, distance);
      assertNoPointIsNearer(beside, source, distance);
      assertThat(isSimple(beside)).isTrue();
      assertThat(beside.start().distanceTo(source.start())).isCloseTo(distance, within(1e-6));
      assertThat(beside.end().distanceTo(source.end())).isCloseTo(distance, within(1e-6));
    }
  }

  /** A parabola y = x²/(2r) and more than its radius r: the offset has a corner on the axis. */
  @Test
  void theLoopOfAParabolaIsCutOnItsAxis() {
    double r = 10;
    double w = 60;
    Cubic parabola =
        new Cubic(
            new Point(-w, w * w / 2 / r),
            new Point(-w / 3, -w * w / 6 / r),
            new Point(w / 3, -w * w / 6 / r),
            new Point(w, w * w / 2 / r));
    for (double distance : new double[] {10.5, 12, 15, 20, 30}) {
      Path beside = OffsetPath.of(Path.of(parabola), distance);
      // the point (0, y) lies distance away from (±√(2r(y − r)), y − r): d² = 2r(y − r) + r²
      double height = r + (distance * distance - r * r) / 2 / r;
      PathPlace corner = beside.nearest(new Point(0, 0));
      assertThat(corner.point().x()).isCloseTo(0, within(0.05));
      assertThat(corner.point().y()).isCloseTo(height, within(0.02));
      assertThat(isSimple(beside)).isTrue();
      assertNoPointIsNearer(beside, Path.of(parabola), distance);
    }
  }

  @Test
  void whateverIsLeftIsSimpleAndNowhereTooNear() {
    Drawn drawn = new Drawn(65);
    int held = 0;
    for (int i = 0; i < 150; i++) {
      Path source = drawn.ragged();
      double distance = drawn.number(-20, 20);
      if (!isSimple(source)) {
        continue;
      }
      Path beside;
      try {
        beside = OffsetPath.of(source, distance);
      } catch (GeometryProblem nothingLeft) {
        continue;
      }
      held++;
      assertNoPointIsNearer(beside, source, distance);
      assertThat(isSimple(beside)).as("%s set off by %s", source, distance).isTrue();
    }
    assertThat(held).isGreaterThan(100);
  }

  @Test
  void closedShapesGrowAndShrink() {
    Drawn drawn = new Drawn(66);
    for (int i = 0; i < 100; i++) {
      Path source = drawn.ring();
      double distance = drawn.number(-20, 20);
      Path beside = OffsetPath.of(source, distance);
      assertThat(beside.isClosed()).isTrue();
      assertNoPointIsNearer(beside, source, distance);
      assertThat(isSimple(beside)).isTrue();
      double grown = Outline.of(beside).signedArea() - Outline.of(source).signedArea();
      assertThat(Math.signum(grown)).isEqualTo(-Math.signum(distance));
    }
  }

  /** A way into a bulb that is narrower than twice the distance: the cut line passes by it. */
  @Test
  void aPocketWithANarrowMouthIsPassedBy() {
    Path source =
        Path.of(
            new Line(new Point(0, 0), new Point(50, 0)),
            new Cubic(new Point(50, 0), new Point(0, -80), new Point(110, -80), new Point(60, 0)),
            new Line(new Point(60, 0), new Point(110, 0)));
    Path beside = OffsetPath.of(source, 8);
    assertNoPointIsNearer(beside, source, 8);
    assertThat(isSimple(beside)).isTrue();
    assertThat(beside.start()).isEqualTo(new Point(0, 8));
    assertThat(beside.end()).isEqualTo(new Point(110, 8));
    assertThat(beside.bounds().minY()).isGreaterThan(0);
  }

  @Test
  void aRestThatFallsApartIsRefused() {
    Path hourglass =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(50, 25),
                new Point(100, 0),
                new Point(100, 60),
                new Point(50, 35),
                new Point(0, 60),
                new Point(0, 0)));
    assertThatThrownBy(() -> OffsetPath.of(hourglass, 8))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage(
            "a path set off by 8.0 mm falls apart into 2;"
                + " it bends too tightly or runs too near itself");
    assertThat(OffsetPath.of(hourglass, 4).isClosed()).isTrue();
  }

  @Test
  void noDistanceGivesThePathItselfAndEndlessOnesAreRefused() {
    Path source = new Drawn(67).gentle();
    assertThat(OffsetPath.of(source, 0)).isEqualTo(source);
    assertThatThrownBy(() -> OffsetPath.of(source, Double.NaN))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("a path cannot be set off by NaN mm");
    assertThatThrownBy(() -> OffsetPath.of(source, 1e9)).isInstanceOf(GeometryProblem.class);
  }
}
