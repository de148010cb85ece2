package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Arcs against the true circle. */
class CircularArcTest {
  /** What the project promises for arcs (mm). */
  private static final double PROMISED = 0.005;

  private static void assertIsArc(Path path, Point centre, double radius, double sweep) {
    double farthest = 0;
    for (Curve curve : path.curves()) {
      for (int i = 0; i <= 100; i++) {
        farthest = Math.max(farthest, Math.abs(curve.at(i / 100.0).distanceTo(centre) - radius));
      }
    }
    assertThat(farthest).isLessThan(PROMISED);
    assertThat(path.length()).isCloseTo(radius * Math.abs(sweep), within(0.002));
    double turned = 0;
    for (Curve curve : path.curves()) {
      turned += curve.start().minus(centre).angleTo(curve.end().minus(centre));
    }
    assertThat(turned).isCloseTo(sweep, within(1e-7));
  }

  @Test
  void arcsAboutACentre() {
    Drawn drawn = new Drawn(51);
    for (int i = 0; i < 200; i++) {
      Point centre = drawn.point(500);
      double radius = Math.exp(drawn.number(0, Math.log(2000)));
      Point from = centre.plus(drawn.heading().times(radius));
      double sweep = drawn.number(-2 * Math.PI, 2 * Math.PI);
      Path path = CircularArc.about(centre, from, sweep);
      assertIsArc(path, centre, radius, sweep);
      assertThat(path.start()).isEqualTo(from);
      assertThat(path.startDirection().dot(from.minus(centre).unit())).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void aWholeTurnIsClosed() {
    Path circle = CircularArc.about(new Point(10, 20), new Point(310, 420), -2 * Math.PI);
    assertThat(circle.isClosed()).isTrue();
    assertIsArc(circle, new Point(10, 20), 500, -2 * Math.PI);
  }

  /** Circle skirts, handbook §10, 8 to 10 [G]: waist 70 cm, skirt 50 cm long. */
  @Test
  void circleSkirt() {
    double radius = 700 / (2 * Math.PI);
    assertThat(radius).isCloseTo(111.4, within(0.05));
    Path waist = CircularArc.about(Point.ORIGIN, new Point(radius, 0), Math.PI / 2);
    Path hem = CircularArc.about(Point.ORIGIN, new Point(radius + 500, 0), Math.PI / 2);
    assertThat(4 * waist.length()).isCloseTo(700, within(0.01));
    assertThat(4 * hem.length()).isCloseTo(3841.6, within(0.05));
    double half = 700 / Math.PI;
    Path halfWaist = CircularArc.about(Point.ORIGIN, new Point(half, 0), Math.PI);
    assertThat(half).isCloseTo(222.8, within(0.05));
    assertThat(halfWaist.length()).isCloseTo(700, within(0.01));
  }

  @Test
  void arcsBetweenTwoPoints() {
    Drawn drawn = new Drawn(52);
    for (int i = 0; i < 200; i++) {
      Point from = drawn.point(300);
      Point to = drawn.point(300);
      double chord = from.distanceTo(to);
      double radius = chord / 2 * drawn.number(1.001, 5);
      for (boolean left : new boolean[] {true, false}) {
        for (boolean major : new boolean[] {true, false}) {
          Path path = CircularArc.between(from, to, radius, left, major);
          double half = Math.asin(chord / 2 / radius);
          double sweep = major ? 2 * Math.PI - 2 * half : 2 * half;
          assertThat(path.start()).isEqualTo(from);
          assertThat(path.end()).isEqualTo(to);
          Point centre = from.plus(path.startDirection().left().times(left ? radius : -radius));
          assertIsArc(path, centre, radius, left ? sweep : -sweep);
        }
      }
    }
  }

  @Test
  void arcsThroughThreePoints() {
    Drawn drawn = new Drawn(53);
    for (int i = 0; i < 200; i++) {
      Point centre = drawn.point(300);
      double radius = drawn.number(5, 800);
      double start = drawn.number(-3, 3);
      double sweep = drawn.number(0.2, 6.2) * (drawn.count(0, 1) == 0 ? 1 : -1);
      Point a = centre.plus(Vector.atAngle(start).times(radius));
      Point b = centre.plus(Vector.atAngle(start + sweep * drawn.number(0.2, 0.8)).times(radius));
      Point c = centre.plus(Vector.atAngle(start + sweep).times(radius));
      Path path = CircularArc.through(a, b, c);
      assertIsArc(path, centre, radius, sweep);
      assertThat(path.nearest(b).point().distanceTo(b)).isLessThan(0.001);
      assertThat(path.end()).isEqualTo(c);
    }
  }

  @Test
  void whatIsNoArcIsRefused() {
    Point a = new Point(0, 0);
    Point b = new Point(10, 0);
    assertThatThrownBy(() -> CircularArc.between(a, b, 4, true, false))
        .hasMessage(
            "an arc of radius 4.0 mm cannot span 10.0 mm; the radius must be 5.0 mm or more");
    assertThatThrownBy(() -> CircularArc.between(a, a, 4, true, false))
        .isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> CircularArc.through(a, b, new Point(20, 0)))
        .hasMessage("an arc needs three points that do not lie in one line");
    assertThatThrownBy(() -> CircularArc.about(a, a, 1)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> CircularArc.about(a, b, 0)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> CircularArc.about(a, b, 7)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> CircularArc.about(a, b, Double.NaN))
        .isInstanceOf(GeometryProblem.class);
    assertThat(CircularArc.between(a, b, 5, true, false).length())
        .isCloseTo(5 * Math.PI, within(1e-3));
  }
}
