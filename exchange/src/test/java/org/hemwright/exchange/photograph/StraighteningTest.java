package org.hemwright.exchange.photograph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.ReferenceCard;
import org.junit.jupiter.api.Test;

class StraighteningTest {
  @Test
  void whatIsSeenAndWhereItIsAreTurnedIntoEachOther() {
    Random random = new Random(4);
    for (int round = 0; round < 200; round++) {
      Camera camera =
          new Camera(
              4000,
              3000,
              900 + 600 * random.nextDouble(),
              0.4 * random.nextDouble(),
              6 * random.nextDouble(),
              0.004 * random.nextGaussian(),
              0,
              0);
      List<Sighting> sightings = new ArrayList<>();
      for (int k = 0; k < 12; k++) {
        Pixel seen = new Pixel(4000 * random.nextDouble(), 3000 * random.nextDouble());
        sightings.add(new Sighting(camera.place(seen.x(), seen.y()), seen));
      }
      Straightening straightening = Straightening.of(sightings, 4000, 3000);
      for (int k = 0; k < 10; k++) {
        Pixel seen = new Pixel(4000 * random.nextDouble(), 3000 * random.nextDouble());
        Point truth = camera.place(seen.x(), seen.y());
        assertThat(straightening.place(seen).distanceTo(truth)).isLessThan(0.05);
        Pixel again = straightening.pixel(straightening.place(seen));
        assertThat(again.distanceTo(seen)).isLessThan(1e-6);
      }
    }
  }

  /** What is told to two standard deviations holds about 95 times of 100. */
  @Test
  void whatIsToldToBeDoubtfulIsAsOftenSoAsTold() {
    Random random = new Random(11);
    int held = 0;
    int rounds = 400;
    for (int round = 0; round < rounds; round++) {
      double bend = Straightening.USUAL_BEND * random.nextGaussian();
      Camera camera = new Camera(3000, 2000, 1200, 0.15, 0.1, bend, 0, 0);
      List<Sighting> exact = card(camera);
      List<Sighting> sightings = new ArrayList<>();
      for (Sighting each : exact) {
        double x = each.seen().x() + Straightening.BEST_SIGHT * random.nextGaussian();
        double y = each.seen().y() + Straightening.BEST_SIGHT * random.nextGaussian();
        sightings.add(new Sighting(each.place(), new Pixel(x, y)));
      }
      Straightening straightening = Straightening.of(sightings, 3000, 2000);
      Point truth = camera.place(300, 200);
      double off = straightening.place(new Pixel(300, 200)).distanceTo(truth);
      held += off <= straightening.doubt(truth) ? 1 : 0;
    }
    assertThat(held / (double) rounds).isBetween(0.9, 1.0);
  }

  @Test
  void aRulerGivesTheScaleAndKeepsTheUpright() {
    Straightening scan = Straightening.byRuler(new Pixel(100, 50), new Pixel(100, 1050), 250);
    assertThat(scan.place(new Pixel(100, 550)).distanceTo(Point.ORIGIN)).isLessThan(1e-9);
    Point upperRight = scan.place(new Pixel(500, 150));
    assertThat(upperRight.x()).isCloseTo(100, within(1e-9));
    assertThat(upperRight.y()).isCloseTo(100, within(1e-9));
    assertThat(scan.pixelsPerMm(upperRight)).isCloseTo(4, within(1e-9));
    assertThatThrownBy(() -> Straightening.byRuler(new Pixel(1, 1), new Pixel(1, 1), 10))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The card as this camera sees it: places on the table turned into pixels by closing in. */
  private static List<Sighting> card(Camera camera) {
    List<Sighting> sightings = new ArrayList<>();
    for (List<Point> square : ReferenceCard.squares()) {
      for (Point corner : square) {
        double x = 1500;
        double y = 1000;
        for (int round = 0; round < 60; round++) {
          Point at = camera.place(x, y);
          Point right = camera.place(x + 1, y);
          Point below = camera.place(x, y + 1);
          double a = right.x() - at.x();
          double b = below.x() - at.x();
          double c = right.y() - at.y();
          double d = below.y() - at.y();
          double fx = corner.x() - at.x();
          double fy = corner.y() - at.y();
          double determinant = a * d - b * c;
          x += (fx * d - b * fy) / determinant;
          y += (a * fy - fx * c) / determinant;
        }
        sightings.add(new Sighting(corner, new Pixel(x, y)));
      }
    }
    return sightings;
  }
}
