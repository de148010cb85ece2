package org.hemwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hemwright.cloth.laying.Lane;
import org.hemwright.cloth.laying.LayBudget;
import org.hemwright.cloth.laying.LayResult;
import org.hemwright.cloth.laying.LayWatcher;
import org.hemwright.cloth.laying.Laying;
import org.hemwright.cloth.laying.LayoutChecker;
import org.hemwright.cloth.laying.LooseShape;
import org.hemwright.cloth.laying.Objection;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.laying.Turn;

/** Lays many random instances with little work each, and has every layout checked. */
final class RandomInstances {
  private static final long WORK = 6_000;
  private static final int TELL_EVERY = 1000;

  private RandomInstances() {}

  static void lay(int count) {
    int refused = 0;
    double density = 0;
    for (int seed = 1; seed <= count; seed++) {
      StripProblem problem = instance(seed);
      LayResult result = new Laying(problem).lay(new LayBudget(WORK, seed), LayWatcher.PATIENT);
      List<Objection> objections = new LayoutChecker(problem).objections(result.layout());
      if (!objections.isEmpty()) {
        refused++;
        System.out.println("instance " + seed + ": " + objections.get(0).code());
      }
      density += result.layout().density(problem);
      if (seed % TELL_EVERY == 0) {
        System.out.printf(
            "%d laid, %d refused, mean density %.1f %%%n", seed, refused, 100 * density / seed);
      }
    }
    System.out.println("Random instances laid: " + count + "; layouts refused: " + refused + ".");
  }

  /**
   * A few shapes, convex, concave, thin or notched, in units large or small, some held to lanes.
   */
  private static StripProblem instance(long seed) {
    for (long attempt = 0; ; attempt++) {
      Random random = new Random(seed * 1_000_003 + attempt);
      double unit = StrictMath.pow(10, random.nextInt(9) - 4);
      double width = unit * (2 + 4 * random.nextDouble());
      List<LooseShape> shapes = new ArrayList<>();
      int kinds = 1 + random.nextInt(6);
      for (int kind = 0; kind < kinds; kind++) {
        shapes.add(
            new LooseShape(
                "shape " + kind,
                1 + random.nextInt(3),
                turns(random),
                outline(random, unit * (0.3 + random.nextDouble())),
                lanes(random, width)));
      }
      if (StripProblem.faults(width, shapes).isEmpty()) {
        return new StripProblem("random " + seed, width, shapes);
      }
    }
  }

  private static List<Turn> turns(Random random) {
    return switch (random.nextInt(5)) {
      case 0 -> List.of(Turn.AS_DRAWN);
      case 1 -> List.of(Turn.of(0), Turn.of(90), Turn.of(180), Turn.of(270));
      case 2 -> List.of(Turn.of(random.nextInt(360)), new Turn(45, true));
      case 3 -> List.of(Turn.AS_DRAWN, new Turn(0, true));
      default -> List.of(Turn.AS_DRAWN, Turn.HALF);
    };
  }

  private static List<Lane> lanes(Random random, double width) {
    return switch (random.nextInt(8)) {
      case 0 -> List.of(new Lane.Line(width * random.nextDouble()));
      case 1 -> List.of(new Lane.Between(0, width / 2), new Lane.Between(width / 2, width));
      default -> List.of();
    };
  }

  private static List<Spot> outline(Random random, double size) {
    return switch (random.nextInt(4)) {
      case 0 -> whole(random, size);
      case 1 -> notched(random, size);
      default -> star(random, size);
    };
  }

  /** A rectangle of whole sides, so that shapes often fit together with nothing to spare. */
  private static List<Spot> whole(Random random, double size) {
    double step = size / 2;
    double x = step * (1 + random.nextInt(4));
    double y = step * (1 + random.nextInt(3));
    return List.of(new Spot(0, 0), new Spot(x, 0), new Spot(x, y), new Spot(0, y));
  }

  /** A rectangle with a notch cut into one side. */
  private static List<Spot> notched(Random random, double size) {
    double depth = size * (0.2 + 0.6 * random.nextDouble());
    double from = size * 0.3 * random.nextDouble();
    double to = from + size * (0.05 + 0.5 * random.nextDouble());
    return List.of(
        new Spot(0, 0),
        new Spot(size, 0),
        new Spot(size, size),
        new Spot(to, size),
        new Spot((from + to) / 2, size - depth),
        new Spot(from, size),
        new Spot(0, size));
  }

  private static List<Spot> star(Random random, double radius) {
    int corners = 3 + random.nextInt(10);
    List<Spot> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double r = radius * (0.25 + 0.75 * random.nextDouble());
      outline.add(new Spot(r * StrictMath.cos(angle), r * StrictMath.sin(angle)));
    }
    return outline;
  }
}
