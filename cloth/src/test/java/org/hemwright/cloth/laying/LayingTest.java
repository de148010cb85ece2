package org.hemwright.cloth.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LayingTest {

  private static LayResult lay(StripProblem problem, long work) {
    return new Laying(problem).lay(new LayBudget(work, 1), LayWatcher.PATIENT);
  }

  private static void accepted(StripProblem problem, LayResult result) {
    assertThat(new LayoutChecker(problem).objections(result.layout())).as(problem.name()).isEmpty();
  }

  /** Two workers as ever, one after the other. */
  private static Laying inTurn(StripProblem problem) {
    return new Laying(new LayTask(problem), SearchRules.STANDARD, 2, 1);
  }

  @Test
  void neverOverlapsOnRandomProblems() {
    for (int seed = 0; seed < 250; seed++) {
      StripProblem problem = LooseShapes.random(seed);
      LayResult result = lay(problem, 12_000);
      accepted(problem, result);
      assertThat(result.complete()).isTrue();
      assertThat(result.layout().density(problem)).isBetween(0.0, 1.0 + 1e-9);
    }
  }

  @Test
  void theSameOnOneThreadAsOnTwoAndAgain() throws Exception {
    for (int seed = 0; seed < 4; seed++) {
      StripProblem problem = LooseShapes.random(7000 + seed);
      LayBudget budget = new LayBudget(60_000, seed);
      Layout two = new Laying(problem).lay(budget, LayWatcher.PATIENT).layout();
      Layout one = inTurn(problem).lay(budget, LayWatcher.PATIENT).layout();
      assertThat(one).isEqualTo(two);
    }
    assumeTrue(PublishedInstances.present(), "../shared/data/strip-packing is not here");
    StripProblem albano = PublishedInstances.problem("albano");
    LayBudget budget = new LayBudget(400_000, 5);
    LayResult two = new Laying(albano).lay(budget, LayWatcher.PATIENT);
    LayResult one = inTurn(albano).lay(budget, LayWatcher.PATIENT);
    assertThat(one).isEqualTo(two);
    LayResult other = new Laying(albano).lay(new LayBudget(400_000, 6), LayWatcher.PATIENT);
    assertThat(other.layout()).isNotEqualTo(two.layout());
  }

  @Test
  void findsTheKnownOptimumOfRectangles() {
    // Nine rectangles cut from a 6 by 5 sheet: the optimum is the sheet's length, 6, by area.
    StripProblem sheet =
        new StripProblem(
            "sheet",
            5,
            List.of(
                LooseShapes.rectangle("a", 1, 2, 3),
                LooseShapes.rectangle("b", 1, 2, 2),
                LooseShapes.rectangle("c", 2, 1, 1),
                LooseShapes.rectangle("d", 1, 1, 3),
                LooseShapes.rectangle("e", 1, 3, 1),
                LooseShapes.rectangle("f", 1, 3, 2),
                LooseShapes.rectangle("g", 1, 3, 2)));
    LayResult result = lay(sheet, 600_000);
    accepted(sheet, result);
    assertThat(result.layout().length()).isCloseTo(6, within(1e-9));
    // Squares that stand side by side with nothing to spare.
    StripProblem squares =
        new StripProblem("squares", 3, List.of(LooseShapes.rectangle("s", 6, 1, 1)));
    assertThat(lay(squares, 200_000).layout().length()).isCloseTo(2, within(1e-9));
  }

  @Test
  void turnsAndReflectionsAreUsedWhereTheyHelp() {
    // Two right-angled triangles make a 3 by 2 rectangle when one is turned.
    List<Turn> ends = LooseShapes.EITHER_END;
    StripProblem turned =
        new StripProblem("turned", 2, List.of(LooseShapes.shape("t", 2, ends, 0, 0, 3, 0, 0, 2)));
    LayResult result = lay(turned, 100_000);
    accepted(turned, result);
    assertThat(result.layout().length()).isCloseTo(3, within(1e-6));
    StripProblem fixed =
        new StripProblem(
            "fixed", 2, List.of(LooseShapes.shape("t", 2, LooseShapes.FIXED, 0, 0, 3, 0, 0, 2)));
    assertThat(lay(fixed, 100_000).layout().length()).isGreaterThan(3.9);
  }

  @Test
  void aShapeOnALineStaysOnIt() {
    StripProblem problem =
        new StripProblem(
            "fold",
            3,
            List.of(
                new LooseShape(
                    "front",
                    2,
                    LooseShapes.FIXED,
                    LooseShapes.box(2, 1.5),
                    List.of(new Lane.Line(0))),
                LooseShapes.rectangle("sleeve", 2, 2, 1.5)));
    LayResult result = lay(problem, 100_000);
    accepted(problem, result);
    assertThat(result.layout().length()).isCloseTo(4, within(1e-9));
    result.layout().placements().stream()
        .filter(p -> p.id().equals("front"))
        .forEach(p -> assertThat(p.y()).isZero());
  }

  @Test
  void stopsWhenToldAndKeepsTheBestSoFar() {
    StripProblem problem = LooseShapes.random(42);
    int[] calls = new int[1];
    LayResult result =
        new Laying(problem)
            .lay(
                new LayBudget(1_000_000_000_000L, 1),
                progress -> ++calls[0] < 3 ? LayWatcher.Wish.GO_ON : LayWatcher.Wish.STOP);
    assertThat(result.complete()).isFalse();
    assertThat(calls[0]).isEqualTo(3);
    accepted(problem, result);
  }

  @Test
  void comesToAnEndWhenTold() {
    StripProblem problem = LooseShapes.random(42);
    long[] work = new long[2];
    LayResult result =
        new Laying(problem)
            .lay(
                new LayBudget(1_000_000_000_000L, 1),
                progress -> {
                  work[1] = progress.work();
                  if (progress.work() < 3_000_000) {
                    return LayWatcher.Wish.GO_ON;
                  }
                  work[0] = work[0] == 0 ? progress.work() : work[0];
                  return LayWatcher.Wish.COME_TO_AN_END;
                });
    assertThat(result.complete()).isFalse();
    assertThat(work[1]).isGreaterThan(work[0]).isLessThan(2 * work[0]);
    accepted(problem, result);
  }

  @Test
  void moreWorkIsNeverWorseInTheWatchersEyes() {
    StripProblem problem = LooseShapes.random(77);
    double[] last = {Double.POSITIVE_INFINITY, 0};
    new Laying(problem)
        .lay(
            new LayBudget(50_000, 1),
            progress -> {
              assertThat(progress.length()).isLessThanOrEqualTo(last[0]);
              assertThat((double) progress.work()).isGreaterThanOrEqualTo(last[1]);
              assertThat(progress.work()).isLessThanOrEqualTo(progress.ofWork());
              last[0] = progress.length();
              last[1] = progress.work();
              return LayWatcher.Wish.GO_ON;
            });
    assertThat(last[0]).isFinite();
  }

  @Test
  void theSmallestBudgetStillGivesALayout() {
    StripProblem problem = LooseShapes.random(5);
    accepted(problem, lay(problem, 1));
  }

  @Test
  void aSingleShapeTakesItsShortestTurn() {
    StripProblem problem =
        new StripProblem(
            "one",
            5,
            List.of(
                new LooseShape("r", 1, List.of(Turn.of(0), Turn.of(90)), LooseShapes.box(4, 1.5))));
    LayResult result = lay(problem, 1000);
    assertThat(result.layout().length()).isCloseTo(1.5, within(1e-6));
  }

  @Test
  void beginsFromAGivenLayoutAndIsNeverLonger() {
    for (int seed = 100; seed < 110; seed++) {
      StripProblem problem = LooseShapes.random(seed);
      Layout good = lay(problem, 60_000).layout();
      LayResult again = new Laying(problem).lay(new LayBudget(200, 9), LayWatcher.PATIENT, good);
      accepted(problem, again);
      assertThat(again.layout().length()).isLessThanOrEqualTo(good.length() * (1 + 1e-9));
    }
  }

  @Test
  void takesAHintFromALayoutThatDoesNotFit() {
    StripProblem problem = LooseShapes.random(120);
    Layout good = lay(problem, 60_000).layout();
    StripProblem wider = new StripProblem("wider", problem.stripWidth() * 1.37, problem.shapes());
    accepted(wider, new Laying(wider).lay(new LayBudget(5_000, 9), LayWatcher.PATIENT, good));
    Layout nonsense = new Layout(1, List.of(new Placement("nobody", Turn.HALF, -1e9, 1e9)));
    accepted(
        problem, new Laying(problem).lay(new LayBudget(5_000, 9), LayWatcher.PATIENT, nonsense));
  }

  @Test
  void oddlyWrittenShapesAreLaidLikeTheirPlainSelves() throws Exception {
    String plain = "[[0,0],[4,0],[4,4],[0,4]]";
    List<String> odd =
        List.of(
            plain,
            "[[0,4],[4,4],[4,0],[0,0]]",
            "[[0,0],[4,0],[4,4],[0,4],[0,0]]",
            "[[0,0],[0,0],[4,0],[4,0],[4,4],[0,4],[0,4]]",
            "[[0,0],[1,0],[2,0],[4,0],[4,2],[4,4],[2,4],[0,4],[0,1]]",
            "[[1e5,-1e5],[100004,-1e5],[100004,-99996],[1e5,-99996]]");
    for (String outline : odd) {
      assertThat(length(10, outline)).as(outline).isCloseTo(12, within(1e-6));
    }
    String large = plain.replace("4", "4e90");
    assertThat(length(1e91, large)).isCloseTo(12e90, within(1e84));
    assertThat(length(1e-89, plain.replace("4", "4e-90"))).isCloseTo(12e-90, within(1e-96));
    assertThat(length(4, plain)).isEqualTo(20);
  }

  /** The length on which five copies of an outline lie, which may be turned half round. */
  private static double length(double width, String outline) throws LayFileRefused {
    String text =
        "{\"stripWidth\": "
            + width
            + ", \"items\": [{\"id\": 1, \"demand\": 5,"
            + " \"allowedRotationsDegrees\": [0, 180], \"shape\": "
            + outline
            + "}]}";
    StripProblem problem = LayFile.read("odd.json", text).problem();
    LayResult result = lay(problem, 20_000);
    accepted(problem, result);
    return result.layout().length();
  }

  @Test
  void threeHundredCopiesAreLaidWithLittleWork() {
    List<LooseShape> shapes = new ArrayList<>();
    for (int kind = 0; kind < 12; kind++) {
      shapes.add(
          new LooseShape(
              "kind " + kind,
              25,
              LooseShapes.EITHER_END,
              LooseShapes.star(new Random(kind), 3 + kind % 9, 2.5)));
    }
    StripProblem problem = new StripProblem("three hundred", 40, shapes);
    LayResult result = lay(problem, 60_000);
    accepted(problem, result);
    assertThat(result.layout().placements()).hasSize(300);
  }
}
