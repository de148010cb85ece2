package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Meetings of paths against a search among many short chords, and against places known exactly. */
class MeetingsTest {
  private static final int CHORDS = 900;

  /** The oracle: crossings of short chords, found by trying all with all. */
  private static List<Point> byChords(Curve a, Curve b) {
    Point[] p = new Point[CHORDS + 1];
    Point[] q = new Point[CHORDS + 1];
    for (int i = 0; i <= CHORDS; i++) {
      p[i] = a.at((double) i / CHORDS);
      q[i] = b.at((double) i / CHORDS);
    }
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < CHORDS; i++) {
      double minX = Math.min(p[i].x(), p[i + 1].x());
      double maxX = Math.max(p[i].x(), p[i + 1].x());
      for (int j = 0; j < CHORDS; j++) {
        if (Math.max(q[j].x(), q[j + 1].x()) < minX || Math.min(q[j].x(), q[j + 1].x()) > maxX) {
          continue;
        }
        Vector along = p[i + 1].minus(p[i]);
        Vector across = q[j + 1].minus(q[j]);
        Vector apart = q[j].minus(p[i]);
        double cross = along.cross(across);
        double t = apart.cross(across) / cross;
        double u = apart.cross(along) / cross;
        if (t >= 0 && t < 1 && u >= 0 && u < 1) {
          found.add(p[i].toward(p[i + 1], t));
        }
      }
    }
    return found;
  }

  @Test
  void crossingsAreThoseOfManyShortChords() {
    Drawn drawn = new Drawn(21);
    int total = 0;
    for (int i = 0; i < 200; i++) {
      Curve a = drawn.curve(100);
      Curve b = drawn.curve(100);
      List<Meeting> meetings = Path.of(a).meetings(Path.of(b));
      List<Point> expected = byChords(a, b);
      assertThat(meetings).as("%s with %s", a, b).hasSameSizeAs(expected);
      for (Meeting meeting : meetings) {
        assertThat(expected)
            .anySatisfy(point -> assertThat(point.distanceTo(meeting.point())).isLessThan(0.05));
      }
      assertAreOnBoth(meetings, Path.of(a), Path.of(b));
      total += meetings.size();
    }
    assertThat(total).isGreaterThan(100);
  }

  private static void assertAreOnBoth(List<Meeting> meetings, Path one, Path other) {
    for (Meeting meeting : meetings) {
      assertThat(one.at(meeting.distanceOnThis()).point().distanceTo(meeting.point()))
          .isLessThan(1e-7);
      assertThat(other.at(meeting.distanceOnOther()).point().distanceTo(meeting.point()))
          .isLessThan(1e-7);
    }
  }

  @Test
  void theOtherWayRoundTheSamePointsAreFound() {
    Drawn drawn = new Drawn(22);
    for (int i = 0; i < 300; i++) {
      Path one = drawn.path(100);
      Path other = drawn.path(100);
      List<Meeting> there = one.meetings(other);
      List<Meeting> back = other.meetings(one);
      assertThat(back).as("%s with %s", one, other).hasSameSizeAs(there);
      assertAreOnBoth(there, one, other);
      for (Meeting meeting : there) {
        assertThat(back)
            .anySatisfy(
                m -> {
                  assertThat(m.distanceOnOther()).isCloseTo(meeting.distanceOnThis(), within(1e-4));
                  assertThat(m.distanceOnThis()).isCloseTo(meeting.distanceOnOther(), within(1e-4));
                });
      }
      Motion motion = drawn.motion();
      assertThat(one.moved(motion).meetings(other.moved(motion))).hasSameSizeAs(there);
      assertThat(one.reversed().meetings(other)).hasSameSizeAs(there);
    }
  }

  @Test
  void aParabolaTouchesItsTangentOnce() {
    // B(t) = (60t − 30, 30(2t − 1)²): y = x²/30
    Cubic parabola =
        new Cubic(new Point(-30, 30), new Point(-10, -10), new Point(10, -10), new Point(30, 30));
    Drawn drawn = new Drawn(23);
    for (int i = 0; i < 100; i++) {
      double x = drawn.number(-25, 25);
      Point touch = new Point(x, x * x / 30);
      Vector along = new Vector(1, x / 15).unit();
      Motion motion = drawn.motion();
      Path line =
          Path.straight(touch.plus(along.times(-40)), touch.plus(along.times(50))).moved(motion);
      Path curve = Path.of(parabola).moved(motion);
      assertThat(curve.meetings(line))
          .singleElement()
          .satisfies(m -> assertThat(m.point().distanceTo(motion.apply(touch))).isLessThan(1e-4));
    }
  }

  @Test
  void twoCubicsThatTouchMeetOnce() {
    Drawn drawn = new Drawn(24);
    for (int i = 0; i < 100; i++) {
      Cubic one = drawn.gentle().curves().get(0) instanceof Cubic cubic ? cubic : drawn.cubic(50);
      double t = drawn.number(0.2, 0.8);
      double bend = one.curvature(t) + drawn.number(0.002, 0.02);
      Point touch = one.at(t);
      Vector along = one.direction(t);
      // a parabola with the same tangent and more bend
      Cubic other =
          new Cubic(
              touch.plus(along.times(-30)).plus(along.left().times(450 * bend)),
              touch.plus(along.times(-10)).plus(along.left().times(-150 * bend)),
              touch.plus(along.times(10)).plus(along.left().times(-150 * bend)),
              touch.plus(along.times(30)).plus(along.left().times(450 * bend)));
      List<Meeting> meetings = Path.of(one).meetings(Path.of(other));
      assertThat(meetings)
          .as("%s with %s", one, other)
          .anySatisfy(m -> assertThat(m.point().distanceTo(touch)).isLessThan(1e-3));
      assertThat(meetings.stream().filter(m -> m.point().distanceTo(touch) < 1)).hasSize(1);
    }
  }

  @Test
  void circlesThatTouchMeetOnce() {
    // both circles have a joint where they touch, and there the cubics lie on the true circle
    Path big = CircularArc.about(Point.ORIGIN, new Point(100, 0), 2 * Math.PI);
    Path small = CircularArc.about(new Point(60, 0), new Point(100, 0), 2 * Math.PI);
    assertThat(big.meetings(small))
        .singleElement()
        .satisfies(m -> assertThat(m.point().distanceTo(new Point(100, 0))).isLessThan(1e-4));
  }

  @Test
  void circlesCrossWhereTheirRadicalLineSays() {
    Path one = CircularArc.about(Point.ORIGIN, new Point(100, 0), 2 * Math.PI);
    Path other = CircularArc.about(new Point(80, 0), new Point(150, 0), 2 * Math.PI);
    double x = (100 * 100 - 70 * 70 + 80 * 80) / 160.0;
    double y = Math.sqrt(100 * 100 - x * x);
    List<Meeting> meetings = one.meetings(other);
    assertThat(meetings).hasSize(2);
    assertThat(meetings.get(0).point().distanceTo(new Point(x, y))).isLessThan(0.001);
    assertThat(meetings.get(1).point().distanceTo(new Point(x, -y))).isLessThan(0.001);
  }

  @Test
  void endsThatLieOnTheOtherPathAreMeetings() {
    Drawn drawn = new Drawn(25);
    for (int i = 0; i < 200; i++) {
      Path one = drawn.path(100);
      double distance = drawn.number(0, one.length());
      Point on = one.at(distance).point();
      Path other = Path.straight(on, on.plus(drawn.heading().times(drawn.number(1, 60))));
      assertThat(one.meetings(other))
          .as("%s with %s", one, other)
          .anySatisfy(m -> assertThat(m.point().distanceTo(on)).isLessThan(1e-4));
      assertThat(one.meetings(other).stream().filter(m -> m.point().distanceTo(on) < 1e-3))
          .hasSize(1);
    }
  }

  @Test
  void aCrossingAtAJointIsToldOnce() {
    Path bent = Path.polyline(List.of(new Point(0, 0), new Point(10, 10), new Point(20, 0)));
    Path across = Path.straight(new Point(10, 0), new Point(10, 20));
    assertThat(bent.meetings(across)).hasSize(1);
    Path smooth = SmoothCurve.from(Point.ORIGIN).to(new Point(50, 20)).to(new Point(100, 0)).path();
    Path through = Path.straight(new Point(50, 0), new Point(50, 40));
    assertThat(smooth.meetings(through)).hasSize(1);
    Path top = Path.straight(new Point(0, 20), new Point(100, 20));
    assertThat(smooth.meetings(top)).hasSize(1);
    Path round = CircularArc.about(Point.ORIGIN, new Point(50, 0), 2 * Math.PI);
    assertThat(round.meetings(Path.straight(new Point(40, 0), new Point(60, 0))))
        .singleElement()
        .satisfies(m -> assertThat(m.distanceOnThis()).isZero());
  }

  @Test
  void aSharedStretchIsToldByItsTwoEnds() {
    Drawn drawn = new Drawn(26);
    for (int i = 0; i < 100; i++) {
      Path whole = drawn.gentle();
      double a = drawn.number(1, whole.length() / 3);
      double b = drawn.number(whole.length() / 3 + 1, whole.length() / 2);
      double c = drawn.number(whole.length() / 2 + 1, whole.length() - 1);
      Path one = whole.part(0, c);
      Path other = whole.part(a, whole.length());
      List<Meeting> meetings = one.meetings(other);
      assertThat(meetings).as("%s with %s", one, other).hasSize(2);
      assertThat(meetings.get(0).distanceOnThis()).isCloseTo(a, within(1e-3));
      assertThat(meetings.get(0).distanceOnOther()).isCloseTo(0, within(1e-3));
      assertThat(meetings.get(1).distanceOnThis()).isCloseTo(c, within(1e-3));
      List<Meeting> inner = whole.meetings(whole.part(a, b).reversed());
      assertThat(inner).hasSize(2);
      assertThat(inner.get(0).distanceOnOther()).isCloseTo(b - a, within(1e-3));
      assertThat(whole.meetings(whole)).hasSize(2);
    }
  }

  @Test
  void linesThatShareAStretch() {
    Path one = Path.straight(new Point(0, 0), new Point(10, 10));
    Path other = Path.straight(new Point(15, 15), new Point(5, 5));
    assertThat(one.meetings(other))
        .extracting(Meeting::point)
        .containsExactly(new Point(5, 5), new Point(10, 10));
    Path touching = Path.straight(new Point(10, 10), new Point(20, 20));
    assertThat(one.meetings(touching)).hasSize(1);
    Path beside = Path.straight(new Point(0, 0.001), new Point(10, 10.001));
    assertThat(one.meetings(beside)).isEmpty();
  }

  @Test
  void aPathThatTurnsBackOnASharedStretchTurnsAtAMeeting() {
    Path back = Path.polyline(List.of(new Point(10, 0), new Point(20, 0), new Point(5, 0)));
    Path line = Path.straight(new Point(0, 0), new Point(20, 0));
    assertThat(back.meetings(line))
        .extracting(Meeting::point)
        .containsExactly(new Point(10, 0), new Point(20, 0), new Point(5, 0));
    assertThat(line.meetings(back))
        .extracting(Meeting::point)
        .containsExactly(new Point(5, 0), new Point(10, 0), new Point(20, 0));
  }

  @Test
  void aClosedPathSharesAllOfItself() {
    Path round = CircularArc.about(Point.ORIGIN, new Point(50, 0), 2 * Math.PI);
    assertThat(round.meetings(round)).hasSize(1);
    Path turned = CircularArc.about(Point.ORIGIN, new Point(0, 50), 2 * Math.PI);
    assertThat(round.meetings(turned)).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void curvesThatRunCloseAlongOneAnotherEndTheSearch() {
    Drawn drawn = new Drawn(27);
    for (int i = 0; i < 40; i++) {
      Path path = drawn.gentle();
      Path beside = path.moved(Motion.move(new Vector(0, drawn.number(-2e-4, 2e-4))));
      assertThat(path.meetings(beside)).hasSizeLessThan(20);
    }
  }
}
