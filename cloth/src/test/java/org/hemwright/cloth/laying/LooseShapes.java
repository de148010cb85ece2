package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Shapes for tests. */
final class LooseShapes {

  static final List<Turn> FIXED = List.of(Turn.AS_DRAWN);
  static final List<Turn> EITHER_END = List.of(Turn.AS_DRAWN, Turn.HALF);

  private LooseShapes() {}

  static LooseShape rectangle(String id, int demand, double length, double height) {
    return new LooseShape(id, demand, FIXED, box(length, height));
  }

  static List<Spot> box(double length, double height) {
    return List.of(
        new Spot(0, 0), new Spot(length, 0), new Spot(length, height), new Spot(0, height));
  }

  static LooseShape shape(String id, int demand, List<Turn> turns, double... xy) {
    List<Spot> outline = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      outline.add(new Spot(xy[i], xy[i + 1]));
    }
    return new LooseShape(id, demand, turns, outline);
  }

  /** A star-shaped polygon, often concave, whose corners lie at odd doubles. */
  static List<Spot> star(Random random, int corners, double radius) {
    List<Spot> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double r = radius * (0.25 + 0.75 * random.nextDouble());
      outline.add(new Spot(r * StrictMath.cos(angle), r * StrictMath.sin(angle)));
    }
    return outline;
  }

  /** A problem of a few random shapes in random turns and lanes; everything fits. */
  static StripProblem random(long seed) {
    Random random = new Random(seed);
    double unit = Math.pow(10, random.nextInt(7) - 3);
    double width = unit * (3 + random.nextInt(4));
    List<LooseShape> shapes = new ArrayList<>();
    int kinds = 1 + random.nextInt(5);
    for (int kind = 0; kind < kinds; kind++) {
      List<Spot> outline =
          random.nextInt(3) == 0
              ? box(unit * (1 + random.nextInt(3)), unit * (1 + random.nextInt(2)))
              : star(random, 3 + random.nextInt(9), unit * (0.4 + random.nextDouble()));
      List<Turn> turns =
          switch (random.nextInt(4)) {
            case 0 -> FIXED;
            case 1 -> EITHER_END;
            case 2 -> List.of(Turn.of(0), Turn.of(90), Turn.of(180), Turn.of(270));
            default -> List.of(Turn.of(random.nextInt(360)), new Turn(37.5, true));
          };
      List<Lane> lanes =
          switch (random.nextInt(6)) {
            case 0 -> List.of(new Lane.Line(width / 2));
            case 1 ->
                List.of(new Lane.Between(0, width * 0.99), new Lane.Between(width * 0.01, width));
            default -> List.of();
          };
      shapes.add(new LooseShape("shape " + kind, 1 + random.nextInt(3), turns, outline, lanes));
    }
    if (!StripProblem.faults(width, shapes).isEmpty()) {
      return random(seed + 1_000_003);
    }
    return new StripProblem("random " + seed, width, shapes);
  }
}
