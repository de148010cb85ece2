package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hemwright.cloth.laying.ShortestStrip.Piece;
import org.junit.jupiter.api.Test;

/** Up to five simple pieces: the search finds the true optimum, known from linear programs. */
class ShortestStripTest {

  /** How far from the true optimum a layout may be, as a share of the strip's width. */
  private static final double TOLERANCE = 1e-6;

  private static final long WORK = 1_000_000;
  private static final int CASES = 8;
  private static final List<Turn> FIXED = LooseShapes.FIXED;
  private static final List<Turn> EITHER = LooseShapes.EITHER_END;

  @Test
  void theProgramsKnowWhatIsKnownOtherwise() {
    // Rectangles: 3 by 2 and 1 by 2 fill a strip of 2; 2 by 2 and 2 by 1 on a strip of 3 too.
    assertThat(
            ShortestStrip.of(
                2, List.of(convex("a", 1, FIXED, box(3, 2)), convex("b", 1, FIXED, box(1, 2)))))
        .isCloseTo(4, within(1e-9));
    assertThat(
            ShortestStrip.of(
                3, List.of(convex("a", 1, FIXED, box(2, 2)), convex("b", 1, FIXED, box(2, 1)))))
        .isCloseTo(2, within(1e-9));
    // Two right-angled triangles make a rectangle when one may be turned, and lie in a row when
    // not.
    double[] triangle = {0, 0, 3, 0, 0, 2};
    assertThat(ShortestStrip.of(2, List.of(convex("t", 2, EITHER, triangle))))
        .isCloseTo(3, within(1e-9));
    assertThat(ShortestStrip.of(2, List.of(convex("t", 2, FIXED, triangle))))
        .isCloseTo(6, within(1e-9));
    // Two angles of 2 by 2, arms 1 wide, embrace to 3 by 2 when one is turned.
    assertThat(ShortestStrip.of(2, List.of(angle("l", 2, EITHER, 2, 2, 0.5, 0.5))))
        .isCloseTo(3, within(1e-9));
    assertThat(ShortestStrip.of(2, List.of(angle("l", 2, FIXED, 2, 2, 0.5, 0.5))))
        .isCloseTo(4, within(1e-9));
    // Two darts, one in the other's notch: the notch is 1 deep along x.
    Piece dart =
        new Piece(
            LooseShapes.shape("d", 2, FIXED, 0, 0, 2, 1, 0, 2, 1, 1),
            List.of(corners(0, 0, 2, 1, 1, 1), corners(1, 1, 2, 1, 0, 2)));
    assertThat(ShortestStrip.of(2, List.of(dart))).isCloseTo(3, within(1e-9));
  }

  @Test
  void theSearchFindsTheTrueOptimumOfTwoToFivePieces() {
    for (int count = 2; count <= 5; count++) {
      for (int seed = 0; seed < CASES; seed++) {
        Random random = new Random(Chance.mix(31L * seed + count));
        double width = 4 + 3 * random.nextDouble();
        List<Piece> pieces = new ArrayList<>();
        while (pieces.size() < count) {
          pieces.add(piece("p" + pieces.size(), random, count));
        }
        StripProblem problem =
            new StripProblem("case " + seed, width, pieces.stream().map(Piece::shape).toList());
        Layout found = new Laying(problem).lay(new LayBudget(WORK, 1), LayWatcher.PATIENT).layout();
        assertThat(new LayoutChecker(problem).objections(found)).isEmpty();
        assertThat(found.length())
            .as("%d pieces, case %d", count, seed)
            .isCloseTo(ShortestStrip.of(width, pieces), within(TOLERANCE * width));
      }
    }
  }

  /** A random piece; of many only convex ones, which may not be turned. */
  private static Piece piece(String id, Random random, int count) {
    List<Turn> turns = count < 5 && random.nextBoolean() ? EITHER : FIXED;
    double a = 1 + 2 * random.nextDouble();
    double b = 1 + 2 * random.nextDouble();
    double s = 0.2 + 0.6 * random.nextDouble();
    double t = 0.2 + 0.6 * random.nextDouble();
    return switch (random.nextInt(count < 4 ? 6 : 4)) {
      case 0 -> convex(id, 1, turns, box(a, b));
      case 1 -> convex(id, 1, turns, 0, 0, a, s * b, t * a, b);
      case 2 -> convex(id, 1, turns, 0, 0, a, 0, a * s, b, 0, b * t);
      case 3 -> convex(id, 1, turns, 0, s * b, t * a, 0, a, b * t, a * s, b);
      case 4 -> angle(id, 1, turns, a, b, s, t);
      default ->
          new Piece(
              LooseShapes.shape(id, 1, turns, 0, 0, t * a, s * b, a, 0, t * a, b),
              List.of(
                  corners(0, 0, t * a, s * b, t * a, b), corners(t * a, s * b, a, 0, t * a, b)));
    };
  }

  /** An L: a box from which the upper right is taken. */
  private static Piece angle(
      String id, int demand, List<Turn> turns, double a, double b, double s, double t) {
    return new Piece(
        LooseShapes.shape(id, demand, turns, 0, 0, a, 0, a, t * b, s * a, t * b, s * a, b, 0, b),
        List.of(corners(box(a, t * b)), corners(0, t * b, s * a, t * b, s * a, b, 0, b)));
  }

  private static Piece convex(String id, int demand, List<Turn> turns, double... xy) {
    LooseShape shape = LooseShapes.shape(id, demand, turns, xy);
    return new Piece(shape, List.of(shape.outline()));
  }

  private static double[] box(double length, double height) {
    return new double[] {0, 0, length, 0, length, height, 0, height};
  }

  private static List<Spot> corners(double... xy) {
    return LooseShapes.shape("part", 1, FIXED, xy).outline();
  }
}
