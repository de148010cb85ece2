package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;

/** Lengths against numbers found in other ways. */
class PathLengthTest {

  /** The oracle: chords of 2^k even steps, the error of which falls in even powers (Richardson). */
  private static double byChords(Curve curve) {
    double[] row = new double[12];
    int steps = 64;
    for (int k = 0; k < row.length; k++, steps *= 2) {
      double sum = 0;
      Point before = curve.at(0);
      for (int i = 1; i <= steps; i++) {
        Point here = curve.at((double) i / steps);
        sum += before.distanceTo(here);
        before = here;
      }
      double value = sum;
      for (int j = 0; j < k; j++) {
        double old = row[j];
        row[j] = value;
        value += (value - old) / (Math.pow(4, j + 1) - 1);
      }
      row[k] = value;
    }
    return row[row.length - 1];
  }

  @Test
  void chordsExtrapolatedAfterRichardsonGiveTheSameLength() {
    Drawn drawn = new Drawn(1);
    for (int i = 0; i < 60; i++) {
      Path path = drawn.gentle();
      double chords = path.curves().stream().mapToDouble(PathLengthTest::byChords).sum();
      assertThat(path.length()).isCloseTo(chords, within(1e-9 * chords));
    }
  }

  @Test
  void rombergsRuleGivesTheSameLengthForAnyCubicThatNowhereStandsStill() {
    Drawn drawn = new Drawn(2);
    int held = 0;
    for (int i = 0; i < 200; i++) {
      Cubic cubic = drawn.cubic(100);
      double slowest = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= 200; k++) {
        slowest = Math.min(slowest, cubic.derivative(k / 200.0).length());
      }
      if (slowest < 10) {
        continue;
      }
      held++;
      double expected =
          new RombergIntegrator(1e-11, 1e-11, 3, 20)
              .integrate(5_000_000, t -> cubic.derivative(t).length(), 0, 1);
      assertThat(cubic.length()).isCloseTo(expected, within(2e-9 * expected));
    }
    assertThat(held).isGreaterThan(100);
  }

  /** Half the cusp y² = x³: ((4 + 9x)^1.5 − 8)/27 from 0 to x (any calculus text). */
  @Test
  void semicubicalParabolaWithItsCusp() {
    double c = 40;
    Cubic cusp = new Cubic(new Point(0, 0), new Point(0, 0), new Point(c / 3, 0), new Point(c, c));
    // B(t) = (c t², c t³): y² = x³/c
    double expected = c * (Math.pow(4 + 9, 1.5) - 8) / 27;
    assertThat(cusp.length()).isCloseTo(expected, within(1e-9 * expected));
    Cubic there =
        new Cubic(new Point(c, -c), new Point(-c / 3, c), new Point(-c / 3, -c), new Point(c, c));
    // B(t) = (c s², c s³) for s from −1 to 1: there and back over the cusp
    assertThat(there.length()).isCloseTo(2 * expected, within(1e-9 * expected));
  }

  /** The parabola y = x²: (2x√(1 + 4x²) + asinh 2x)/4 (any calculus text). */
  @Test
  void parabola() {
    double c = 30;
    Cubic parabola =
        new Cubic(
            new Point(0, 0), new Point(c / 3, 0), new Point(2 * c / 3, c / 3), new Point(c, c));
    double asinh = Math.log(2 + Math.sqrt(5));
    double expected = c * (2 * Math.sqrt(5) + asinh) / 4;
    assertThat(parabola.length()).isCloseTo(expected, within(1e-10 * expected));
  }

  @Test
  void lengthFoundAtAParameterLeadsBackToIt() {
    Drawn drawn = new Drawn(3);
    for (int i = 0; i < 200; i++) {
      Path path = drawn.path(150);
      double distance = drawn.number(0, path.length());
      PathPlace place = path.at(distance);
      assertThat(place.distance()).isEqualTo(distance);
      assertThat(path.part(0, distance).length()).isCloseTo(distance, within(1e-7));
      assertThat(place.tangent().length()).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void curvatureIsTheTurningOfTheTangent() {
    Drawn drawn = new Drawn(4);
    for (int i = 0; i < 100; i++) {
      Path path = drawn.gentle();
      double distance = drawn.number(1, path.length() - 1);
      double step = 1e-3;
      Vector before = path.at(distance - step).tangent();
      Vector after = path.at(distance + step).tangent();
      double joint =
          path.curves().size() == 1 ? 1e9 : Math.abs(distance - path.curves().get(0).length());
      if (joint > 2 * step) {
        assertThat(path.at(distance).curvature())
            .isCloseTo(before.angleTo(after) / (2 * step), within(1e-6));
      }
    }
  }

  @Test
  void tangentWhereAHandleHasNoLength() {
    Point a = new Point(0, 0);
    Point b = new Point(30, 40);
    Point c = new Point(60, 0);
    assertThat(new Cubic(a, a, b, c).direction(0).cross(new Vector(3, 4)))
        .isCloseTo(0, within(1e-9));
    assertThat(new Cubic(a, b, c, c).direction(1).dot(new Vector(0.6, -0.8)))
        .isCloseTo(1, within(1e-9));
    Cubic straight = new Cubic(a, a, c, c);
    assertThat(straight.direction(0).minus(new Vector(1, 0)).length()).isZero();
    assertThat(straight.direction(1).minus(new Vector(1, 0)).length()).isZero();
    assertThat(new Cubic(a, a, a, c).direction(0).minus(new Vector(1, 0)).length()).isZero();
    assertThat(new Cubic(a, c, c, c).direction(1).minus(new Vector(1, 0)).length()).isZero();
  }

  @Test
  void placesBeyondTheEndsAreRefusedWithBothNumbers() {
    Path path = Path.straight(Point.ORIGIN, new Point(10, 0));
    assertThatThrownBy(() -> path.at(12))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("a place 12.0 mm along is asked of a path that is 10.0 mm long");
    assertThatThrownBy(() -> path.at(-1)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> path.at(Double.NaN)).isInstanceOf(GeometryProblem.class);
    assertThat(path.at(10 + Tolerance.SAME_POINT / 2).point()).isEqualTo(new Point(10, 0));
    assertThatThrownBy(() -> path.part(4, 4)).isInstanceOf(GeometryProblem.class);
    assertThatThrownBy(() -> path.part(6, 4)).isInstanceOf(GeometryProblem.class);
  }

  @Test
  void aStretchOfAClosedPathMayRunThroughItsStart() {
    Path square =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(10, 0),
                new Point(10, 10),
                new Point(0, 10),
                new Point(0, 0)));
    Path round = square.part(35, 5);
    assertThat(round.length()).isCloseTo(10, within(1e-12));
    assertThat(round.start()).isEqualTo(new Point(0, 5));
    assertThat(round.end()).isEqualTo(new Point(5, 0));
  }
}
